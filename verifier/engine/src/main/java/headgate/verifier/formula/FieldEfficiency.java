package headgate.verifier.formula;

/**
 * The share of field time that is spent working, from what one pass takes. Derived as a time budget: working time over
 * working time plus the run of the tools' fore-aft span, turn, lift and refill.
 */
public final class FieldEfficiency {

    private FieldEfficiency() {}

    /**
     * Works out the share.
     *
     * @param rowLength length of a pass, m; more than 0
     * @param speed working speed, m/s; more than 0
     * @param span fore-aft span of the tools, which the carriage runs in addition, m; 0 or more
     * @param turn time of one turn, s; 0 or more
     * @param lift lifting and lowering that the turn does not cover, s; 0 or more
     * @param refill refilling per pass, s; 0 or more
     * @return the efficiency, 0 to 1
     * @throws IllegalArgumentException if a figure is out of bounds
     */
    public static double of(double rowLength, double speed, double span, double turn, double lift, double refill) {
        double v = Figures.positive("speed", speed, "m/s");
        double working = Figures.positive("row length", rowLength, "m") / v;
        return working
                / (working
                        + Figures.notNegative("span", span, "m") / v
                        + Figures.notNegative("turn", turn, "s")
                        + Figures.notNegative("lift", lift, "s")
                        + Figures.notNegative("refill", refill, "s"));
    }

    /**
     * Mean refill time per pass of one row's magazine.
     *
     * @param rowLength length of a pass, m; more than 0
     * @param spacing distance of plants in the row, m; more than 0
     * @param magazine plants that one filling holds; at least 1
     * @param refill time of one refill, s; 0 or more
     * @return (L / s) / magazine times the refill time, s
     * @throws IllegalArgumentException if a figure is out of bounds
     */
    public static double refillPerPass(double rowLength, double spacing, int magazine, double refill) {
        double plants = Figures.positive("row length", rowLength, "m") / Figures.positive("spacing", spacing, "m");
        return plants / Figures.atLeast("magazine", magazine, 1) * Figures.notNegative("refill", refill, "s");
    }
}
