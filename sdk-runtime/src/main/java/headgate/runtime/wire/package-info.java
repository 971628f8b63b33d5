/**
 * For the head process and its parent: sheets, tasks, answers and faults as bytes, and frames to carry them. Numbers are
 * big-endian. A reader checks everything again: each value is rebuilt through the head API's own builders, and what they
 * refuse, what is left over, and what is too long is an error. <b>Frame</b>: one message. <b>Nonce</b>: random bytes
 * that begin every frame of one process, so that whatever else gets into the stream is no frame.
 */
@NullMarked
package headgate.runtime.wire;

import org.jspecify.annotations.NullMarked;
