/**
 * For the verifier and the carriage: what a head answers, wherever it runs. <b>Port</b>: {@link
 * headgate.runtime.answers.HeadAnswers}, tasks in, answers out. <b>Fault</b>: an answer that the head did not give, with
 * what happened instead. <b>Stage</b>: what the head was doing then.
 */
@NullMarked
package headgate.runtime.answers;

import org.jspecify.annotations.NullMarked;
