package headgate.verifier.geometry;

/**
 * The distance of two convex polygons seen from above, exact. It is the distance of the origin from their difference
 * set {@code a - b}, which is a merge of edges; the nearest edge of that set tells which vertices and edges of the two
 * polygons are nearest.
 */
final class Planar {

    private final Ring a;
    private final Ring b;
    private final Ring.Merge difference;
    private final SquaredDistance square;
    /** The edge of the difference nearest to the origin; -1 if the origin lies in the difference. */
    private final int nearest;

    private Planar(Ring a, Ring b, Ring.Merge difference, SquaredDistance square, int nearest) {
        this.a = a;
        this.b = b;
        this.difference = difference;
        this.square = square;
        this.nearest = nearest;
    }

    static Planar between(Ring a, Ring b) {
        Ring.Merge difference = Ring.Merge.of(a, b.turned());
        Ring d = difference.ring();
        SquaredDistance least = SquaredDistance.ZERO;
        int nearest = -1;
        for (int i = 0; i < d.edges(); i++) {
            long cross = d.edgeX(i) * d.y[i] - d.edgeY(i) * d.x[i];
            // Only an edge that has the origin on its outer side can be nearest.
            if (cross > 0) {
                SquaredDistance s = toOrigin(d, i, cross);
                if (nearest < 0 || s.compareTo(least) < 0) {
                    least = s;
                    nearest = i;
                }
            }
        }
        return new Planar(a, b, difference, least, nearest);
    }

    /** Distance of the point (px, py) from a convex polygon that has area. */
    static SquaredDistance fromPoint(long px, long py, Ring polygon) {
        return between(polygon, Ring.point(px, py)).square;
    }

    private static SquaredDistance toOrigin(Ring d, int i, long cross) {
        long ex = d.edgeX(i);
        long ey = d.edgeY(i);
        long along = -(d.x[i] * ex + d.y[i] * ey);
        long length = ex * ex + ey * ey;
        if (along <= 0) {
            return SquaredDistance.ofVertex(d.x[i] * d.x[i] + d.y[i] * d.y[i]);
        }
        if (along >= length) {
            long x = d.x[i] + ex;
            long y = d.y[i] + ey;
            return SquaredDistance.ofVertex(x * x + y * y);
        }
        return SquaredDistance.ofEdge(cross, length);
    }

    /** 0 if the polygons touch, overlap or hold one another. */
    SquaredDistance square() {
        return square;
    }

    /** A nearest place of the first and one of the second polygon: x, y, x, y in micrometres, not on the grid. */
    double[] witnesses() {
        return nearest < 0 ? common() : apart();
    }

    private double[] apart() {
        Ring d = difference.ring();
        double length = (double) d.edgeX(nearest) * d.edgeX(nearest) + (double) d.edgeY(nearest) * d.edgeY(nearest);
        double along = -((double) d.x[nearest] * d.edgeX(nearest) + (double) d.y[nearest] * d.edgeY(nearest));
        double t = Math.min(1.0, Math.max(0.0, along / length));
        int next = nearest + 1 == d.size() ? 0 : nearest + 1;
        int a0 = difference.first()[nearest];
        int a1 = difference.first()[next];
        // The second index counts the turned polygon; its vertices are those of b, from another start.
        Ring minusB = b.turned();
        int b0 = difference.second()[nearest];
        int b1 = difference.second()[next];
        return new double[] {
            between(a.x[a0], a.x[a1], t),
            between(a.y[a0], a.y[a1], t),
            -between(minusB.x[b0], minusB.x[b1], t),
            -between(minusB.y[b0], minusB.y[b1], t)
        };
    }

    private static double between(long from, long to, double t) {
        return from + t * (to - from);
    }

    /** A place inside both: the mean of the corners that one has in the other and of the crossings of their edges. */
    private double[] common() {
        Mean mean = new Mean();
        addCornersInside(mean, a, b);
        addCornersInside(mean, b, a);
        for (int i = 0; i < a.edges(); i++) {
            for (int j = 0; j < b.edges(); j++) {
                addCrossing(mean, i, j);
            }
        }
        double x = mean.x / mean.count;
        double y = mean.y / mean.count;
        return new double[] {x, y, x, y};
    }

    private static void addCornersInside(Mean mean, Ring of, Ring in) {
        for (int i = 0; i < of.size(); i++) {
            if (contains(in, of.x[i], of.y[i])) {
                mean.add((double) of.x[i], (double) of.y[i]);
            }
        }
    }

    /** Whether a ring of any number of points holds a point; one with fewer than three has no inside. */
    static boolean holds(Ring ring, long px, long py) {
        return between(ring, Ring.point(px, py)).square().equals(SquaredDistance.ZERO);
    }

    private static boolean contains(Ring ring, long px, long py) {
        for (int i = 0; i < ring.edges(); i++) {
            if (ring.edgeX(i) * (py - ring.y[i]) - ring.edgeY(i) * (px - ring.x[i]) < 0) {
                return false;
            }
        }
        return true;
    }

    private void addCrossing(Mean mean, int i, int j) {
        long ax = a.edgeX(i);
        long ay = a.edgeY(i);
        long bx = b.edgeX(j);
        long by = b.edgeY(j);
        long dx = b.x[j] - a.x[i];
        long dy = b.y[j] - a.y[i];
        long along = ax * by - ay * bx;
        if (along != 0) {
            double s = (double) (dx * by - dy * bx) / along;
            double t = (double) (dx * ay - dy * ax) / along;
            if (s >= 0 && s <= 1 && t >= 0 && t <= 1) {
                mean.add(a.x[i] + s * ax, a.y[i] + s * ay);
            }
        }
    }

    private static final class Mean {
        private double x;
        private double y;
        private int count;

        void add(double px, double py) {
            x += px;
            y += py;
            count++;
        }
    }
}
