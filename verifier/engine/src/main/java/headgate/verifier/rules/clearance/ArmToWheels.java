package headgate.verifier.rules.clearance;

import headgate.api.shape.Interval;
import headgate.runtime.carriage.Carriage;
import headgate.verifier.check.Case;
import headgate.verifier.check.Dimension;
import headgate.verifier.check.Finding;
import headgate.verifier.check.Outcome;
import headgate.verifier.check.Rule;
import headgate.verifier.check.RuleInfo;
import headgate.verifier.check.Severity;
import headgate.verifier.setup.WheelRun;
import headgate.verifier.setup.WheelSpace;
import java.util.List;
import java.util.stream.Collectors;

/** {@code clearance.wheels}: no arm, with its head, comes nearer to a wheel than the required gap. */
public final class ArmToWheels implements Rule {

    private static final RuleInfo INFO = new RuleInfo(
            "clearance.wheels",
            "Arms and heads keep the required gap to the wheels",
            "A wheel is moved when the row spacing changes, and nobody looks again whether the arm beside it is still free.",
            "Every arm is looked at with its head in every stance, as for the frame, against every wheel. A wheel fills a box"
                    + " as wide as its tyre, and as long and as high as the tyre's diameter, which is an outer bound of a"
                    + " round tyre; a steered wheel fills what that box sweeps as it is turned about its middle to either side, as"
                    + " far as the carriage's file says. It stands on the ground. First each wheel is taken at every place to which it can be set; if it is too near there, at the"
                    + " place between the rows where it is set for this plan, and a caution says so. Required is the policy's"
                    + " gap to the frame plus the arm's own terms.",
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
        List<Carriage.Wheel> wheels = subject.carriage().value().wheels();
        if (wheels.isEmpty()) {
            return List.of(
                    Finding.undecided(
                            INFO,
                            "the wheels",
                            "The carriage's file says nothing about its wheels: give each one's place, tyre width and diameter."));
        }
        List<String> unknown = wheels.stream()
                .filter(w -> w.diameter().isEmpty())
                .map(Carriage.Wheel::name)
                .toList();
        if (!unknown.isEmpty()) {
            return List.of(Finding.undecided(
                    INFO,
                    "the wheels",
                    "The carriage's file does not say how large some tyres are: give the diameter of "
                            + unknown.stream().map(n -> "wheel " + n).collect(Collectors.joining(", ")) + "."));
        }
        double policyGap = subject.policy().value().frameGap().value();
        Approaches anywhere = Approaches.of(
                subject, wheels.stream().map(w -> obstacle(w, w.y())).toList(), policyGap);
        if (anywhere.tightest().isEmpty()) {
            return List.of(Finding.notApplicable(INFO, "all arms", "Neither an arm nor a head holds any material."));
        }
        if (anywhere.tooNear().isEmpty()) {
            Approach tightest = anywhere.tightest().get();
            return List.of(described(tightest, anywhere)
                    .decide("Wherever the wheels are set, the nearest that an arm or a head comes to one, "
                            + tightest.label() + ", is " + text(tightest.gap().metres()) + " where "
                            + text(tightest.required()) + " is required."));
        }
        return List.of(whereTheyAreSet(subject, policyGap));
    }

    private static Finding whereTheyAreSet(Case subject, double policyGap) {
        List<WheelRun> runs = WheelRun.of(subject);
        Approaches set = Approaches.of(
                subject,
                runs.stream().map(r -> obstacle(r.wheel(), Interval.at(r.y()))).toList(),
                policyGap);
        Approach tightest = set.tightest().orElseThrow();
        Finding.Builder finding = described(tightest, set);
        if (set.tooNear().isEmpty()) {
            return finding.end(
                    Outcome.CAUTION,
                    "The arms clear the wheels only where those are set for this plan: "
                            + runs.stream()
                                    .map(r -> "wheel " + r.wheel().name() + " at y = " + Approach.text(r.y()))
                                    .collect(Collectors.joining(", "))
                            + ". The tightest there, " + tightest.label() + ", keeps "
                            + text(tightest.gap().metres()) + " where " + text(tightest.required()) + " is required.");
        }
        set.changes().forEach(finding::propose);
        return finding.decide("Between " + tightest.label() + ", set for this plan, there are only "
                + text(tightest.gap().metres()) + " where " + text(tightest.required()) + " is required; "
                + set.tooNear().size() + " of " + set.examined() + " pairs of a stance and a wheel are too near.");
    }

    private static Finding.Builder described(Approach tightest, Approaches all) {
        return tightest.finding(INFO, "policy:frameGap").examined(all.examined());
    }

    private static Obstacle obstacle(Carriage.Wheel wheel, Interval middle) {
        return new Obstacle(
                "wheel " + wheel.name(), WheelSpace.of(wheel, middle).orElseThrow());
    }

    private static String text(double metres) {
        return Dimension.LENGTH.text(metres);
    }
}
