package headgate.verifier.plot;

import headgate.verifier.trial.Standing;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/** Values between the last that passes and the first that does not: where a coarse ladder is refined. */
public final class Refinement {

    /** Steps of a ladder are refined by so many. */
    private static final int FINER = 10;

    private Refinement() {}

    /**
     * Refines a ladder. Below its first rung it begins at nothing.
     *
     * @param values the rungs, ascending and more than 0
     * @param standings how each stands
     * @param round takes a value to one that can be tried
     * @return new values, ascending; none if every rung passes
     */
    public static List<Double> of(List<Double> values, List<Standing> standings, DoubleUnaryOperator round) {
        int passed = 0;
        while (passed < values.size() && standings.get(passed) == Standing.PASSES) {
            passed++;
        }
        if (passed == values.size()) {
            return List.of();
        }
        return between(passed == 0 ? 0 : values.get(passed - 1), values.get(passed), round);
    }

    /** Values between two, ascending; each can be tried, and none stands twice. */
    static List<Double> between(double low, double high, DoubleUnaryOperator round) {
        List<Double> finer = new ArrayList<>();
        double last = low;
        for (int step = 1; step < FINER; step++) {
            double value = round.applyAsDouble(low + (high - low) * step / FINER);
            if (value > last && value < high) {
                finer.add(value);
                last = value;
            }
        }
        return finer;
    }
}
