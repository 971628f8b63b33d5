package headgate.verifier.check;

/**
 * A measured value against its limit. A value exactly at the limit holds.
 *
 * @param measured what was found
 * @param relation which side of the limit is right
 * @param limit the limit, of the same dimension
 */
public record Comparison(Measure measured, Relation relation, Measure limit) {

    /**
     * Relative rounding noise: a figure that comes of a dozen operations on doubles is off by a few times 2.2e-16; some
     * thousand times that is still far below anything that is measured.
     */
    private static final double NOISE = 1e-12;

    /** Which side of the limit is right. */
    public enum Relation {
        /** The measured value must not be below the limit. */
        AT_LEAST("at least"),
        /** The measured value must not be above the limit. */
        AT_MOST("at most");

        private final String label;

        Relation(String label) {
            this.label = label;
        }

        /** {@return the words that reports use} */
        public String label() {
            return label;
        }
    }

    /**
     * A value that must not be below its limit.
     *
     * @param measured the value, SI
     * @param limit the limit, SI
     * @param dimension the kind of both
     * @return the comparison
     */
    public static Comparison atLeast(double measured, double limit, Dimension dimension) {
        return new Comparison(new Measure(measured, dimension), Relation.AT_LEAST, new Measure(limit, dimension));
    }

    /**
     * A value that must not be above its limit.
     *
     * @param measured the value, SI
     * @param limit the limit, SI
     * @param dimension the kind of both
     * @return the comparison
     */
    public static Comparison atMost(double measured, double limit, Dimension dimension) {
        return new Comparison(new Measure(measured, dimension), Relation.AT_MOST, new Measure(limit, dimension));
    }

    /** {@return true if the value is on the right side of the limit, or at it; false if either is not a number} */
    public boolean holds() {
        return margin() >= 0;
    }

    /**
     * How far the value is on the right side of the limit. A difference within the rounding noise of the two figures
     * counts as none, so that decimal figures that meet on paper meet here.
     *
     * @return the margin, SI; negative if the value is on the wrong side
     */
    public double margin() {
        double over = measured.value() - limit.value();
        if (Math.abs(over) <= NOISE * Math.max(Math.abs(measured.value()), Math.abs(limit.value()))) {
            return 0;
        }
        return relation == Relation.AT_LEAST ? over : -over;
    }
}
