package headgate.verifier.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import headgate.verifier.replay.ReplayOutcome;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class BoundsTest {

    @Test
    void boundsAMeanOverSeeds() {
        // Mean 0.8; deviations -0.1, 0, 0.1, so s = 0.1; t(0.95, 2) = 2.920: 0.8 -+ 2.920 x 0.1 / sqrt(3).
        Bounds bounds = Bounds.ofSeeds(new double[] {0.7, 0.8, 0.9}, 0.95);
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
        assertThat(Bounds.ofSeeds(new double[] {0.9}, 0.95).against(0.5)).isEqualTo(Standing.UNDECIDED);
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
            double[] values = new double[8];
            for (int i = 0; i < values.length; i++) {
                values[i] = 0.5 + 0.02 * random.nextGaussian();
            }
            missed += Bounds.ofSeeds(values, 0.95).lower() > 0.5 ? 1 : 0;
        }
        // 200 of 4000 expected, standard deviation 13.8.
        assertThat(missed).isBetween(159, 241);
    }
}
