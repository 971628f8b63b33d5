/**
 * How a case is set up: the lanes of the plan, which arm serves which, where its mount is set across travel, and at what
 * heights it works. These are set-points that the verifier chooses; rules then look at the result.
 */
@NullMarked
package headgate.verifier.setup;

import org.jspecify.annotations.NullMarked;
