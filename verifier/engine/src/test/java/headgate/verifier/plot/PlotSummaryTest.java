package headgate.verifier.plot;

import static headgate.verifier.plot.Outcomes.madeUp;
import static headgate.verifier.plot.Outcomes.outcome;
import static headgate.verifier.plot.Outcomes.recorded;
import static headgate.verifier.plot.Outcomes.wanted;
import static org.assertj.core.api.Assertions.assertThat;

import headgate.verifier.replay.Miss;
import headgate.verifier.trial.Standing;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What is wanted is 80 % at 0.2 m/s, where 2 weeds per square metre are expected. */
class PlotSummaryTest {

    private static PlotSummary summary(PlotResult... plots) {
        return PlotSummary.of(List.of(plots), wanted(), List.of(0.1, 0.2));
    }

    @Test
    void putsRecordedPlotsFirstAndOthersByDensity() {
        PlotSummary summary = summary(
                madeUp(1, 4, outcome(0.1, 100, 90), outcome(0.2, 100, 50)),
                madeUp(1, 2, outcome(0.1, 100, 95), outcome(0.2, 100, 90)),
                recorded("a.csv", outcome(0.1, 100, 95), outcome(0.2, 100, 95)),
                madeUp(2, 2, outcome(0.1, 100, 95), outcome(0.2, 100, 94)));

        assertThat(summary.groups()).hasSize(3);
        assertThat(summary.groups()).extracting(PlotSummary.Group::madeUp).containsExactly(false, true, true);
        assertThat(summary.groups()).extracting(PlotSummary.Group::plots).containsExactly(1, 2, 1);
        // What is expected is judged, and what was recorded; another density is for comparison.
        assertThat(summary.groups()).extracting(PlotSummary.Group::judged).containsExactly(true, true, false);
        PlotSummary.Cell two = summary.groups().get(1).at(0.2).orElseThrow();
        assertThat(two.targets()).isEqualTo(200);
        assertThat(two.successful()).isEqualTo(184);
        assertThat(two.missed()).containsEntry(Miss.ARM_BUSY, 16L);
        assertThat(two.cropLost()).isEqualTo(6);
        assertThat(two.coverage().of()).isEqualTo("2 seeds");
    }

    @Test
    void failsWhereMoreOfTheCropIsLostThanMayBe() {
        // Each plot loses 3 of 50 plants, 6 %.
        PlotResult passes = recorded("a.csv", outcome(0.2, 1000, 950));
        PlotSummary.Wanted atTheLimit = new PlotSummary.Wanted(0.2, 0.8, 0.95, OptionalDouble.of(2), 0.06);
        PlotSummary.Wanted stricter = new PlotSummary.Wanted(0.2, 0.8, 0.95, OptionalDouble.of(2), 0.059);

        assertThat(PlotSummary.of(List.of(passes), atTheLimit, List.of(0.2)).standing())
                .isEqualTo(Standing.PASSES);
        assertThat(PlotSummary.of(List.of(passes), stricter, List.of(0.2)).standing())
                .isEqualTo(Standing.FAILS);
    }

    @Test
    void failsBeforeUndecidedBeforePasses() {
        PlotResult passes = recorded("a.csv", outcome(0.1, 1000, 950), outcome(0.2, 1000, 950));
        PlotResult fails = madeUp(1, 2, outcome(0.1, 1000, 950), outcome(0.2, 1000, 400));
        PlotResult open = madeUp(1, 2, outcome(0.1, 10, 9), outcome(0.2, 10, 8));

        assertThat(summary(passes).standing()).isEqualTo(Standing.PASSES);
        assertThat(summary(passes, open).standing()).isEqualTo(Standing.UNDECIDED);
        assertThat(summary(passes, fails).standing()).isEqualTo(Standing.FAILS);
    }

    @Test
    void theBestSpeedIsTheLastBeforeTheFirstThatDoesNotPass() {
        PlotSummary.Group dips = summary(recorded(
                        "a.csv",
                        outcome(0.1, 1000, 950),
                        outcome(0.12, 1000, 940),
                        outcome(0.15, 1000, 500),
                        outcome(0.2, 1000, 950)))
                .groups()
                .get(0);
        assertThat(dips.best()).contains(0.12);
        assertThat(dips.toTheTop()).isFalse();
        PlotSummary.Group all = summary(recorded("a.csv", outcome(0.1, 1000, 950), outcome(0.2, 1000, 950)))
                .groups()
                .get(0);
        assertThat(all.best()).contains(0.2);
        assertThat(all.toTheTop()).isTrue();
        assertThat(summary(recorded("a.csv", outcome(0.1, 1000, 1)))
                        .groups()
                        .get(0)
                        .best())
                .isEmpty();
    }

    @Test
    void nothingToBeTreatedIsUndecided() {
        PlotSummary bare = Outcomes.nothing().summary();
        assertThat(bare.standing()).isEqualTo(Standing.UNDECIDED);
        assertThat(bare.groups().get(0).cells().get(0).coverage().of()).isEqualTo("no plants");
    }

    @Test
    void passesAtMoreSpeedsAreAddedInTheirOrder() {
        PlotResult both = recorded("a.csv", outcome(0.1, 10, 10), outcome(0.2, 10, 5))
                .with(recorded("a.csv", outcome(0.15, 10, 8)));
        assertThat(both.passes()).extracting(p -> p.outcome().speed()).containsExactly(0.1, 0.15, 0.2);
        assertThat(both.asked()).isEqualTo(200);
    }

    private static DensityLadder.Rung rung(double density, long targets, long successful) {
        return new DensityLadder.Rung(
                density,
                summary(recorded("a.csv", outcome(0.2, targets, successful)))
                        .groups()
                        .get(0)
                        .cells()
                        .get(0));
    }

    @Test
    void aLadderOfDensitiesEndsBeforeTheFirstThatFails() {
        DensityLadder ladder = new DensityLadder(
                0.2, List.of(rung(3, 1000, 400), rung(1, 1000, 950), rung(2, 1000, 940), rung(4, 1000, 990)));
        assertThat(ladder.rungs()).extracting(DensityLadder.Rung::density).containsExactly(1.0, 2.0, 3.0, 4.0);
        assertThat(ladder.borne()).contains(2.0);
        assertThat(ladder.toTheTop()).isFalse();
        assertThat(ladder.finer(d -> d)).hasSize(9).allMatch(d -> d > 2 && d < 3);
    }

    /** Few plants at a low density leave it open; that is nothing against a higher one that passes. */
    @Test
    void aDensityThatIsOpenDoesNotEndTheLadder() {
        DensityLadder ladder = new DensityLadder(0.2, List.of(rung(1, 10, 9), rung(2, 1000, 940)));
        assertThat(ladder.openBelow()).isTrue();
        assertThat(ladder.borne()).contains(2.0);
        assertThat(ladder.toTheTop()).isTrue();
        assertThat(ladder.finer(d -> d)).isEmpty();
        assertThat(new DensityLadder(0.2, List.of(rung(1, 10, 9))).borne()).isEmpty();
        assertThat(new DensityLadder(0.2, List.of(rung(1, 1000, 90))).openBelow())
                .isFalse();
    }
}
