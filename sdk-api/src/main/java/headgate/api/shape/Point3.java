package headgate.api.shape;

import headgate.api.annotation.ApiStatus;
import headgate.api.unit.Micrometres;

/**
 * A point in space: x forward in travel, y left, z up, whole micrometres.
 *
 * @param x forward coordinate, micrometres, at most 100 m either way
 * @param y left coordinate, micrometres, at most 100 m either way
 * @param z upward coordinate, micrometres, at most 100 m either way
 */
@ApiStatus(value = ApiStatus.Status.EXPERIMENTAL, since = "0.1.0")
public record Point3(long x, long y, long z) {

    /** The origin: in the head frame, the centre of the mount plate. */
    public static final Point3 ORIGIN = new Point3(0, 0, 0);

    /**
     * Checks the bounds.
     *
     * @param x forward coordinate, micrometres
     * @param y left coordinate, micrometres
     * @param z upward coordinate, micrometres
     * @throws IllegalArgumentException if a coordinate is over 100 m either way
     */
    public Point3 {
        Bounds.check("x", x);
        Bounds.check("y", y);
        Bounds.check("z", z);
    }

    /**
     * Makes a point from metres, each coordinate rounded to the nearest micrometre.
     *
     * @param x forward coordinate, m
     * @param y left coordinate, m
     * @param z upward coordinate, m
     * @return the point
     * @throws IllegalArgumentException if a coordinate is not finite or over 100 m either way
     */
    public static Point3 ofMetres(double x, double y, double z) {
        return new Point3(Micrometres.nearest(x), Micrometres.nearest(y), Micrometres.nearest(z));
    }

    /** {@return the point seen from above} */
    public Point plan() {
        return new Point(x, y);
    }

    /** {@return the point turned by 180 degrees about the z axis} */
    public Point3 turned() {
        return new Point3(-x, -y, z);
    }

    /** {@return the forward coordinate, m} */
    public double xMetres() {
        return Micrometres.toMetres(x);
    }

    /** {@return the left coordinate, m} */
    public double yMetres() {
        return Micrometres.toMetres(y);
    }

    /** {@return the upward coordinate, m} */
    public double zMetres() {
        return Micrometres.toMetres(z);
    }

    /** {@return the coordinates in millimetres} */
    @Override
    public String toString() {
        return "(" + Bounds.millimetres(x) + ", " + Bounds.millimetres(y) + ", " + Bounds.millimetres(z) + ") mm";
    }
}
