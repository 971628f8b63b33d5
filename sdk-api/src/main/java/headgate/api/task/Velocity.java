package headgate.api.task;

import headgate.api.annotation.ApiStatus;
import headgate.api.unit.Micrometres;

/**
 * A velocity in the ground plane, whole micrometres per second. As a ground velocity in the head frame it says how the
 * ground moves past the mount: (-v, 0) for a head fitted at 0 degrees on a carriage that travels at v, (+v, 0) for one
 * turned by 180 degrees.
 *
 * @param x forward component, micrometres per second, at most 100 m/s either way
 * @param y left component, micrometres per second, at most 100 m/s either way
 */
@ApiStatus(value = ApiStatus.Status.EXPERIMENTAL, since = "0.1.0")
public record Velocity(long x, long y) {

    /** At rest. */
    public static final Velocity ZERO = new Velocity(0, 0);

    /**
     * Checks the bounds.
     *
     * @param x forward component, micrometres per second
     * @param y left component, micrometres per second
     * @throws IllegalArgumentException if a component is over 100 m/s either way
     */
    public Velocity {
        if (Math.max(Math.abs(x), Math.abs(y)) > Micrometres.LIMIT) {
            throw new IllegalArgumentException("a velocity must be at most 100 m/s either way");
        }
    }

    /**
     * Makes a velocity from metres per second, each component rounded to the nearest micrometre per second.
     *
     * @param x forward component, m/s
     * @param y left component, m/s
     * @return the velocity
     * @throws IllegalArgumentException if a component is not finite or over 100 m/s either way
     */
    public static Velocity ofMetresPerSecond(double x, double y) {
        return new Velocity(Micrometres.nearest(x), Micrometres.nearest(y));
    }

    /** {@return the forward component, m/s} */
    public double xMetresPerSecond() {
        return Micrometres.toMetres(x);
    }

    /** {@return the left component, m/s} */
    public double yMetresPerSecond() {
        return Micrometres.toMetres(y);
    }

    /** {@return the speed, m/s} */
    public double speed() {
        return Math.hypot(xMetresPerSecond(), yMetresPerSecond());
    }
}
