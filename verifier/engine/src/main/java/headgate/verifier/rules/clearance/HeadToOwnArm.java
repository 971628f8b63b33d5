package headgate.verifier.rules.clearance;

import headgate.verifier.check.Case;
import headgate.verifier.check.Dimension;
import headgate.verifier.check.Finding;
import headgate.verifier.check.Rule;
import headgate.verifier.check.RuleInfo;
import headgate.verifier.check.Severity;
import headgate.verifier.setup.ArmAllowance;
import headgate.verifier.setup.ArmStance;
import headgate.verifier.setup.Setup;
import headgate.verifier.setup.Station;
import headgate.verifier.setup.StationSpace;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** {@code clearance.own-arm}: no head meets the part of its own arm that stays behind when the lift moves. */
public final class HeadToOwnArm implements Rule {

    private static final RuleInfo INFO = new RuleInfo(
            "clearance.own-arm",
            "Heads keep the required gap to the part of their own arm that stays when the lift moves",
            "A head that stands out behind its plate is lifted into its own arm's column.",
            "Every head is looked at in every posture at every height of its lift at which it takes it, overshoot and"
                    + " stopping distance included, against its arm's column: the material that goes along with the side"
                    + " shift but not with the lift. What moves with the mount is bolted to the head and is left out."
                    + " Required is the policy's gap to the frame plus angular play times the farthest occupied point and"
                    + " deflection under the largest horizontal force. Backlash, tracking and k sigma of the side shift take"
                    + " head and column along together, so they do not count.",
            "first principles; least gap from the policy",
            Severity.ERROR,
            "0.1.0",
            List.of("behaviour.answers", "rows.every-lane-has-an-arm"));

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public List<Finding> check(Case subject) {
        Setup setup = Setup.of(subject);
        double policyGap = subject.policy().value().frameGap().value();
        double k = subject.policy().value().coverageFactor().value();
        Approaches all = new Approaches(0, Optional.empty(), List.of());
        for (Station station : Stream.concat(setup.stations().stream(), setup.waiting().stream())
                .toList()) {
            Obstacle column = new Obstacle("its arm's column", StationSpace.column(station));
            if (!column.space().isEmpty()) {
                all = all.and(Approaches.of(List.of(head(station, k)), List.of(column), policyGap));
            }
        }
        if (all.tightest().isEmpty()) {
            return List.of(Finding.notApplicable(
                    INFO, "all arms", "No arm has material that stays behind when its lift moves."));
        }
        Approach worst = all.tightest().get();
        Finding.Builder finding = worst.finding(INFO, "policy:frameGap").examined(all.examined());
        all.changes().forEach(finding::propose);
        String head = worst.stance().station().orElseThrow().head().label() + " on arm "
                + worst.stance().arm().id();
        String gap = Dimension.LENGTH.text(worst.gap().metres());
        String required = Dimension.LENGTH.text(worst.required());
        return List.of(finding.decide(
                worst.margin() >= 0
                        ? "The nearest that a head comes to its own arm's column, " + head + ", is " + gap + " where "
                                + required + " is required."
                        : "Between " + head + " and its own arm's column there are only " + gap + " where " + required
                                + " is required."));
    }

    private static ArmStance head(Station station, double k) {
        ArmAllowance all = ArmAllowance.of(station, k);
        return new ArmStance(
                station.arm(),
                Optional.of(station),
                station.mount(),
                station.isAtWork() ? ArmStance.Kind.LIFTING : ArmStance.Kind.WAITING,
                StationSpace.head(station),
                new ArmAllowance(0, 0, 0, all.angular(), all.deflection()));
    }
}
