/**
 * For the readers of files that people write by hand: JSON as a tree in which every node knows its line, column and
 * field path, and the problems that a file has, all of them at once. A <em>node</em> is one JSON value; a
 * <em>problem</em> says where, what was found and what was expected.
 */
@NullMarked
package headgate.runtime.text;

import org.jspecify.annotations.NullMarked;
