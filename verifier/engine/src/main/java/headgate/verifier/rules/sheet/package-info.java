/** Rules of the family sheet: whether what the head says of itself can be true. */
@NullMarked
package headgate.verifier.rules.sheet;

import org.jspecify.annotations.NullMarked;
