package headgate.verifier.geometry;

import headgate.api.shape.Interval;
import headgate.api.shape.Point3;
import java.math.BigDecimal;
import java.util.Objects;
import java.util.Optional;

/**
 * The least distance of two volumes, with one place in each where it is met.
 *
 * <p>The distance is exact before it is rounded down to a whole nanometre, so it is never overstated, and understated by
 * less than one nanometre. Two volumes that touch, overlap or hold one another have gap 0. The places are rounded to the
 * nearest micrometre, for people and pictures.
 */
public final class Gap {

    private static final double NANOMETRES_PER_METRE = 1e9;
    private static final long NANOMETRES_PER_MICROMETRE = 1000;

    private final long nanometres;
    private final Point3 first;
    private final Point3 second;

    private Gap(long nanometres, Point3 first, Point3 second) {
        this.nanometres = nanometres;
        this.first = first;
        this.second = second;
    }

    /**
     * Measures the gap of two volumes. The distance of two upright prisms is the hypotenuse of their distance seen from
     * above and the gap of their heights. Pairs of prisms whose boxes are farther apart than the best pair so far are
     * left out, which changes nothing. Of several pairs at the same distance the first in order of their prisms is
     * shown.
     *
     * @param a a volume
     * @param b another, in the same frame
     * @return the gap, or empty if one of them has no volume
     */
    public static Optional<Gap> between(Occupied a, Occupied b) {
        return Nearest.of(a, b, Long.MAX_VALUE).map(Nearest::gap);
    }

    /**
     * Measures the gap of two volumes if it is small.
     *
     * @param a a volume
     * @param b another, in the same frame
     * @param limit the largest gap of interest, micrometres
     * @return the gap if it is at most the limit, else empty
     */
    public static Optional<Gap> atMost(long limit, Occupied a, Occupied b) {
        return Nearest.of(a, b, limit).map(Nearest::gap);
    }

    /** {@return the gap, m, rounded down to a whole nanometre} */
    public double metres() {
        return nanometres / NANOMETRES_PER_METRE;
    }

    /** {@return the gap in whole nanometres, rounded down} */
    public long nanometres() {
        return nanometres;
    }

    /**
     * Compares with a required gap; exact.
     *
     * @param micrometres the required gap, micrometres
     * @return true if the gap is at least that
     */
    public boolean isAtLeast(long micrometres) {
        return nanometres >= micrometres * NANOMETRES_PER_MICROMETRE;
    }

    /** {@return the place in the first volume, rounded to the nearest micrometre} */
    public Point3 first() {
        return first;
    }

    /** {@return the place in the second volume, rounded to the nearest micrometre} */
    public Point3 second() {
        return second;
    }

    /** {@return the same gap seen from the second volume} */
    public Gap swapped() {
        return new Gap(nanometres, second, first);
    }

    static Gap of(Piece a, Piece b, SquaredDistance square, Planar planar) {
        double[] at = planar.witnesses();
        long[] z = heights(a.height(), b.height());
        return new Gap(
                square.floorNanometres(),
                new Point3(Math.round(at[0]), Math.round(at[1]), z[0]),
                new Point3(Math.round(at[2]), Math.round(at[3]), z[1]));
    }

    /** The facing ends of two height intervals, or twice the middle of what they share. */
    private static long[] heights(Interval a, Interval b) {
        if (a.most() < b.least()) {
            return new long[] {a.most(), b.least()};
        }
        if (b.most() < a.least()) {
            return new long[] {a.least(), b.most()};
        }
        long middle = Math.floorDiv(Math.max(a.least(), b.least()) + Math.min(a.most(), b.most()), 2L);
        return new long[] {middle, middle};
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Gap that
                && nanometres == that.nanometres
                && first.equals(that.first)
                && second.equals(that.second);
    }

    @Override
    public int hashCode() {
        return Objects.hash(nanometres, first, second);
    }

    /** {@return the gap in millimetres and the two places} */
    @Override
    public String toString() {
        return BigDecimal.valueOf(nanometres, 6).stripTrailingZeros().toPlainString() + " mm from " + first + " to "
                + second;
    }
}
