/** For integrators and the verifier: the limits that a case is held to, each with its source. SI. */
@NullMarked
package headgate.runtime.policy;

import org.jspecify.annotations.NullMarked;
