/**
 * For the head process, on both sides of it: the folder that a process may write to. Whoever outlives the other removes it.
 */
@NullMarked
package headgate.runtime.scratch;

import org.jspecify.annotations.NullMarked;
