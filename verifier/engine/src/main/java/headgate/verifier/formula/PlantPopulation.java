package headgate.verifier.formula;

/** Plants on an area, and how fast they must be set. Derived: one plant stands on row spacing times plant spacing. */
public final class PlantPopulation {

    private static final double SQUARE_METRES_PER_HECTARE = 10_000.0;

    private PlantPopulation() {}

    /**
     * Plants per hectare of a square or rectangular stand.
     *
     * @param rowSpacing distance of rows, m; more than 0
     * @param plantSpacing distance of plants in the row, m; more than 0
     * @return plants per hectare, not rounded
     * @throws IllegalArgumentException if a figure is out of bounds
     */
    public static double perHectare(double rowSpacing, double plantSpacing) {
        return SQUARE_METRES_PER_HECTARE
                / (Figures.positive("row spacing", rowSpacing, "m")
                        * Figures.positive("plant spacing", plantSpacing, "m"));
    }

    /**
     * The travel speed at which one row's planting keeps up.
     *
     * @param plantsPerSecond plants set in one row per second; 0 or more
     * @param plantSpacing distance of plants in the row, m; more than 0
     * @return the speed, m/s
     * @throws IllegalArgumentException if a figure is out of bounds
     */
    public static double speed(double plantsPerSecond, double plantSpacing) {
        return Figures.notNegative("plants per second", plantsPerSecond, "1/s")
                * Figures.positive("plant spacing", plantSpacing, "m");
    }

    /**
     * The planting rate that a travel speed asks of one row.
     *
     * @param speed travel speed, m/s; 0 or more
     * @param plantSpacing distance of plants in the row, m; more than 0
     * @return plants per second
     * @throws IllegalArgumentException if a figure is out of bounds
     */
    public static double plantsPerSecond(double speed, double plantSpacing) {
        return Figures.notNegative("speed", speed, "m/s") / Figures.positive("plant spacing", plantSpacing, "m");
    }
}
