/** Drawings of the pages under {@code docs}, made from what the code computes. */
@NullMarked
package headgate.verifier.picture;

import org.jspecify.annotations.NullMarked;
