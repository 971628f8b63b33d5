/**
 * For authors of rules and for the contract tests of heads: how a head keeps its contract, seen from its answers.
 *
 * <p><b>Probe</b>: a task asked to see how the head answers. <b>Trait</b>: one thing that every head owes. <b>Violation</b>:
 * a trait broken, with the task, the phase, what was measured and the limit. Pure functions of sheet, setting and answers.
 * Frame: the head frame, x forward, y left, z up, origin at the centre of the mount plate; lengths in micrometres unless
 * the name says otherwise.
 */
@NullMarked
package headgate.verifier.behaviour;

import org.jspecify.annotations.NullMarked;
