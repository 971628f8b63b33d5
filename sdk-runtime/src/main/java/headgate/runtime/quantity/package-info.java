/**
 * For the readers of files: quantities as people write them, a number and a unit such as {@code "120 mm"}. A
 * <em>kind</em> is what a quantity measures and the units in which it may be written. Units, dimensions and conversion
 * come from an implementation of JSR 385.
 */
@NullMarked
package headgate.runtime.quantity;

import org.jspecify.annotations.NullMarked;
