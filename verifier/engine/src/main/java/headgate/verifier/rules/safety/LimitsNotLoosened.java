package headgate.verifier.rules.safety;

import headgate.runtime.policy.Policy;
import headgate.runtime.policy.PolicyReader;
import headgate.verifier.check.Case;
import headgate.verifier.check.Dimension;
import headgate.verifier.check.Finding;
import headgate.verifier.check.Outcome;
import headgate.verifier.check.Rule;
import headgate.verifier.check.RuleInfo;
import headgate.verifier.check.Severity;
import java.math.BigDecimal;
import java.util.List;

/** {@code safety.limits-loosened}: the case is held to limits that are no looser than the built-in ones. */
public final class LimitsNotLoosened implements Rule {

    private static final RuleInfo INFO = new RuleInfo(
            "safety.limits-loosened",
            "The limits are no looser than the built-in ones",
            "Whoever reads a verdict takes it for one by the usual limits. A looser limit may be right, but must not be"
                    + " found out by chance.",
            "Each limit of the policy is compared with that of the built-in policy. A stricter one is nobody's concern; each"
                    + " looser one is named, with its value, the built-in one and where the two come from.",
            "Common practice, no source",
            Severity.CAUTION,
            "0.1.0",
            List.of());

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public List<Finding> check(Case subject) {
        List<Policy.Looser> looser =
                subject.policy().value().looserThan(PolicyReader.builtIn().value());
        if (looser.isEmpty()) {
            return List.of(Finding.of(INFO, "the limits")
                    .examined(Policy.names().size())
                    .end(Outcome.PASS, "No limit is looser than the built-in one."));
        }
        return looser.stream().map(LimitsNotLoosened::loosened).toList();
    }

    private static Finding loosened(Policy.Looser looser) {
        return Finding.of(INFO, "the limit " + looser.name())
                .field("policy:limits." + looser.name() + ".value")
                .examined(1)
                .end(
                        Outcome.CAUTION,
                        "The verdict holds by a limit that is looser than the built-in one: "
                                + words(looser.name(), looser.limit()) + " instead of "
                                + words(looser.name(), looser.other()) + ".");
    }

    private static String words(String name, Policy.Limit limit) {
        return value(name, limit.value()) + " (" + limit.source() + ")";
    }

    /** Limits are lengths, shares or plain factors, which their names tell. */
    private static String value(String name, double si) {
        if (name.endsWith("Gap") || name.endsWith("Width") || name.endsWith("Height")) {
            return Dimension.LENGTH.text(si);
        }
        return name.equals("coverageFactor") || name.startsWith("shock")
                ? BigDecimal.valueOf(si).stripTrailingZeros().toPlainString()
                : Dimension.SHARE.text(si);
    }
}
