/**
 * Replays of many stands, and what may be said of a head from them. A <em>trial</em> runs one case at speeds and densities
 * over several seeds. A <em>cell</em> is one speed at one density. The <em>bounds</em> of its coverage are one-sided, each at
 * the level of confidence of the policy. A cell <em>passes</em> if its lower bound reaches what is wanted, <em>fails</em> if
 * its upper bound does not, and is otherwise run with more seeds up to a cap, and then <em>undecided</em>.
 */
@NullMarked
package headgate.verifier.trial;

import org.jspecify.annotations.NullMarked;
