package headgate.api.shape;

import headgate.api.annotation.ApiStatus;
import headgate.api.unit.Micrometres;

/**
 * A point, or a displacement, in the ground plane: x forward in travel, y left, whole micrometres.
 *
 * @param x forward coordinate, micrometres, at most 100 m either way
 * @param y left coordinate, micrometres, at most 100 m either way
 */
@ApiStatus(value = ApiStatus.Status.EXPERIMENTAL, since = "0.1.0")
public record Point(long x, long y) implements Comparable<Point> {

    /** The origin. */
    public static final Point ORIGIN = new Point(0, 0);

    /**
     * Checks the bounds.
     *
     * @param x forward coordinate, micrometres
     * @param y left coordinate, micrometres
     * @throws IllegalArgumentException if a coordinate is over 100 m either way
     */
    public Point {
        Bounds.check("x", x);
        Bounds.check("y", y);
    }

    /**
     * Makes a point from metres, each coordinate rounded to the nearest micrometre.
     *
     * @param x forward coordinate, m
     * @param y left coordinate, m
     * @return the point
     * @throws IllegalArgumentException if a coordinate is not finite or over 100 m either way
     */
    public static Point ofMetres(double x, double y) {
        return new Point(Micrometres.nearest(x), Micrometres.nearest(y));
    }

    /**
     * Adds a displacement.
     *
     * @param other the displacement
     * @return the sum
     */
    public Point plus(Point other) {
        return new Point(x + other.x, y + other.y);
    }

    /**
     * Takes a displacement away.
     *
     * @param other the displacement
     * @return the difference
     */
    public Point minus(Point other) {
        return new Point(x - other.x, y - other.y);
    }

    /** {@return the point turned by 180 degrees about the origin} */
    public Point turned() {
        return new Point(-x, -y);
    }

    /** {@return the forward coordinate, m} */
    public double xMetres() {
        return Micrometres.toMetres(x);
    }

    /** {@return the left coordinate, m} */
    public double yMetres() {
        return Micrometres.toMetres(y);
    }

    /**
     * The orientation of three points, exact.
     *
     * @param a first point
     * @param b second point
     * @param c third point
     * @return twice the signed area of the triangle in square micrometres: positive if a, b, c turn to the left
     */
    public static long cross(Point a, Point b, Point c) {
        return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
    }

    /** Orders by x, then by y. */
    @Override
    public int compareTo(Point other) {
        int byX = Long.compare(x, other.x);
        return byX != 0 ? byX : Long.compare(y, other.y);
    }

    /** {@return the coordinates in millimetres, such as {@code (120, -45.5) mm}} */
    @Override
    public String toString() {
        return "(" + Bounds.millimetres(x) + ", " + Bounds.millimetres(y) + ") mm";
    }
}
