package headgate.api.unit;

import headgate.api.annotation.ApiStatus;

/**
 * Turns figures as people write them into SI, the only units inside this library. Each method takes a figure in the
 * unit that it is named after, and returns it in metres, seconds, kilograms, newtons, watts or radians.
 *
 * <p>Nothing is checked here: a figure that is not finite is refused by the value that takes it, which can name the
 * field.
 */
@ApiStatus(value = ApiStatus.Status.EXPERIMENTAL, since = "0.1.0")
public final class Units {

    private static final double SECONDS_PER_HOUR = 3600.0;

    private Units() {}

    /**
     * Converts a length.
     *
     * @param millimetres length, mm
     * @return the same length, m
     */
    public static double mm(double millimetres) {
        return millimetres / 1000.0;
    }

    /**
     * Converts a length.
     *
     * @param centimetres length, cm
     * @return the same length, m
     */
    public static double cm(double centimetres) {
        return centimetres / 100.0;
    }

    /**
     * Converts a duration.
     *
     * @param milliseconds duration, ms
     * @return the same duration, s
     */
    public static double ms(double milliseconds) {
        return milliseconds / 1000.0;
    }

    /**
     * Converts a mass.
     *
     * @param grams mass, g
     * @return the same mass, kg
     */
    public static double g(double grams) {
        return grams / 1000.0;
    }

    /**
     * Converts a speed.
     *
     * @param kilometresPerHour speed, km/h
     * @return the same speed, m/s
     */
    public static double kmh(double kilometresPerHour) {
        return kilometresPerHour * 1000.0 / SECONDS_PER_HOUR;
    }

    /**
     * Converts a force.
     *
     * @param kilonewtons force, kN
     * @return the same force, N
     */
    public static double kN(double kilonewtons) {
        return kilonewtons * 1000.0;
    }

    /**
     * Converts a power.
     *
     * @param kilowatts power, kW
     * @return the same power, W
     */
    public static double kW(double kilowatts) {
        return kilowatts * 1000.0;
    }

    /**
     * Converts an angle.
     *
     * @param degrees angle, degrees
     * @return the same angle, rad
     */
    public static double deg(double degrees) {
        return degrees * Math.PI / 180.0;
    }

    /**
     * Converts a share.
     *
     * @param percent share, percent
     * @return the same share, 0 to 1
     */
    public static double percent(double percent) {
        return percent / 100.0;
    }
}
