package headgate.verifier.plot;

import headgate.verifier.check.Edit;
import headgate.verifier.trial.Bounds;

/**
 * A change with which the plots that are judged pass. It was replayed over them, and over nothing else.
 *
 * @param edit the change
 * @param coverage the coverage then; of several groups, the least
 */
public record Proposal(Edit edit, Bounds coverage) {}
