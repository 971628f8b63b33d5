/** Real patterns of plants through a real head: what clumping does to coverage. */
@NullMarked
package headgate.it.pattern;

import org.jspecify.annotations.NullMarked;
