/** For developers: whole fittings of the sample heads on Lowfield's carriage. */
@NullMarked
package headgate.it.fitting;

import org.jspecify.annotations.NullMarked;
