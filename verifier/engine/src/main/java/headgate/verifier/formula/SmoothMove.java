package headgate.verifier.formula;

/**
 * A straight move from rest to rest whose acceleration rises and falls at a limited rate (jerk), the same way up and
 * down: an S-shaped speed curve. It takes longer than {@link RestToRest} and tends to it as the jerk grows.
 *
 * <p>Derived by integrating a constant jerk: to reach speed v takes v / a + a / j if the acceleration a is reached on
 * the way, else 2 sqrt(v / j), and covers half of v times that time.
 */
public final class SmoothMove {

    private final double duration;
    private final double peakSpeed;

    private SmoothMove(double duration, double peakSpeed) {
        this.duration = duration;
        this.peakSpeed = peakSpeed;
    }

    /**
     * Works out the move.
     *
     * @param distance length of the way, m; 0 or more
     * @param speed speed limit, m/s; more than 0
     * @param acceleration limit of acceleration and deceleration, m/s2; more than 0
     * @param jerk limit of the change of acceleration, m/s3; more than 0
     * @return the move
     * @throws IllegalArgumentException if a figure is out of bounds
     */
    public static SmoothMove of(double distance, double speed, double acceleration, double jerk) {
        double length = Figures.notNegative("distance", distance, "m");
        double v = Figures.positive("speed", speed, "m/s");
        double a = Figures.positive("acceleration", acceleration, "m/s2");
        double j = Figures.positive("jerk", jerk, "m/s3");
        double ramp = rampTime(v, a, j);
        if (length >= v * ramp) {
            return new SmoothMove(length / v + ramp, v);
        }
        double rise = a / j;
        double peak = a / 2 * (-rise + Math.sqrt(rise * rise + 4 * length / a));
        if (peak < a * rise) {
            double part = StrictMath.cbrt(length / (2 * j));
            peak = j * part * part;
        }
        return new SmoothMove(2 * rampTime(peak, a, j), peak);
    }

    private static double rampTime(double v, double a, double j) {
        return v >= a * a / j ? v / a + a / j : 2 * Math.sqrt(v / j);
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
