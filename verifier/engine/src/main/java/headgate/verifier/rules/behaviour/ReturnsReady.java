package headgate.verifier.rules.behaviour;

import headgate.verifier.behaviour.Trait;
import headgate.verifier.check.Case;
import headgate.verifier.check.Finding;
import headgate.verifier.check.Rule;
import headgate.verifier.check.RuleInfo;
import headgate.verifier.check.Severity;
import java.util.List;

/** {@code behaviour.returns-ready}: an action ends at the ready tool point. */
public final class ReturnsReady implements Rule {

    private static final RuleInfo INFO = new RuleInfo(
            "behaviour.returns-ready",
            "Every action ends where it began, ready for the next",
            "The next plant finds the head somewhere that neither its times nor its clearances count" + " on.",
            "The tool point at the end of the last phase is the ready tool point of the sheet, to the" + " micrometre.",
            "Contract of the head API",
            Severity.ERROR,
            "0.1.0",
            List.of("behaviour.total"));

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public List<Finding> check(Case subject) {
        return Examination.of(subject, INFO, Trait.RETURNS);
    }
}
