package headgate.verifier.rules.behaviour;

import headgate.verifier.behaviour.Trait;
import headgate.verifier.check.Case;
import headgate.verifier.check.Finding;
import headgate.verifier.check.Rule;
import headgate.verifier.check.RuleInfo;
import headgate.verifier.check.Severity;
import java.util.List;

/** {@code behaviour.action-time}: actions take no less and no more time than the sheet says. */
public final class ActionTimeHolds implements Rule {

    private static final RuleInfo INFO = new RuleInfo(
            "behaviour.action-time",
            "Every action takes a time within the sheet's least and most",
            "Pace and coverage are calculated from these times; a head that takes longer leaves plants" + " behind.",
            "The durations of the phases of each action add up to a time within the sheet's least and" + " most.",
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
        return Examination.of(subject, INFO, Trait.ACTION_TIME);
    }
}
