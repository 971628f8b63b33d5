package headgate.verifier.formula;

/**
 * A straight move from rest to rest with a speed limit and constant acceleration and deceleration: a trapezoid of speed
 * over time, or a triangle if the way is too short to reach the limit.
 *
 * <p>Derived from constant acceleration: the limit v is reached if the way is at least v^2 / 2 (1 / a + 1 / b).
 */
public final class RestToRest {

    private final double duration;
    private final double peakSpeed;

    private RestToRest(double duration, double peakSpeed) {
        this.duration = duration;
        this.peakSpeed = peakSpeed;
    }

    /**
     * Works out the move.
     *
     * @param distance length of the way, m; 0 or more
     * @param speed speed limit, m/s; more than 0
     * @param acceleration acceleration, m/s2; more than 0
     * @param deceleration deceleration, m/s2, as a positive figure; more than 0
     * @return the move
     * @throws IllegalArgumentException if a figure is out of bounds
     */
    public static RestToRest of(double distance, double speed, double acceleration, double deceleration) {
        Figures.notNegative("distance", distance, "m");
        Figures.positive("speed", speed, "m/s");
        double ramps = 1 / Figures.positive("acceleration", acceleration, "m/s2")
                + 1 / Figures.positive("deceleration", deceleration, "m/s2");
        if (distance >= speed * speed / 2 * ramps) {
            return new RestToRest(distance / speed + speed / 2 * ramps, speed);
        }
        double peak = Math.sqrt(2 * distance / ramps);
        return new RestToRest(peak * ramps, peak);
    }

    /** {@return how long the move takes, s} */
    public double duration() {
        return duration;
    }

    /** {@return the greatest speed on the way, m/s} */
    public double peakSpeed() {
        return peakSpeed;
    }
}
