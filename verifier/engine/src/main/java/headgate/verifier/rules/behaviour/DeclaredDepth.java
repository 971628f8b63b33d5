package headgate.verifier.rules.behaviour;

import headgate.verifier.behaviour.Trait;
import headgate.verifier.check.Case;
import headgate.verifier.check.Finding;
import headgate.verifier.check.Rule;
import headgate.verifier.check.RuleInfo;
import headgate.verifier.check.Severity;
import java.util.List;

/** {@code behaviour.depth}: a continuous head works as deep as it says. */
public final class DeclaredDepth implements Rule {

    private static final RuleInfo INFO = new RuleInfo(
            "behaviour.depth",
            "A continuous head works as deep as its sheet says",
            "Draft and clearance to the ground are calculated from the depth.",
            "The depth of every engagement lies within the depth of the work range.",
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
        return Examination.of(subject, INFO, Trait.DECLARED_DEPTH);
    }
}
