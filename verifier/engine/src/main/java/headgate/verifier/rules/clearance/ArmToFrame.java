package headgate.verifier.rules.clearance;

import headgate.api.shape.Interval;
import headgate.api.unit.Micrometres;
import headgate.verifier.check.Case;
import headgate.verifier.check.Dimension;
import headgate.verifier.check.Finding;
import headgate.verifier.check.Outcome;
import headgate.verifier.check.Rule;
import headgate.verifier.check.RuleInfo;
import headgate.verifier.check.Severity;
import headgate.verifier.geometry.ForbiddenOffsets;
import headgate.verifier.geometry.Occupied;
import headgate.verifier.geometry.Rounding;
import headgate.verifier.setup.ArmStance;
import headgate.verifier.setup.Setup;
import java.util.ArrayList;
import java.util.List;

/** {@code clearance.frame}: no arm, with its head, comes nearer to the carriage's frame than the required gap. */
public final class ArmToFrame implements Rule {

    private static final RuleInfo INFO = new RuleInfo(
            "clearance.frame",
            "Arms and heads keep the required gap to the carriage's frame",
            "A head that is lifted into a beam, or set into a leg, bends both, and nobody sees it coming from the seat.",
            "Every arm is looked at with its head and with its own bodies in every stance, at work, lifting, parked or"
                    + " waiting lifted, against every part of the frame. A head fills its fixed material and what moves with"
                    + " its tool point, placed at every point of the convex hull of its reach; a lift sweeps every height of"
                    + " its range, its overshoot and its stopping distance included. Required is the policy's gap to the"
                    + " frame plus the arm's backlash, tracking, k sigma, angular play times the farthest occupied point, and"
                    + " deflection under the largest horizontal force. The side shift is locked at its set-point; if some of"
                    + " the arm's rail is barred by the frame, a caution says where the arm may be set.",
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
        List<Obstacle> frame = frame(subject);
        if (frame.isEmpty()) {
            return List.of(Finding.undecided(
                    INFO,
                    "the frame",
                    "The carriage's file says nothing about its frame: give the parts that do not move with an arm under"
                            + " \"structure\"."));
        }
        double policyGap = subject.policy().value().frameGap().value();
        Approaches all = Approaches.of(subject, frame, policyGap);
        if (all.tightest().isEmpty()) {
            return List.of(Finding.notApplicable(INFO, "all arms", "Neither an arm nor a head holds any material."));
        }
        Approach tightest = all.tightest().get();
        Finding.Builder finding = tightest.finding(INFO, "policy:frameGap").examined(all.examined());
        String gap = Dimension.LENGTH.text(tightest.gap().metres());
        String required = Dimension.LENGTH.text(tightest.required());
        if (!all.tooNear().isEmpty()) {
            all.changes().forEach(finding::propose);
            return List.of(
                    finding.decide("Between " + tightest.label() + " there are only " + gap + " where " + required
                            + " is required; " + all.tooNear().size() + " of " + all.examined()
                            + " pairs of a stance and a part of the frame are too near."));
        }
        List<Finding> findings = new ArrayList<>();
        findings.add(finding.decide("The nearest that an arm or a head comes to the frame, " + tightest.label()
                + ", is " + gap + " where " + required + " is required."));
        findings.addAll(onTheRails(subject, frame, policyGap));
        return findings;
    }

    private static List<Obstacle> frame(Case subject) {
        return subject.carriage().value().structure().stream()
                .map(p -> new Obstacle(p.name(), Occupied.of(p.body())))
                .toList();
    }

    /** Where each arm may be set on its rail, if the frame bars some of it. */
    private static List<Finding> onTheRails(Case subject, List<Obstacle> frame, double policyGap) {
        Occupied all = frame.stream().map(Obstacle::space).reduce(Occupied.NOTHING, Occupied::and);
        double k = subject.policy().value().coverageFactor().value();
        List<Finding> findings = new ArrayList<>();
        for (List<ArmStance> stances : ArmStance.all(Setup.of(subject), k)) {
            ArmStance any = stances.get(0);
            Interval rail = any.arm().shift();
            Interval free = free(all, stances, policyGap);
            if (free.least() > rail.least() || free.most() < rail.most()) {
                findings.add(Finding.of(INFO, "arm " + any.arm().id())
                        .examined(stances.size())
                        .term("rail from", metres(rail.least()), Dimension.LENGTH)
                        .term("rail to", metres(rail.most()), Dimension.LENGTH)
                        .term("free from", metres(free.least()), Dimension.LENGTH)
                        .term("free to", metres(free.most()), Dimension.LENGTH)
                        .end(
                                Outcome.CAUTION,
                                "The frame bars some of the rail of arm "
                                        + any.arm().id() + ": from its set-point at y = "
                                        + Approach.text(any.mount().y()) + " it may be shifted to y = "
                                        + Approach.text(free.least()) + " and to y = " + Approach.text(free.most())
                                        + ", but its rail goes from " + Approach.text(rail.least()) + " to "
                                        + Approach.text(rail.most()) + "."));
            }
        }
        return findings;
    }

    /** The part of the rail, free of the frame in every stance, in which the set-point lies. */
    private static Interval free(Occupied frame, List<ArmStance> stances, double policyGap) {
        long at = stances.get(0).mount().y();
        Interval rail = stances.get(0).arm().shift();
        long least = rail.least();
        long most = rail.most();
        for (ArmStance stance : stances) {
            long required = Math.max(1, Rounding.up(Approach.required(stance, policyGap)));
            for (Interval barred :
                    ForbiddenOffsets.alongY(frame, stance.space(), required).intervals()) {
                if (barred.most() <= 0) {
                    least = Math.max(least, at + barred.most());
                } else {
                    most = Math.min(most, at + barred.least());
                }
            }
        }
        return new Interval(least, Math.max(least, most));
    }

    private static double metres(long micrometres) {
        return Micrometres.toMetres(micrometres);
    }
}
