/**
 * For the head process: the program that runs inside it. It loads one clean copy through the plugin host, answers
 * requests on its standard streams, and ends when its parent does. Nobody calls it from the same process; {@code
 * headgate.runtime.process} starts it.
 */
@NullMarked
package headgate.runtime.child;

import org.jspecify.annotations.NullMarked;
