package headgate.verifier.rules.behaviour;

import headgate.verifier.behaviour.Trait;
import headgate.verifier.check.Case;
import headgate.verifier.check.Finding;
import headgate.verifier.check.Rule;
import headgate.verifier.check.RuleInfo;
import headgate.verifier.check.Severity;
import java.util.List;

/** {@code behaviour.aim}: the tool point is over the plant while it treats. */
public final class Aims implements Rule {

    private static final RuleInfo INFO = new RuleInfo(
            "behaviour.aim",
            "While it treats, the tool point is over the plant",
            "A tool that treats beside the plant leaves the weed standing, or hits the crop.",
            "At least one phase of an action treats ground; at its start and throughout |tool - (p0 + g"
                    + " t)| <= e in the ground plane, with p0 + g t the plant on the moving ground and e the"
                    + " lesser of aim tolerance and treated radius.",
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
        return Examination.of(subject, INFO, Trait.TREATS, Trait.AIMS);
    }
}
