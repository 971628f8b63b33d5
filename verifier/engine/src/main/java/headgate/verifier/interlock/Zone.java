package headgate.verifier.interlock;

import headgate.api.shape.Interval;
import headgate.api.unit.Micrometres;
import headgate.verifier.check.Dimension;
import headgate.verifier.geometry.Box;
import java.math.RoundingMode;

/**
 * A box of forbidden places or offsets. It is open: what lies on its faces is allowed. Its faces lie on whole tenths of a
 * millimetre, so that the limit of whoever keeps out of it is written exactly.
 *
 * @param x from the rearmost to the foremost, micrometres, a multiple of 100
 * @param y from the right to the left, micrometres, a multiple of 100
 * @param z from the lowest to the highest, micrometres, a multiple of 100
 */
public record Zone(Interval x, Interval y, Interval z) {

    /** A tenth of a millimetre, micrometres. */
    static final long TENTH = 100;

    /**
     * Checks the faces.
     *
     * @throws IllegalArgumentException if one does not lie on a whole tenth of a millimetre
     */
    public Zone {
        for (Interval side : new Interval[] {x, y, z}) {
            if (side.least() % TENTH != 0 || side.most() % TENTH != 0) {
                throw new IllegalArgumentException(
                        "a zone's faces must be whole tenths of a millimetre, but are " + side);
            }
        }
    }

    /** The least zone that holds a box. */
    static Zone around(Box box) {
        return new Zone(outward(box.x()), outward(box.y()), outward(box.z()));
    }

    private static Interval outward(Interval side) {
        return new Interval(Math.floorDiv(side.least(), TENTH) * TENTH, -Math.floorDiv(-side.most(), TENTH) * TENTH);
    }

    /** The least zone that holds both. */
    Zone hull(Zone other) {
        return new Zone(x.hull(other.x), y.hull(other.y), z.hull(other.z));
    }

    boolean holds(Zone other) {
        return holds(x, other.x) && holds(y, other.y) && holds(z, other.z);
    }

    /** Whether something in a box lies inside. */
    boolean meets(Box box) {
        return meet(x, box.x()) && meet(y, box.y()) && meet(z, box.z());
    }

    private static boolean meet(Interval open, Interval closed) {
        return closed.least() < open.most() && open.least() < closed.most();
    }

    /** Cubic metres. */
    double volume() {
        return metres(x) * metres(y) * metres(z);
    }

    /** What it has in common with another, cubic metres. */
    double commonVolume(Zone other) {
        return common(x, other.x) * common(y, other.y) * common(z, other.z);
    }

    private static double metres(Interval side) {
        return Micrometres.toMetres(side.length());
    }

    private static double common(Interval a, Interval b) {
        return Micrometres.toMetres(Math.max(0, Math.min(a.most(), b.most()) - Math.max(a.least(), b.least())));
    }

    private static boolean holds(Interval outer, Interval inner) {
        return outer.least() <= inner.least() && inner.most() <= outer.most();
    }

    /** {@return the three sides in millimetres, rounded outward to what is shown} */
    public String text() {
        return "x " + text(x) + ", y " + text(y) + ", z " + text(z);
    }

    private static String text(Interval side) {
        return Dimension.LENGTH.text(Micrometres.toMetres(side.least()), RoundingMode.FLOOR) + " to "
                + Dimension.LENGTH.text(Micrometres.toMetres(side.most()), RoundingMode.CEILING);
    }
}
