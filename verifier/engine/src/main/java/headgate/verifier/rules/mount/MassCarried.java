package headgate.verifier.rules.mount;

import headgate.runtime.carriage.Arm;
import headgate.verifier.check.Case;
import headgate.verifier.check.Comparison;
import headgate.verifier.check.Dimension;
import headgate.verifier.check.Finding;
import headgate.verifier.check.FittedHead;
import headgate.verifier.check.Rule;
import headgate.verifier.check.RuleInfo;
import headgate.verifier.check.Severity;
import headgate.verifier.remedy.LightenHead;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

/** {@code mount.mass}: the arm carries the head in its heaviest state. */
public final class MassCarried implements Rule {

    private static final RuleInfo INFO = new RuleInfo(
            "mount.mass",
            "The arm carries the head in its heaviest state",
            "A head that is carried clean and empty may not be carried full, after a wet afternoon.",
            "m <= share x payload, with m the largest of the masses empty, full and soiled, the payload of the weakest arm,"
                    + " and the share that the policy allows.",
            "Payload: carriage file; share: policy, with its source there",
            Severity.ERROR,
            "0.1.0",
            List.of("behaviour.answers"));

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public List<Finding> check(Case subject) {
        return FittedHead.each(subject, INFO, fitted -> List.of(check(subject, fitted)));
    }

    private static Finding check(Case subject, FittedHead fitted) {
        MassState worst = Collections.max(MassState.of(fitted.sheet()), Comparator.comparingDouble(MassState::mass));
        Arm weakest = Collections.min(
                fitted.arms(), Comparator.comparingDouble(a -> a.payload().mass()));
        double payload = weakest.payload().mass();
        double share = subject.policy().value().massUse().value();
        double limit = share * payload;
        Finding.Builder finding =
                Finding.of(INFO, fitted.label()).comparison(Comparison.atMost(worst.mass(), limit, Dimension.MASS));
        MassState.of(fitted.sheet()).forEach(s -> finding.term("mass " + s.label(), s.mass(), Dimension.MASS));
        return finding.term("payload of arm " + weakest.id(), payload, Dimension.MASS)
                .term("share that may be used", share, Dimension.SHARE)
                .field(ArmWords.field(subject, weakest, "payload.mass"))
                .examined(3L * fitted.arms().size())
                .propose(new LightenHead(fitted.head().id(), limit, worst.mass() - limit))
                .decide("The " + worst.label() + " head weighs " + Dimension.MASS.text(worst.mass()) + "; arm "
                        + weakest.id() + " carries " + Dimension.MASS.text(payload) + ", of which "
                        + Dimension.SHARE.text(share) + " may be used: " + Dimension.MASS.text(limit) + ".");
    }
}
