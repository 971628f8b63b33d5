package headgate.verifier.rules.clearance;

import headgate.api.shape.Interval;
import headgate.api.unit.Micrometres;
import headgate.runtime.carriage.Arm;
import headgate.verifier.check.Case;
import headgate.verifier.check.Comparison;
import headgate.verifier.check.Dimension;
import headgate.verifier.check.Finding;
import headgate.verifier.check.Rule;
import headgate.verifier.check.RuleInfo;
import headgate.verifier.check.Severity;
import headgate.verifier.setup.Setup;
import headgate.verifier.setup.Station;
import headgate.verifier.setup.WorkHeight;
import java.util.Comparator;
import java.util.List;

/** {@code clearance.work-height}: there is a mount height from which the tool reaches hollow and crest alike. */
public final class WorkHeightExists implements Rule {

    private static final RuleInfo INFO = new RuleInfo(
            "clearance.work-height",
            "Each arm can hold its mount at a height from which the tool reaches hollows and crests",
            "A head set too high misses the hollows, one set too low runs into the crests; if no height serves both, it"
                    + " cannot work this field.",
            "With G the ground's motion under the arm (relief, roll and pitch at its place, wheel sink), d the depth of"
                    + " work and z the reach's heights in the head frame, a height h serves if h + G + d <= -z_min and h - G"
                    + " + d >= -z_max, within the lift. The interval of such heights must be at least twice the lift's"
                    + " tolerance wide; it is part of the result.",
            "first principles",
            Severity.ERROR,
            "0.1.0",
            List.of("behaviour.answers", "rows.every-lane-has-an-arm"));

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public List<Finding> check(Case subject) {
        List<Station> stations = Setup.of(subject).stations();
        Station worst = stations.stream()
                .min(Comparator.comparingDouble(s -> width(s) - needed(s.arm())))
                .orElseThrow();
        WorkHeight height = worst.height();
        double width = width(worst);
        Interval reach = worst.sheet().reach().height();
        Finding.Builder finding = Finding.of(INFO, worst.label())
                .examined(stations.size())
                .comparison(Comparison.atLeast(width, needed(worst.arm()), Dimension.LENGTH))
                .term("ground motion G", Micrometres.toMetres(height.groundMotion()), Dimension.LENGTH)
                .term("depth of work d", Micrometres.toMetres(height.depth()), Dimension.LENGTH)
                .term("lowest tool point z_min", Micrometres.toMetres(reach.least()), Dimension.LENGTH)
                .term("highest tool point z_max", Micrometres.toMetres(reach.most()), Dimension.LENGTH)
                .term("lift from", Micrometres.toMetres(worst.arm().lift().least()), Dimension.LENGTH)
                .term("lift to", Micrometres.toMetres(worst.arm().lift().most()), Dimension.LENGTH);
        if (height.allowed().isPresent()) {
            return List.of(finding.decide("The narrowest choice is that of " + worst.label() + ": mount heights from "
                    + text(height.allowed().get().least()) + " to "
                    + text(height.allowed().get().most()) + "."));
        }
        String why = height.byReach()
                .map(i -> "its reach asks for mount heights from " + text(i.least()) + " to " + text(i.most())
                        + ", its lift gives " + text(worst.arm().lift().least()) + " to "
                        + text(worst.arm().lift().most()))
                .orElse("its reach is not tall enough for the ground's motion of " + text(height.groundMotion())
                        + " up and down");
        return List.of(finding.decide("No mount height serves " + worst.label() + ": " + why + "; "
                + Dimension.LENGTH.text(needed(worst.arm()) - width) + " are missing."));
    }

    /** How wide the choice of heights is, m; how much is missing, as a negative number, if there is none. */
    private static double width(Station station) {
        WorkHeight height = station.height();
        Interval reach = station.sheet().reach().height();
        long most = Math.min(
                -reach.least() - height.groundMotion() - height.depth(),
                station.arm().lift().most());
        long least = Math.max(
                -reach.most() + height.groundMotion() - height.depth(),
                station.arm().lift().least());
        return Micrometres.toMetres(most - least);
    }

    /** Twice the lift's tolerance: the guard must be able to hold the mount within the interval. */
    private static double needed(Arm arm) {
        return 2 * arm.liftMotion().overshoot();
    }

    private static String text(long micrometres) {
        return Dimension.LENGTH.text(Micrometres.toMetres(micrometres));
    }
}
