package headgate.verifier.rules.behaviour;

import headgate.verifier.behaviour.Trait;
import headgate.verifier.check.Case;
import headgate.verifier.check.Finding;
import headgate.verifier.check.Rule;
import headgate.verifier.check.RuleInfo;
import headgate.verifier.check.Severity;
import java.util.List;

/** {@code behaviour.accepts}: the head accepts what it says it is made for. */
public final class Accepts implements Rule {

    private static final RuleInfo INFO = new RuleInfo(
            "behaviour.accepts",
            "The head accepts every corner of the work range that it declares",
            "A head that declares a range and then refuses half of it passes every other rule by doing" + " nothing.",
            "For every corner of the work range some start on the plant's way through the reach is"
                    + " accepted; and along one way the starts that are accepted follow one another without a"
                    + " refusal between, unless the reach has several pieces there.",
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
        return Examination.of(subject, INFO, Trait.ACCEPTS, Trait.NO_HOLES);
    }
}
