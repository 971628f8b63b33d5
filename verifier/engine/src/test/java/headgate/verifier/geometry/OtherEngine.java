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
 * GJK). Lengths are doubles in micrometres, so that sums of corners are whole and its hulls are not spoilt by rounding.
 */
public final class OtherEngine {

    /** A convex prism of dyn4j, at a place. */
    public record Solid(Polygon plan, Transform at, double low, double high) {

        /** The hull of all sums of a corner of the part and one of each list: a sweep over a convex region. */
        public static Solid of(Part part, boolean turned, List<List<Point>> added, Interval rise) {
            List<Vector2> sums = new ArrayList<>();
            for (Point p : part.corners()) {
                sums.add(new Vector2((double) (turned ? -p.x() : p.x()), (double) (turned ? -p.y() : p.y())));
            }
            for (List<Point> list : added) {
                List<Vector2> next = new ArrayList<>();
                for (Vector2 v : sums) {
                    for (Point p : list) {
                        next.add(v.sum((double) p.x(), (double) p.y()));
                    }
                }
                sums = next;
            }
            return new Solid(
                    polygon(sums), new Transform(), (double) (part.height().least() + rise.least()), (double)
                            (part.height().most() + rise.most()));
        }

        public Solid movedTo(double x, double y, double z) {
            Transform moved = new Transform();
            moved.translate(x, y);
            return new Solid(plan, moved, low + z, high + z);
        }
    }

    private OtherEngine() {}

    private static Polygon polygon(List<Vector2> points) {
        return new Polygon(new GiftWrap().generate(points.toArray(Vector2[]::new)));
    }

    /** The least distance, micrometres; 0 if two solids meet. */
    public static double distance(List<Solid> as, List<Solid> bs) {
        double least = Double.POSITIVE_INFINITY;
        for (Solid a : as) {
            for (Solid b : bs) {
                double vertical = Math.max(0, Math.max(b.low() - a.high(), a.low() - b.high()));
                if (vertical < least) {
                    least = Math.min(least, Math.hypot(planar(a, b), vertical));
                }
            }
        }
        return least;
    }

    private static double planar(Solid a, Solid b) {
        Gjk gjk = new Gjk();
        gjk.setMaxDistanceIterations(200);
        gjk.setDistanceEpsilon(1e-6);
        Separation separation = new Separation();
        return gjk.distance(a.plan(), a.at(), b.plan(), b.at(), separation) ? separation.getDistance() : 0;
    }
}
