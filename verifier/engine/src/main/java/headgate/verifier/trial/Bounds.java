package headgate.verifier.trial;

import headgate.verifier.formula.StudentT;
import headgate.verifier.replay.ReplayOutcome;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

/**
 * A mean with its bounds: it is at least the lower one, and it is at most the upper one, each with the given confidence.
 *
 * @param mean the mean
 * @param lower the one-sided lower bound
 * @param upper the one-sided upper bound
 * @param of what they are taken from, such as "8 seeds" or "one plot, 40 blocks"
 */
public record Bounds(double mean, double lower, double upper, String of) {

    /** How often blocks are drawn anew. */
    private static final int DRAWS = 2000;

    /**
     * The bounds of a mean over seeds, by Student's law. One seed alone bounds nothing.
     *
     * @param values one value for each seed; at least one
     * @param confidence level, 0.5 to less than 1
     * @return the bounds, within 0 and 1
     */
    public static Bounds ofSeeds(double[] values, double confidence) {
        int n = values.length;
        double mean = Arrays.stream(values).sum() / n;
        String of = n + (n == 1 ? " seed" : " seeds");
        if (n == 1) {
            return new Bounds(mean, 0, 1, of);
        }
        double squares = 0;
        for (double value : values) {
            squares += (value - mean) * (value - mean);
        }
        double half = StudentT.quantile(confidence, n - 1) * Math.sqrt(squares / (n - 1) / n);
        return new Bounds(mean, Math.max(0, mean - half), Math.min(1, mean + half), of);
    }

    /**
     * The bounds of the coverage of one plot: its blocks of travel are drawn anew with replacement (B. Efron, Annals of
     * Statistics 7 (1979) 1-26). One block alone bounds nothing. If all plants of n blocks were treated, or none, drawing
     * anew shows no spread; then a block wholly treated, or not at all, has at least the chance that n of n such blocks
     * leave it (C. J. Clopper and E. S. Pearson, Biometrika 26 (1934) 404-413): (1 - confidence)^(1/n).
     *
     * @param blocks the blocks of the plot, at least one
     * @param confidence level, 0.5 to less than 1
     * @param seed of the draws
     * @return the bounds
     */
    public static Bounds ofBlocks(List<ReplayOutcome.Block> blocks, double confidence, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double[] drawn = new double[DRAWS];
        for (int i = 0; i < DRAWS; i++) {
            long targets = 0;
            long successful = 0;
            for (int k = 0; k < blocks.size(); k++) {
                ReplayOutcome.Block block = blocks.get(random.nextInt(blocks.size()));
                targets += block.targets();
                successful += block.successful();
            }
            drawn[i] = targets == 0 ? 1 : (double) successful / targets;
        }
        Arrays.sort(drawn);
        long targets = blocks.stream().mapToLong(ReplayOutcome.Block::targets).sum();
        long successful =
                blocks.stream().mapToLong(ReplayOutcome.Block::successful).sum();
        int below = (int) Math.floor((1 - confidence) * DRAWS);
        double lower = drawn[below];
        double upper = drawn[DRAWS - 1 - below];
        long holding = blocks.stream().filter(b -> b.targets() > 0).count();
        if (holding < 2) {
            lower = 0;
            upper = 1;
        } else if (successful == targets) {
            lower = StrictMath.pow(1 - confidence, 1.0 / holding);
        } else if (successful == 0) {
            upper = 1 - StrictMath.pow(1 - confidence, 1.0 / holding);
        }
        return new Bounds(
                targets == 0 ? 1 : (double) successful / targets,
                lower,
                upper,
                "one plot, " + blocks.size() + (blocks.size() == 1 ? " block" : " blocks"));
    }

    /**
     * Holds the bounds against a wish.
     *
     * @param wanted the least value that is wanted
     * @return how they stand to it
     */
    public Standing against(double wanted) {
        if (lower >= wanted) {
            return Standing.PASSES;
        }
        return upper < wanted ? Standing.FAILS : Standing.UNDECIDED;
    }
}
