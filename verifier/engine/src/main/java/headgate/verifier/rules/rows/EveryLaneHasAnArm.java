package headgate.verifier.rules.rows;

import headgate.runtime.carriage.Arm;
import headgate.verifier.check.Case;
import headgate.verifier.check.Comparison;
import headgate.verifier.check.Dimension;
import headgate.verifier.check.Finding;
import headgate.verifier.check.Outcome;
import headgate.verifier.check.Rule;
import headgate.verifier.check.RuleInfo;
import headgate.verifier.check.Severity;
import headgate.verifier.setup.Lane;
import headgate.verifier.setup.Setup;
import headgate.verifier.setup.Working;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** {@code rows.every-lane-has-an-arm}: each lane has an arm of its own whose rail reaches it. */
public final class EveryLaneHasAnArm implements Rule {

    private static final RuleInfo INFO = new RuleInfo(
            "rows.every-lane-has-an-arm",
            "Every lane has an arm that can be set over it",
            "A row without an arm is a row untreated, pass after pass.",
            "Lanes are the ground that the plan wants treated, symmetrical about the carriage's middle. Arms on one beam keep"
                    + " their order. A lane is served by an arm whose side shift can be set so that the head's reach holds"
                    + " the lane, or its middle if the lane is wider. Of all such choices the one is taken that keeps every"
                    + " arm off its neighbours, gives the busiest arm the fewest lanes, and has the most margin: the least"
                    + " of what arms are further apart than they must be, and of how far lanes lie inside the reach.",
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
        Finding.Builder finding = Finding.of(
                        INFO, "crop plan " + subject.plan().value().name())
                .examined(Math.max(1, lanes))
                .field("crop-plan:rows.perPass");
        if (lanes == 0) {
            return List.of(finding.end(
                    Outcome.FAIL, "There is no ground between the rows: what is protected about two rows meets."));
        }
        int served = setup.servesEveryLane() ? lanes : mostServed(subject, lanes);
        finding.comparison(Comparison.atLeast(served, lanes, Dimension.COUNT));
        if (setup.servesEveryLane()) {
            return List.of(finding.decide("Each of the " + lanes + " lanes has an arm: "
                    + setup.stations().stream()
                            .flatMap(s -> s.lanes().stream()
                                    .map(l ->
                                            "lane " + l.number() + " " + s.arm().id()))
                            .collect(Collectors.joining(", "))
                    + "."));
        }
        Changes.emptyArms(subject).ifPresent(finding::propose);
        Changes.fewerRows(subject).ifPresent(finding::propose);
        Changes.longerRails(subject).ifPresent(finding::propose);
        Changes.otherSpacing(subject).ifPresent(finding::propose);
        return List.of(finding.decide("Of " + lanes + " lanes only " + served + " can have an arm in one pass: "
                + reason(subject, setup) + "."));
    }

    /** The most lanes of one pass that the arms can serve, for rows symmetrical about the middle. */
    private static int mostServed(Case subject, int lanes) {
        return Changes.fewerRows(subject)
                .map(edit -> Math.min(
                        lanes - 1, Setup.of(edit.apply(subject)).lanes().size()))
                .orElse(0);
    }

    private static String reason(Case subject, Setup setup) {
        List<Arm> arms = subject.carriage().value().arms().stream()
                .filter(a ->
                        Working.of(subject).stream().anyMatch(m -> m.armId().equals(a.id())))
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
