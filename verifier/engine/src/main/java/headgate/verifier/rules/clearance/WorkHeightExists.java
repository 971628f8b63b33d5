package headgate.verifier.rules.clearance;

import headgate.api.shape.Interval;
import headgate.api.unit.Micrometres;
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
            "Each arm can hold its mount high enough over the plants and low enough for its tool",
            "A head set too high misses the hollows, one set too low runs into crests and plants; if no height serves"
                    + " all, it cannot work this field.",
            "With G the ground's motion under the arm (relief, roll and pitch at its place, wheel sink), d the depth of"
                    + " work and z the reach's heights in the head frame, a height h serves if h + G + d <= -z_min, h - G +"
                    + " d >= -z_max, and the lowest material z_low of the ready posture clears the plants: h - G + z_low >="
                    + " plant + gap. What lies wholly in a free strip between rows must only stay over the ground: h - G +"
                    + " z_strip >= 0. All within the lift. The plant is the tallest of canopy, weeds and plugs. The interval of such heights must be at least twice the lift's"
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
                .min(Comparator.comparingDouble(s -> s.height().width() - WorkHeight.neededWidth(s.arm())))
                .orElseThrow();
        WorkHeight height = worst.height();
        double width = height.width();
        Interval reach = worst.sheet().reach().height();
        Finding.Builder finding = Finding.of(INFO, worst.label())
                .examined(stations.size())
                .comparison(Comparison.atLeast(width, WorkHeight.neededWidth(worst.arm()), Dimension.LENGTH))
                .term("ground motion G", Micrometres.toMetres(height.groundMotion()), Dimension.LENGTH)
                .term("depth of work d", Micrometres.toMetres(height.depth()), Dimension.LENGTH)
                .term("lowest tool point z_min", Micrometres.toMetres(reach.least()), Dimension.LENGTH)
                .term("highest tool point z_max", Micrometres.toMetres(reach.most()), Dimension.LENGTH)
                .term("lowest material when ready z_low", Micrometres.toMetres(height.lowest()), Dimension.LENGTH)
                .term("tallest plant with the gap over it", Micrometres.toMetres(height.plants()), Dimension.LENGTH)
                .term("lift from", Micrometres.toMetres(worst.arm().lift().least()), Dimension.LENGTH)
                .term("lift to", Micrometres.toMetres(worst.arm().lift().most()), Dimension.LENGTH);
        height.lowestInStrip()
                .ifPresent(z -> finding.term(
                        "lowest material when ready in a free strip z_strip",
                        Micrometres.toMetres(z),
                        Dimension.LENGTH));
        if (height.allowed().isPresent()) {
            return List.of(finding.decide("The narrowest choice is that of " + worst.label() + ": mount heights from "
                    + text(height.allowed().get().least()) + " to "
                    + text(height.allowed().get().most()) + "."));
        }
        String why = height.least() <= height.most()
                ? "tool and plants ask for mount heights from " + text(height.least()) + " to " + text(height.most())
                        + ", its lift gives " + text(height.lift().least()) + " to "
                        + text(height.lift().most())
                : "to clear plants and crests it must stand at " + text(height.least())
                        + " or more, to reach the hollows at " + text(height.most()) + " or less";
        return List.of(finding.decide("No mount height serves " + worst.label() + ": " + why + "; "
                + Dimension.LENGTH.text(WorkHeight.neededWidth(worst.arm()) - width) + " are missing."));
    }

    private static String text(long micrometres) {
        return Dimension.LENGTH.text(Micrometres.toMetres(micrometres));
    }
}
