package headgate.verifier.trial;

import headgate.verifier.formula.ExactShare;
import headgate.verifier.formula.StudentT;
import headgate.verifier.replay.ReplayOutcome;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

/**
 * A share of plants with its bounds: it is at least the lower one, and it is at most the upper one, each with the given
 * confidence.
 *
 * <p>Two things make a share unsure: stands differ, and only so many plants were counted. The spread between stands is taken
 * by Student's law of the ratio of two sums (W. G. Cochran, Sampling Techniques, chapter 6; from memory). Few stands may
 * agree by chance, so the bounds are never nearer than those that the number of plants alone leaves if each is treated or
 * missed by itself (C. J. Clopper and E. S. Pearson, Biometrika 26 (1934) 404-413).
 *
 * @param mean successes over plants; 0 if there are no plants
 * @param lower the one-sided lower bound
 * @param upper the one-sided upper bound
 * @param of what they are taken from, such as "8 seeds" or "one plot, 40 blocks"
 */
public record Bounds(double mean, double lower, double upper, String of) {

    /** Nothing is known of a stand without plants. */
    public static final Bounds NO_PLANTS = new Bounds(0, 0, 1, "no plants");

    /** How often blocks are drawn anew. */
    private static final int DRAWS = 2000;

    /**
     * The bounds over stands from seeds. One seed alone bounds nothing.
     *
     * @param seeds plants to be treated, and successes, of the stand of each seed; at least one
     * @param confidence level, 0.5 to less than 1
     * @return the bounds, within 0 and 1
     */
    public static Bounds ofSeeds(List<ReplayOutcome.Block> seeds, double confidence) {
        String of = seeds.size() + (seeds.size() == 1 ? " seed" : " seeds");
        Sum sum = Sum.of(seeds);
        if (sum.targets == 0) {
            return NO_PLANTS;
        }
        return seeds.size() == 1
                ? new Bounds(sum.share(), 0, 1, of)
                : sum.counted(confidence).bounds(of);
    }

    /**
     * The bounds of the coverage of one plot: its blocks of travel are drawn anew with replacement (B. Efron, Annals of
     * Statistics 7 (1979) 1-26). One block alone bounds nothing. A few blocks drawn anew show too little spread, so the
     * bounds are never nearer than over stands. If all plants of n blocks were treated, or none, nothing shows a spread; then
     * a block wholly treated, or not at all, has at least the chance that n of n such blocks leave it (Clopper and Pearson,
     * as above): (1 - confidence)^(1/n).
     *
     * @param blocks the blocks of the plot, at least one
     * @param confidence level, 0.5 to less than 1
     * @param seed of the draws
     * @return the bounds
     */
    public static Bounds ofBlocks(List<ReplayOutcome.Block> blocks, double confidence, long seed) {
        Sum sum = Sum.of(blocks);
        if (sum.targets == 0) {
            return NO_PLANTS;
        }
        String of = "one plot, " + blocks.size() + (blocks.size() == 1 ? " block" : " blocks");
        if (sum.holding.size() < 2) {
            return new Bounds(sum.share(), 0, 1, of);
        }
        double power = StrictMath.pow(1 - confidence, 1.0 / sum.holding.size());
        if (sum.successful == sum.targets) {
            return new Bounds(1, power, 1, of);
        }
        if (sum.successful == 0) {
            return new Bounds(0, 0, 1 - power, of);
        }
        double[] drawn = drawn(blocks, seed);
        int below = (int) Math.floor((1 - confidence) * DRAWS);
        Span counted = sum.counted(confidence);
        return new Span(
                        sum.share(),
                        Math.min(drawn[below], counted.lower),
                        Math.max(drawn[DRAWS - 1 - below], counted.upper))
                .bounds(of);
    }

    private static double[] drawn(List<ReplayOutcome.Block> blocks, long seed) {
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
        return drawn;
    }

    private record Span(double mean, double lower, double upper) {
        Bounds bounds(String of) {
            return new Bounds(mean, lower, upper, of);
        }
    }

    /** Parts that are alike and independent: stands, or blocks of one; those without plants say nothing. */
    private record Sum(List<ReplayOutcome.Block> holding, long targets, long successful) {

        static Sum of(List<ReplayOutcome.Block> parts) {
            List<ReplayOutcome.Block> holding =
                    parts.stream().filter(p -> p.targets() > 0).toList();
            return new Sum(
                    holding,
                    holding.stream().mapToLong(ReplayOutcome.Block::targets).sum(),
                    holding.stream().mapToLong(ReplayOutcome.Block::successful).sum());
        }

        double share() {
            return (double) successful / targets;
        }

        /** By the spread between the parts, and never nearer than by the number of plants. */
        Span counted(double confidence) {
            if (holding.size() < 2) {
                return new Span(share(), 0, 1);
            }
            int n = holding.size();
            double mean = (double) targets / n;
            double squares = 0;
            for (ReplayOutcome.Block part : holding) {
                double off = (part.successful() - share() * part.targets()) / mean;
                squares += off * off;
            }
            double half = StudentT.quantile(confidence, n - 1) * Math.sqrt(squares / (n - 1) / n);
            return new Span(
                    share(),
                    Math.max(0, Math.min(share() - half, ExactShare.atLeast(successful, targets, confidence))),
                    Math.min(1, Math.max(share() + half, ExactShare.atMost(successful, targets, confidence))));
        }
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
