/** Rules on what could hurt somebody. */
@NullMarked
package headgate.verifier.rules.safety;

import org.jspecify.annotations.NullMarked;
