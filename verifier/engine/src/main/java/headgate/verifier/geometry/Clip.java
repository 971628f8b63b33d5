package headgate.verifier.geometry;

import headgate.api.shape.Outline;
import headgate.api.shape.Point;
import headgate.api.shape.Prism;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Cuts material off along an axis (Sutherland and Hodgman 1974, on convex parts). The cut itself is exact; where it
 * crosses a slanted edge the new corner is rounded to the grid, by at most half a micrometre along the cut.
 */
public final class Clip {

    /** The axis across the cut. */
    public enum Axis {
        /** Along travel. */
        X,
        /** Across travel. */
        Y
    }

    private Clip() {}

    /**
     * Keeps what lies on the lower side of a cut.
     *
     * @param prism the prism
     * @param axis the axis across the cut
     * @param most the largest coordinate that is kept, micrometres
     * @return convex prisms that fill what is kept; none if nothing with an area is
     */
    public static List<Prism> keepUpTo(Prism prism, Axis axis, long most) {
        return keep(prism, axis, 1, most);
    }

    /**
     * Keeps what lies on the upper side of a cut.
     *
     * @param prism the prism
     * @param axis the axis across the cut
     * @param least the smallest coordinate that is kept, micrometres
     * @return convex prisms that fill what is kept; none if nothing with an area is
     */
    public static List<Prism> keepFrom(Prism prism, Axis axis, long least) {
        return keep(prism, axis, -1, -least);
    }

    private static List<Prism> keep(Prism prism, Axis axis, int sign, long bound) {
        List<Prism> kept = new ArrayList<>();
        for (Outline part : ConvexParts.of(prism.outline())) {
            outline(part, axis, sign, bound)
                    .map(outline -> Prism.of(outline, prism.height()))
                    .ifPresent(kept::add);
        }
        return kept;
    }

    private static Optional<Outline> outline(Outline convex, Axis axis, int sign, long bound) {
        List<Point> ring = convex.vertices();
        List<Point> kept = new ArrayList<>();
        for (int i = 0; i < ring.size(); i++) {
            Point a = ring.get(i);
            Point b = ring.get((i + 1) % ring.size());
            long da = sign * across(a, axis) - bound;
            long db = sign * across(b, axis) - bound;
            if (da <= 0) {
                kept.add(a);
            }
            if ((da < 0 && db > 0) || (da > 0 && db < 0)) {
                long c = along(a, axis) + Math.round((double) (along(b, axis) - along(a, axis)) * da / (da - db));
                kept.add(axis == Axis.X ? new Point(sign * bound, c) : new Point(c, sign * bound));
            }
        }
        boolean hasArea =
                kept.size() >= 3 && kept.stream().anyMatch(p -> Point.cross(kept.get(0), kept.get(1), p) != 0);
        return hasArea ? Optional.of(Outline.hullOf(kept)) : Optional.empty();
    }

    private static long across(Point p, Axis axis) {
        return axis == Axis.X ? p.x() : p.y();
    }

    private static long along(Point p, Axis axis) {
        return axis == Axis.X ? p.y() : p.x();
    }
}
