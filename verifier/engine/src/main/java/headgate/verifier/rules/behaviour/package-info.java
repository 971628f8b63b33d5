/** Rules on how the head answers tasks. */
@NullMarked
package headgate.verifier.rules.behaviour;

import org.jspecify.annotations.NullMarked;
