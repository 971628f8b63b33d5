package headgate.verifier.rules.behaviour;

import headgate.verifier.behaviour.Trait;
import headgate.verifier.check.Case;
import headgate.verifier.check.Finding;
import headgate.verifier.check.Rule;
import headgate.verifier.check.RuleInfo;
import headgate.verifier.check.Severity;
import java.util.List;

/** {@code behaviour.reach}: the tool point stays in the region of its posture. */
public final class StaysInReach implements Rule {

    private static final RuleInfo INFO = new RuleInfo(
            "behaviour.reach",
            "The tool point stays in the reach, on the way too",
            "Clearance is calculated for the regions that the sheet gives. A tool point outside of them"
                    + " moves metal where nobody looked.",
            "In each phase the straight way of the tool point lies in the region of its posture, which"
                    + " the sheet names; at no time does the tool point jump. A continuous head's engaged outline"
                    + " lies in its reach.",
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
        return Examination.of(subject, INFO, Trait.IN_REACH, Trait.KNOWN_POSTURE, Trait.NO_JUMPS);
    }
}
