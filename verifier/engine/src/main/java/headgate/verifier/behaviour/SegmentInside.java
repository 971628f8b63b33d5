package headgate.verifier.behaviour;

import headgate.api.shape.Outline;
import headgate.api.shape.Point;
import java.util.List;
import java.util.stream.Stream;

/** Whether a straight path stays in an outline; exact. */
final class SegmentInside {

    private SegmentInside() {}

    /**
     * Follows the path. In a convex outline the ends decide. In any other, the path must cross no edge, and between two
     * corners that it touches its middle must lie inside.
     */
    static boolean test(Outline outline, Point from, Point to) {
        if (!outline.contains(from) || !outline.contains(to)) {
            return false;
        }
        if (outline.isConvex() || from.equals(to)) {
            return true;
        }
        List<Point> corners = outline.vertices();
        for (int i = 0, j = corners.size() - 1; i < corners.size(); j = i++) {
            if (cross(from, to, corners.get(j), corners.get(i))) {
                return false;
            }
        }
        List<Point> stops = Stream.concat(
                        Stream.of(from, to),
                        corners.stream().filter(c -> Point.cross(from, to, c) == 0 && between(from, to, c)))
                .distinct()
                .sorted((a, b) -> Long.compare(squared(from, a), squared(from, b)))
                .toList();
        for (int i = 0; i + 1 < stops.size(); i++) {
            if (!containsMiddle(corners, stops.get(i), stops.get(i + 1))) {
                return false;
            }
        }
        return true;
    }

    private static boolean cross(Point a, Point b, Point c, Point d) {
        return Long.signum(Point.cross(a, b, c)) * Long.signum(Point.cross(a, b, d)) < 0
                && Long.signum(Point.cross(c, d, a)) * Long.signum(Point.cross(c, d, b)) < 0;
    }

    private static boolean between(Point a, Point b, Point p) {
        return Math.min(a.x(), b.x()) <= p.x()
                && p.x() <= Math.max(a.x(), b.x())
                && Math.min(a.y(), b.y()) <= p.y()
                && p.y() <= Math.max(a.y(), b.y());
    }

    private static long squared(Point a, Point b) {
        long dx = a.x() - b.x();
        long dy = a.y() - b.y();
        return dx * dx + dy * dy;
    }

    /** The middle may lie between two grid points, so everything is doubled. */
    private static boolean containsMiddle(List<Point> corners, Point a, Point b) {
        long x = a.x() + b.x();
        long y = a.y() + b.y();
        boolean inside = false;
        for (int i = 0, j = corners.size() - 1; i < corners.size(); j = i++) {
            long ax = 2 * corners.get(j).x() - x;
            long ay = 2 * corners.get(j).y() - y;
            long bx = 2 * corners.get(i).x() - x;
            long by = 2 * corners.get(i).y() - y;
            long turn = ax * by - ay * bx;
            boolean spans =
                    Math.min(ax, bx) <= 0 && Math.max(ax, bx) >= 0 && Math.min(ay, by) <= 0 && Math.max(ay, by) >= 0;
            if (turn == 0 && spans) {
                return true;
            }
            if ((ay > 0) != (by > 0) && (turn > 0) == (by > ay)) {
                inside = !inside;
            }
        }
        return inside;
    }
}
