/** For everything that reads files: where a value came from. */
@NullMarked
package headgate.runtime.origin;

import org.jspecify.annotations.NullMarked;
