package headgate.verifier.geometry;

import headgate.api.shape.Interval;
import headgate.api.shape.Point;
import java.util.ArrayList;
import java.util.List;
import org.dyn4j.collision.narrowphase.Gjk;
import org.dyn4j.collision.narrowphase.Separation;
import org.dyn4j.geometry.Polygon;
import org.dyn4j.geometry.Transform;
import org.dyn4j.geometry.Vector2;
import org.dyn4j.geometry.hull.GiftWrap;

/**
 * Distances as dyn4j sees them (dyn4j.org, BSD licence; other authors, other methods: hull by gift wrapping, distance by
 * GJK). Lengths in millimetres, double precision.
 */
final class OtherEngine {

    private static final Transform STILL = new Transform();

    /** A convex prism of dyn4j. */
    record Solid(Polygon plan, double low, double high) {

        /** The hull of all sums of a corner of the part and one of each list: a sweep over a convex region. */
        static Solid of(Part part, boolean turned, List<List<Point>> added, Interval rise) {
            List<Vector2> sums = new ArrayList<>();
            for (Point p : part.corners()) {
                sums.add(new Vector2(turned ? -p.x() / 1e3 : p.x() / 1e3, turned ? -p.y() / 1e3 : p.y() / 1e3));
            }
            for (List<Point> list : added) {
                List<Vector2> next = new ArrayList<>();
                for (Vector2 v : sums) {
                    for (Point p : list) {
                        next.add(v.sum(p.x() / 1e3, p.y() / 1e3));
                    }
                }
                sums = next;
            }
            return new Solid(
                    polygon(sums),
                    (part.height().least() + rise.least()) / 1e3,
                    (part.height().most() + rise.most()) / 1e3);
        }

        Solid movedTo(double x, double y, double z) {
            Polygon moved = new Polygon(java.util.Arrays.stream(plan.getVertices())
                    .map(v -> v.sum(x, y))
                    .toArray(Vector2[]::new));
            return new Solid(moved, low + z, high + z);
        }
    }

    private OtherEngine() {}

    private static Polygon polygon(List<Vector2> points) {
        return new Polygon(new GiftWrap().generate(points.toArray(Vector2[]::new)));
    }

    /** The least distance, mm; 0 if two solids meet. */
    static double distance(List<Solid> as, List<Solid> bs) {
        double least = Double.POSITIVE_INFINITY;
        for (Solid a : as) {
            for (Solid b : bs) {
                double vertical = Math.max(0, Math.max(b.low() - a.high(), a.low() - b.high()));
                if (vertical < least) {
                    least = Math.min(least, Math.hypot(planar(a.plan(), b.plan()), vertical));
                }
            }
        }
        return least;
    }

    static double planar(Polygon a, Polygon b) {
        Gjk gjk = new Gjk();
        gjk.setMaxDistanceIterations(200);
        gjk.setDistanceEpsilon(1e-12);
        Separation separation = new Separation();
        return gjk.distance(a, STILL, b, STILL, separation) ? separation.getDistance() : 0;
    }
}
