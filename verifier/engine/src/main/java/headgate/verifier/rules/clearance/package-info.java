/** Rules on whether the head meets anything. */
@NullMarked
package headgate.verifier.rules.clearance;

import org.jspecify.annotations.NullMarked;
