package headgate.verifier.trial;

/**
 * How a trial is run.
 *
 * @param wanted coverage that is wanted, 0 to 1
 * @param confidence level of confidence of a bound, 0.5 to less than 1
 * @param firstSeeds seeds that every cell is run with, at least 2
 * @param mostSeeds seeds that a cell is run with at most
 * @param budget answers that the heads are asked for at most, over all cells
 * @param threads threads that work on it
 */
public record TrialPlan(double wanted, double confidence, int firstSeeds, int mostSeeds, long budget, int threads) {

    /**
     * Checks.
     *
     * @throws IllegalArgumentException if there are fewer than two seeds to begin with, or more than at most
     */
    public TrialPlan {
        if (firstSeeds < 2 || mostSeeds < firstSeeds) {
            throw new IllegalArgumentException("a trial needs at least two seeds to begin with, and no fewer at most");
        }
    }

    /**
     * The usual plan: 8 seeds, up to 64.
     *
     * @param wanted coverage that is wanted, 0 to 1
     * @param confidence level of confidence of a bound
     * @param budget answers that the heads are asked for at most
     * @param threads threads that work on it
     * @return the plan
     */
    public static TrialPlan usual(double wanted, double confidence, long budget, int threads) {
        return new TrialPlan(wanted, confidence, 8, 64, budget, threads);
    }
}
