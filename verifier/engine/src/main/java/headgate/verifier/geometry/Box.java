package headgate.verifier.geometry;

import headgate.api.shape.Interval;

/**
 * A box along the axes that holds a volume: x forward, y left, z up, micrometres.
 *
 * @param x extent forward
 * @param y extent to the left
 * @param z extent upward
 */
public record Box(Interval x, Interval y, Interval z) {

    /**
     * The smallest box that holds both.
     *
     * @param other the other box
     * @return the hull
     */
    public Box hull(Box other) {
        return new Box(x.hull(other.x), y.hull(other.y), z.hull(other.z));
    }

    /**
     * The squared distance of two boxes: never more than that of what they hold, so a pair may be left out by it.
     *
     * @param other the other box
     * @return the square of the least distance, square micrometres; exact; 0 if they touch or overlap
     */
    public long squaredGapTo(Box other) {
        // Each gap is at most 2e8 um, so the sum of three squares stays below 1.3e17.
        long dx = x.gapTo(other.x);
        long dy = y.gapTo(other.y);
        long dz = z.gapTo(other.z);
        return dx * dx + dy * dy + dz * dz;
    }

    /**
     * Grows the box on all sides.
     *
     * @param by how far, micrometres; 0 or more
     * @return the larger box
     */
    public Box grown(long by) {
        return new Box(grown(x, by), grown(y, by), grown(z, by));
    }

    private static Interval grown(Interval i, long by) {
        return new Interval(i.least() - by, i.most() + by);
    }
}
