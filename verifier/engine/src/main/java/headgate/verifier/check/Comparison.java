package headgate.verifier.check;

/**
 * A measured value against its limit. A value exactly at the limit holds.
 *
 * @param measured what was found
 * @param relation which side of the limit is right
 * @param limit the limit, of the same dimension
 */
public record Comparison(Measure measured, Relation relation, Measure limit) {

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

    /** {@return how far the value is on the right side of the limit, SI; negative if it is on the wrong one} */
    public double margin() {
        double over = measured.value() - limit.value();
        return relation == Relation.AT_LEAST ? over : -over;
    }
}
