package headgate.verifier.rules.behaviour;

import headgate.verifier.behaviour.Trait;
import headgate.verifier.check.Case;
import headgate.verifier.check.Finding;
import headgate.verifier.check.Rule;
import headgate.verifier.check.RuleInfo;
import headgate.verifier.check.Severity;
import java.util.List;

/** {@code behaviour.ground}: the tool point goes with the ground while it is in the soil. */
public final class GoesWithGround implements Rule {

    private static final RuleInfo INFO = new RuleInfo(
            "behaviour.ground",
            "While it is in the soil, the tool point goes with the ground",
            "A tool that stands still in soil while the carriage moves is dragged: it bends, or ploughs"
                    + " out the crop.",
            "In each phase with soil contact |tool - (p0 + g t)| <= e in the ground plane, from its"
                    + " start to its end, with e as for aiming; up and down the tool moves freely.",
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
        return Examination.of(subject, INFO, Trait.GOES_WITH_GROUND);
    }
}
