package headgate.verifier.rules.rows;

import headgate.runtime.carriage.Arm;
import headgate.verifier.check.Case;
import headgate.verifier.check.Comparison;
import headgate.verifier.check.Dimension;
import headgate.verifier.check.Finding;
import headgate.verifier.check.Rule;
import headgate.verifier.check.RuleInfo;
import headgate.verifier.check.Severity;
import headgate.verifier.remedy.SetRowsPerPass;
import headgate.verifier.setup.Lane;
import headgate.verifier.setup.Setup;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** {@code rows.every-lane-has-an-arm}: each lane has an arm of its own whose rail reaches it. */
public final class EveryLaneHasAnArm implements Rule {

    private static final RuleInfo INFO = new RuleInfo(
            "rows.every-lane-has-an-arm",
            "Every lane has an arm that can be set over it",
            "A row without an arm is a row untreated, pass after pass.",
            "Lanes lie on the rows, symmetrical about the carriage's middle. Arms keep their order from right to left. Each"
                    + " lane needs an arm of its own with a head on it and a side-shift rail that holds the row's line. Of"
                    + " all such choices the one with the widest least distance on a beam is taken.",
            "first principles",
            Severity.ERROR,
            "0.1.0",
            List.of("behaviour.answers"));

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public List<Finding> check(Case subject) {
        Setup setup = Setup.of(subject);
        int lanes = setup.lanes().size();
        int served = setup.stations().isEmpty() ? mostServed(subject, lanes) : lanes;
        Finding.Builder finding = Finding.of(
                        INFO, "crop plan " + subject.plan().value().name())
                .examined(lanes)
                .field("crop-plan:rows.perPass")
                .comparison(Comparison.atLeast(served, lanes, Dimension.COUNT));
        if (served == lanes) {
            return List.of(finding.decide("Each of the " + lanes + " lanes has an arm: "
                    + setup.stations().stream()
                            .map(s ->
                                    "lane " + s.lane().number() + " " + s.arm().id())
                            .collect(Collectors.joining(", "))
                    + "."));
        }
        if (served > 0) {
            finding.propose(new SetRowsPerPass(served));
        }
        return List.of(finding.decide("Of " + lanes + " lanes only " + served + " can have an arm in one pass: "
                + reason(subject, setup) + "."));
    }

    /** The most rows in one pass that the arms can serve, for rows symmetrical about the middle. */
    private static int mostServed(Case subject, int lanes) {
        for (int rows = lanes - 1; rows > 0; rows--) {
            if (!Setup.of(new SetRowsPerPass(rows).apply(subject)).stations().isEmpty()) {
                return rows;
            }
        }
        return 0;
    }

    private static String reason(Case subject, Setup setup) {
        List<Arm> arms = subject.carriage().value().arms().stream()
                .filter(a ->
                        subject.mountings().stream().anyMatch(m -> m.armId().equals(a.id())))
                .toList();
        if (arms.size() < setup.lanes().size()) {
            return "there are only " + arms.size() + " arms with a head";
        }
        Optional<Lane> unreached = setup.lanes().stream()
                .filter(lane -> arms.stream().noneMatch(a -> a.shift().contains(lane.y())))
                .findFirst();
        return unreached
                .map(lane ->
                        "no rail reaches lane " + lane.number() + " at y = " + Dimension.LENGTH.text(lane.y() / 1e6))
                .orElse("the rails reach every lane, but not each with an arm of its own in order");
    }
}
