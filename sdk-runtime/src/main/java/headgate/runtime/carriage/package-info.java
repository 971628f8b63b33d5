/** For integrators and the verifier: the carriage as its file describes it. SI; geometry in whole micrometres. */
@NullMarked
package headgate.runtime.carriage;

import org.jspecify.annotations.NullMarked;
