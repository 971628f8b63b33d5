/**
 * For the verifier and the carriage: what a head was asked and answered, kept. <b>Memo</b>: a head that is asked each task
 * once. <b>Transcript</b>: all of it as a value with a digest; it can stand in for the head.
 */
@NullMarked
package headgate.runtime.transcript;

import org.jspecify.annotations.NullMarked;
