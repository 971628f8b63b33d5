package headgate.verifier.rules.mount;

import headgate.api.sheet.Connector;
import headgate.runtime.carriage.Arm;
import headgate.verifier.check.Case;
import headgate.verifier.check.Finding;
import headgate.verifier.check.FittedHead;
import headgate.verifier.check.Outcome;
import headgate.verifier.check.Rule;
import headgate.verifier.check.RuleInfo;
import headgate.verifier.check.Severity;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;

/** {@code mount.connectors}: the arm offers every connector that the head needs. */
public final class ConnectorsFit implements Rule {

    private static final RuleInfo INFO = new RuleInfo(
            "mount.connectors",
            "The arm offers every connector that the head needs",
            "A plug that does not mate is found on the first morning; one that mates with another voltage is found by its"
                    + " smoke.",
            "Each connector on the head's sheet is matched with one of the arm of the same kind and designation; each of"
                    + " the arm's serves once.",
            "The designations that carriage and head declare",
            Severity.ERROR,
            "0.1.0",
            List.of("behaviour.answers"));

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public List<Finding> check(Case subject) {
        return FittedHead.each(subject, INFO, fitted -> check(subject, fitted));
    }

    private static List<Finding> check(Case subject, FittedHead fitted) {
        List<Connector> needed = fitted.sheet().connectors();
        if (needed.isEmpty()) {
            return List.of(Finding.notApplicable(INFO, fitted.label(), "The head needs no connector."));
        }
        List<Finding> missing = new ArrayList<>();
        for (Connector connector : needed.stream().distinct().toList()) {
            int wanted = Collections.frequency(needed, connector);
            List<Arm> without = fitted.arms().stream()
                    .filter(a -> Collections.frequency(a.connectors(), connector) < wanted)
                    .toList();
            if (!without.isEmpty()) {
                Arm first = without.get(0);
                missing.add(Finding.of(INFO, fitted.label() + " on " + ArmWords.names(without))
                        .field(ArmWords.field(subject, first, "connectors"))
                        .examined(fitted.arms().size())
                        .end(
                                Outcome.FAIL,
                                "The head needs " + (wanted == 1 ? "" : wanted + " of ") + connector + ", but arm "
                                        + first.id() + " offers " + list(first.connectors()) + "."));
            }
        }
        return missing.isEmpty()
                ? List.of(Finding.of(INFO, fitted.label())
                        .examined((long) needed.size() * fitted.arms().size())
                        .end(
                                Outcome.PASS,
                                "The head needs " + list(needed) + ", which " + ArmWords.names(fitted.arms())
                                        + (fitted.arms().size() == 1 ? " offers." : " offer.")))
                : missing;
    }

    private static String list(List<Connector> connectors) {
        return connectors.isEmpty()
                ? "none"
                : connectors.stream().map(Connector::toString).collect(Collectors.joining(" and "));
    }
}
