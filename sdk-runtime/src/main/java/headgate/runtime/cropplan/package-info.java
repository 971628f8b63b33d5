/** For integrators and the verifier: the crop plan as its file describes it. SI. */
@NullMarked
package headgate.runtime.cropplan;

import org.jspecify.annotations.NullMarked;
