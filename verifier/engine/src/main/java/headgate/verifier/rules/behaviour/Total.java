package headgate.verifier.rules.behaviour;

import headgate.verifier.behaviour.Trait;
import headgate.verifier.check.Case;
import headgate.verifier.check.Finding;
import headgate.verifier.check.Rule;
import headgate.verifier.check.RuleInfo;
import headgate.verifier.check.Severity;
import java.util.List;

/** {@code behaviour.total}: the head answers every task of its work range. */
public final class Total implements Rule {

    private static final RuleInfo INFO = new RuleInfo(
            "behaviour.total",
            "The head answers every task of its work range",
            "On the carriage a task without an answer is an arm that stops in the row.",
            "Tasks are asked at every corner of the work range, and at a sequence of points spread"
                    + " evenly over it (Halton), with the plant anywhere on its way through the reach and the"
                    + " ground at its lowest and highest; each gets an action, an engagement or a refusal. An"
                    + " exception, an exit or no answer in time fails.",
            "Contract of the head API; J. H. Halton, Numerische Mathematik 2 (1960) 84-90 (the" + " sequence)",
            Severity.ERROR,
            "0.1.0",
            List.of("behaviour.answers", "behaviour.one-kind"));

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public List<Finding> check(Case subject) {
        return Examination.of(subject, INFO, Trait.TOTAL);
    }
}
