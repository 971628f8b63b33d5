/**
 * For everything that uses files that people write: where a value came from, and what is wrong with a file. A
 * <em>place</em> is file, line and column; a <em>problem</em> is one thing that is wrong, with what was found and what was
 * expected.
 */
@NullMarked
package headgate.runtime.origin;

import org.jspecify.annotations.NullMarked;
