package headgate.verifier.plot;

import headgate.verifier.check.Edit;
import headgate.verifier.remedy.SetSpeed;
import headgate.verifier.replay.ActionObserver;
import headgate.verifier.replay.ArmUse;
import headgate.verifier.replay.Miss;
import headgate.verifier.replay.ReplayOutcome;
import headgate.verifier.trial.Bounds;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;

/** Results of replays, made by hand. */
public final class Outcomes {

    private Outcomes() {}

    /** What came of a speed: plants in blocks of ten, of which the first were treated; the rest found an arm busy. */
    public static ReplayOutcome outcome(double speed, long targets, long successful) {
        List<ReplayOutcome.Block> blocks = new ArrayList<>();
        for (long first = 0; first < targets; first += 10) {
            long here = Math.min(10, targets - first);
            blocks.add(new ReplayOutcome.Block(here, Math.max(0, Math.min(here, successful - first))));
        }
        return new ReplayOutcome(
                targets,
                targets > successful ? Map.of(Miss.ARM_BUSY, targets - successful) : Map.of(),
                successful,
                1,
                successful,
                2,
                new ReplayOutcome.Crop(50, 3, 4),
                new ReplayOutcome.Planting(0, 0, 0, 0, 0, 0, 0, 0),
                List.of(new ArmUse("a1", successful, 12.5, 1.5, 0)),
                blocks,
                9.5,
                speed,
                0,
                OptionalLong.of(targets),
                7);
    }

    private static PlotResult.Pass pass(ReplayOutcome outcome, boolean shown) {
        return new PlotResult.Pass(
                outcome,
                shown
                        ? List.of(new ActionObserver.Done(0, 1_500_000, -250_000, 0.5, 0.6, 0.9, 1.2, 2.0, -200_000, 1))
                        : List.of());
    }

    /** A recorded plot. */
    public static PlotResult recorded(String name, ReplayOutcome... outcomes) {
        return new PlotResult(name, "a".repeat(64), false, OptionalDouble.empty(), 100, passes(outcomes));
    }

    /** A plot that was made up. */
    public static PlotResult madeUp(long seed, double density, ReplayOutcome... outcomes) {
        return new PlotResult("seed " + seed, "b".repeat(64), true, OptionalDouble.of(density), 100, passes(outcomes));
    }

    private static List<PlotResult.Pass> passes(ReplayOutcome... outcomes) {
        List<PlotResult.Pass> passes = new ArrayList<>();
        for (ReplayOutcome outcome : outcomes) {
            passes.add(pass(outcome, passes.isEmpty()));
        }
        return passes;
    }

    /** What is wanted: 0.2 m/s and 80 %, where 2 weeds per square metre are expected and 6 % of the crop may be lost. */
    public static PlotSummary.Wanted wanted() {
        return new PlotSummary.Wanted(0.2, 0.8, 0.95, OptionalDouble.of(2), 0.06);
    }

    /** A study of a recorded plot and two that were made up, with all that a study can hold. */
    public static PlotStudy study() {
        List<PlotResult> plots = List.of(
                recorded("=row, \"one\".csv", outcome(0.1, 200, 190), outcome(0.15, 200, 189), outcome(0.2, 200, 100)),
                madeUp(1, 2, outcome(0.1, 100, 97), outcome(0.2, 100, 55)),
                madeUp(2, 2, outcome(0.1, 100, 95), outcome(0.2, 100, 60)));
        PlotSummary summary = PlotSummary.of(plots, wanted(), List.of(0.1, 0.2));
        Edit slower = new SetSpeed(0.15);
        return new PlotStudy(
                plots,
                summary,
                Optional.of(new DensityLadder(
                        0.2,
                        List.of(
                                new DensityLadder.Rung(
                                        2, summary.groups().get(1).cells().get(1)),
                                new DensityLadder.Rung(
                                        1, summary.groups().get(1).cells().get(0))))),
                List.of(new Proposal(slower, new Bounds(0.9, 0.85, 0.94, "one plot, 20 blocks"))),
                1234);
    }

    /** A study of a plot on which nothing stands that is to be treated. */
    public static PlotStudy nothing() {
        List<PlotResult> plots = List.of(new PlotResult(
                "bare.csv",
                "c".repeat(64),
                false,
                OptionalDouble.empty(),
                0,
                List.of(pass(outcome(0.2, 0, 0), false))));
        return new PlotStudy(plots, PlotSummary.of(plots, wanted(), List.of(0.2)), Optional.empty(), List.of(), 0);
    }
}
