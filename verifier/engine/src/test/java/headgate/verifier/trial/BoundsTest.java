package headgate.verifier.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import headgate.verifier.formula.ExactShare;
import headgate.verifier.replay.ReplayOutcome;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BoundsTest {

    private static List<ReplayOutcome.Block> seeds(long targets, long... successful) {
        return Arrays.stream(successful)
                .mapToObj(s -> new ReplayOutcome.Block(targets, s))
                .toList();
    }

    @Test
    void boundsAMeanOverSeeds() {
        // Mean 0.8; deviations -0.1, 0, 0.1, so s = 0.1; t(0.95, 2) = 2.920: 0.8 -+ 2.920 x 0.1 / sqrt(3).
        Bounds bounds = Bounds.ofSeeds(seeds(1000, 700, 800, 900), 0.95);
        assertThat(bounds.mean()).isCloseTo(0.8, within(1e-12));
        assertThat(bounds.lower()).isCloseTo(0.8 - 2.920 * 0.1 / Math.sqrt(3), within(1e-4));
        assertThat(bounds.upper()).isCloseTo(0.8 + 2.920 * 0.1 / Math.sqrt(3), within(1e-4));
        assertThat(bounds.of()).isEqualTo("3 seeds");
    }

    @Test
    void passesFailsOrIsUndecided() {
        Bounds bounds = new Bounds(0.8, 0.75, 0.85, "8 seeds");
        assertThat(bounds.against(0.75)).isEqualTo(Standing.PASSES);
        assertThat(bounds.against(0.8)).isEqualTo(Standing.UNDECIDED);
        assertThat(bounds.against(0.851)).isEqualTo(Standing.FAILS);
    }

    @Test
    void boundsNothingByOneSeed() {
        assertThat(Bounds.ofSeeds(seeds(10, 9), 0.95).against(0.5)).isEqualTo(Standing.UNDECIDED);
    }

    /** Blocks of one plant each: the bootstrap then is a binomial law, whose 95 % bound is near 1.645 sigma (from memory). */
    @Test
    void drawsTheBlocksOfOnePlotAnew() {
        List<ReplayOutcome.Block> blocks = new ArrayList<>(Collections.nCopies(300, new ReplayOutcome.Block(1, 1)));
        blocks.addAll(Collections.nCopies(100, new ReplayOutcome.Block(1, 0)));
        Bounds bounds = Bounds.ofBlocks(blocks, 0.95, 7);
        double sigma = Math.sqrt(0.75 * 0.25 / 400);
        assertThat(bounds.mean()).isEqualTo(0.75);
        assertThat(bounds.lower()).isCloseTo(0.75 - 1.645 * sigma, within(0.006));
        assertThat(bounds.upper()).isCloseTo(0.75 + 1.645 * sigma, within(0.006));
        assertThat(Bounds.ofBlocks(blocks, 0.95, 7)).isEqualTo(bounds);
    }

    /** A stand with ten times the plants counts ten times: 90 of 100 and 5 of 10 are 95 of 110. */
    @Test
    void weighsStandsByTheirPlants() {
        Bounds bounds = Bounds.ofSeeds(List.of(new ReplayOutcome.Block(100, 90), new ReplayOutcome.Block(10, 5)), 0.95);
        assertThat(bounds.mean()).isCloseTo(95.0 / 110, within(1e-12));
    }

    /**
     * Seeds that come out alike are no certainty: 180 of 200 plants leave what Clopper and Pearson leave, and so do plants
     * that were all treated: 0.05^(1/200) = 0.9851.
     */
    @Test
    void equalSeedsAreBoundByTheirPlants() {
        Bounds alike = Bounds.ofSeeds(seeds(50, 45, 45, 45, 45), 0.95);
        assertThat(alike.lower()).isEqualTo(ExactShare.atLeast(180, 200, 0.95)).isLessThan(0.87);
        assertThat(alike.upper()).isEqualTo(ExactShare.atMost(180, 200, 0.95)).isGreaterThan(0.93);
        assertThat(Bounds.ofSeeds(seeds(50, 50, 50, 50, 50), 0.95).lower()).isCloseTo(0.9851, within(5e-5));
    }

    @Test
    void boundsNothingWithoutPlants() {
        assertThat(Bounds.ofSeeds(seeds(0, 0, 0), 0.95)).isEqualTo(Bounds.NO_PLANTS);
        assertThat(Bounds.ofBlocks(seeds(0, 0, 0), 0.95, 1)).isEqualTo(Bounds.NO_PLANTS);
        assertThat(Bounds.ofBlocks(List.of(), 0.95, 1)).isEqualTo(Bounds.NO_PLANTS);
        assertThat(Bounds.NO_PLANTS.against(0.01)).isEqualTo(Standing.UNDECIDED);
    }

    /** One block, however many plants it holds, says nothing of the next one; a block without plants says nothing. */
    @Test
    void boundsNothingByOneBlock() {
        List<ReplayOutcome.Block> blocks =
                List.of(new ReplayOutcome.Block(1, 1), new ReplayOutcome.Block(0, 0), new ReplayOutcome.Block(0, 0));
        Bounds bounds = Bounds.ofBlocks(blocks, 0.95, 7);
        assertThat(bounds.mean()).isEqualTo(1);
        assertThat(bounds.lower()).isZero();
        assertThat(bounds.against(0.5)).isEqualTo(Standing.UNDECIDED);
    }

    /** Clopper and Pearson, Biometrika 26 (1934) 404-413, for n of n: 0.05^(1/10) = 0.7411, and 0.05^(1/59) = 0.9505. */
    @Test
    void saysLittleByAFewBlocksWithoutAMiss() {
        List<ReplayOutcome.Block> treated = Collections.nCopies(10, new ReplayOutcome.Block(4, 4));
        assertThat(Bounds.ofBlocks(treated, 0.95, 7).lower()).isCloseTo(0.7411, within(5e-5));
        assertThat(Bounds.ofBlocks(Collections.nCopies(59, new ReplayOutcome.Block(1, 1)), 0.95, 7)
                        .lower())
                .isCloseTo(0.9505, within(5e-5));
        List<ReplayOutcome.Block> missed = Collections.nCopies(10, new ReplayOutcome.Block(4, 0));
        assertThat(Bounds.ofBlocks(missed, 0.95, 7).upper()).isCloseTo(1 - 0.7411, within(5e-5));
    }

    /** The bound is what it says: over many trials of a known mean it is missed about as often as allowed. */
    @Test
    void isMissedOnceInTwenty() {
        SplittableRandom random = new SplittableRandom(3);
        int missed = 0;
        for (int trial = 0; trial < 4000; trial++) {
            long[] values = new long[8];
            for (int i = 0; i < values.length; i++) {
                // Stands that differ by far more than the chance of their plants.
                values[i] = Math.round(500_000 + 20_000 * random.nextGaussian());
            }
            missed += Bounds.ofSeeds(seeds(1_000_000, values), 0.95).lower() > 0.5 ? 1 : 0;
        }
        // 200 of 4000 expected, standard deviation 13.8.
        assertThat(missed).isBetween(159, 241);
    }

    /** Few plants that are nearly all treated, where Student's law alone is missed far too often. */
    @ParameterizedTest
    @CsvSource({"2, 20, 0.97", "4, 20, 0.98", "8, 50, 0.995", "3, 30, 0.5"})
    void isNotMissedMoreOftenWithFewPlants(int stands, int plants, double chance) {
        SplittableRandom random = new SplittableRandom(11);
        int missed = 0;
        int byStudentAlone = 0;
        for (int trial = 0; trial < 4000; trial++) {
            long[] values = new long[stands];
            for (int i = 0; i < stands; i++) {
                for (int plant = 0; plant < plants; plant++) {
                    values[i] += random.nextDouble() < chance ? 1 : 0;
                }
            }
            Bounds bounds = Bounds.ofSeeds(seeds(plants, values), 0.95);
            missed += bounds.lower() > chance ? 1 : 0;
            boolean equal = Arrays.stream(values).distinct().count() == 1;
            byStudentAlone += equal && bounds.mean() > chance ? 1 : 0;
        }
        // 200 of 4000 are allowed; three standard deviations of 13.8 more are chance.
        assertThat(missed).isLessThanOrEqualTo(241);
        if (chance > 0.9) {
            assertThat(byStudentAlone).isGreaterThan(241);
        }
    }

    /** A few blocks drawn anew show too little spread: with the others it is not missed more often than allowed. */
    @Test
    void isNotMissedMoreOftenWithFewBlocks() {
        SplittableRandom random = new SplittableRandom(5);
        int missed = 0;
        for (int trial = 0; trial < 1000; trial++) {
            long[] values = new long[4];
            for (int i = 0; i < values.length; i++) {
                values[i] = Math.max(0, Math.min(1000, Math.round(500 + 100 * random.nextGaussian())));
            }
            missed += Bounds.ofBlocks(seeds(1000, values), 0.95, trial).lower() > 0.5 ? 1 : 0;
        }
        // 50 of 1000 are allowed; three standard deviations of 6.9 more are chance.
        assertThat(missed).isLessThanOrEqualTo(70);
    }
}
