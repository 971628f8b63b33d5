package headgate.verifier.report;

import headgate.verifier.check.Comparison;
import headgate.verifier.check.Dimension;
import java.math.RoundingMode;

/** How far a value is from its limit, in words. */
public final class Margin {

    private Margin() {}

    /**
     * Says how much is left or missing. What is left is rounded down, what is missing up; a difference too small to be
     * shown is not hidden behind a zero.
     *
     * @param comparison the value and its limit
     * @return such as "12.5 mm to spare", "at the limit" or "misses by 3 mm"
     */
    public static String text(Comparison comparison) {
        double margin = comparison.margin();
        Dimension dimension = comparison.measured().dimension();
        if (Double.isNaN(margin)) {
            return "no number";
        }
        if (margin == 0) {
            return "at the limit";
        }
        String size = dimension.text(Math.abs(margin), margin > 0 ? RoundingMode.FLOOR : RoundingMode.CEILING);
        if (size.equals(dimension.text(0))) {
            return margin > 0 ? "next to nothing to spare" : "misses by next to nothing";
        }
        return margin > 0 ? size + " to spare" : "misses by " + size;
    }
}
