/** From findings to a verdict: runs the rule book over a case, and judges each remedy by the same rules. */
@NullMarked
package headgate.verifier.judge;

import org.jspecify.annotations.NullMarked;
