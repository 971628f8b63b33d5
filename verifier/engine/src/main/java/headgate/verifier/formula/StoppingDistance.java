package headgate.verifier.formula;

/** The way until something stands still: reaction at full speed, then constant deceleration. Derived. */
public final class StoppingDistance {

    private StoppingDistance() {}

    /**
     * Works out the way.
     *
     * @param speed speed at first, m/s; 0 or more
     * @param reaction time before braking starts, s; 0 or more
     * @param deceleration deceleration, m/s2, as a positive figure; more than 0
     * @return the way v t + v^2 / 2b, m
     * @throws IllegalArgumentException if a figure is out of bounds
     */
    public static double metres(double speed, double reaction, double deceleration) {
        double v = Figures.notNegative("speed", speed, "m/s");
        return v * Figures.notNegative("reaction", reaction, "s")
                + v * v / (2 * Figures.positive("deceleration", deceleration, "m/s2"));
    }
}
