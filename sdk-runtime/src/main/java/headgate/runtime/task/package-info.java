/**
 * For the verifier and the carriage: tasks for heads, made on a published lattice so that the same question always has
 * the same form. <b>Lattice</b>: the grid of values that a figure of a task may take. <b>Snap</b>: go to the nearest
 * value on it. Frame: the head frame.
 */
@NullMarked
package headgate.runtime.task;

import org.jspecify.annotations.NullMarked;
