/** For integrators and the verifier: the fitting as its file describes it: which head on which arm. */
@NullMarked
package headgate.runtime.fitting;

import org.jspecify.annotations.NullMarked;
