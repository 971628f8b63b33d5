/**
 * For the verifier and the carriage: running a head in a process of its own, from outside. <b>Limits</b>: what the
 * process may use. <b>Start</b>: a running head, or the fault that came instead. No class of the head is ever loaded on
 * this side.
 */
@NullMarked
package headgate.runtime.process;

import org.jspecify.annotations.NullMarked;
