/**
 * Replays of plots, one after the other, whose results are kept so that a run that was stopped goes on where it was. A
 * <em>plot</em> is a stand, recorded or made up, in the order of travel; its <em>result</em> holds one <em>pass</em> for each
 * speed. What is kept is named by the digest of all that it follows from, and taken only if it is whole.
 */
@NullMarked
package headgate.verifier.plot;

import org.jspecify.annotations.NullMarked;
