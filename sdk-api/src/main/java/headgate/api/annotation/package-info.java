/** For everybody who reads this library: how stable each type is. */
@NullMarked
package headgate.api.annotation;

import org.jspecify.annotations.NullMarked;
