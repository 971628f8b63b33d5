package headgate.verifier.geometry;

import headgate.api.shape.Outline;
import headgate.api.shape.Point;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A convex polygon as two arrays, strictly convex, counter-clockwise from the vertex that is least by x, then y. One
 * point and a segment of two points count too. Arrays, since every distance walks over them.
 *
 * <p>From that first vertex the edges turn from just after straight down (-y) once round to straight down. The merge of
 * two rings relies on this order.
 */
final class Ring {

    final long[] x;
    final long[] y;

    private Ring(long[] x, long[] y) {
        this.x = x;
        this.y = y;
    }

    /** The ring of a convex outline. */
    static Ring of(Outline convex) {
        if (!convex.isConvex()) {
            throw new IllegalArgumentException("must be convex, but is " + convex);
        }
        return ofVertices(convex.vertices());
    }

    /** The convex hull of some points; they may be one point, or lie on one line. */
    static Ring hull(List<Point> points) {
        List<Point> sorted = points.stream().distinct().sorted().toList();
        if (sorted.size() <= 2) {
            return ofVertices(sorted);
        }
        Point first = sorted.get(0);
        Point last = sorted.get(sorted.size() - 1);
        boolean onOneLine = sorted.stream().allMatch(p -> Point.cross(first, last, p) == 0);
        return onOneLine ? ofVertices(List.of(first, last)) : of(Outline.hullOf(points));
    }

    /** A ring of one point, which may lie off the grid of coordinates, as a difference of two points does. */
    static Ring point(long x, long y) {
        return new Ring(new long[] {x}, new long[] {y});
    }

    private static Ring ofVertices(List<Point> vertices) {
        long[] x = new long[vertices.size()];
        long[] y = new long[vertices.size()];
        for (int i = 0; i < x.length; i++) {
            x[i] = vertices.get(i).x();
            y[i] = vertices.get(i).y();
        }
        return new Ring(x, y);
    }

    int size() {
        return x.length;
    }

    Point vertex(int i) {
        return new Point(x[i], y[i]);
    }

    Outline outline() {
        List<Point> points = new ArrayList<>(x.length);
        for (int i = 0; i < x.length; i++) {
            points.add(vertex(i));
        }
        return Outline.hullOf(points);
    }

    Ring shifted(long dx, long dy) {
        long[] sx = x.clone();
        long[] sy = y.clone();
        for (int i = 0; i < sx.length; i++) {
            sx[i] += dx;
            sy[i] += dy;
        }
        return new Ring(sx, sy);
    }

    /** Turned by 180 degrees about the origin, which is the same as the set of negated points. */
    Ring turned() {
        int n = x.length;
        int first = 0;
        for (int i = 1; i < n; i++) {
            if (x[i] > x[first] || (x[i] == x[first] && y[i] > y[first])) {
                first = i;
            }
        }
        long[] tx = new long[n];
        long[] ty = new long[n];
        for (int i = 0; i < n; i++) {
            tx[i] = -x[(first + i) % n];
            ty[i] = -y[(first + i) % n];
        }
        return new Ring(tx, ty);
    }

    /** Turned about the origin by quarters, counter-clockwise. */
    Ring quarterTurned(int quarters) {
        List<Point> turned = new ArrayList<>(x.length);
        for (int i = 0; i < x.length; i++) {
            turned.add(
                    switch (Math.floorMod(quarters, 4)) {
                        case 0 -> new Point(x[i], y[i]);
                        case 1 -> new Point(-y[i], x[i]);
                        case 2 -> new Point(-x[i], -y[i]);
                        default -> new Point(y[i], -x[i]);
                    });
        }
        return hull(turned);
    }

    long edgeX(int i) {
        return x[i + 1 == x.length ? 0 : i + 1] - x[i];
    }

    long edgeY(int i) {
        return y[i + 1 == y.length ? 0 : i + 1] - y[i];
    }

    /** Number of edges: none for one point; a segment has one there and one back. */
    int edges() {
        return x.length == 1 ? 0 : x.length;
    }

    /** The Minkowski sum, exact, by a merge of both rings' edges in the order of their directions. */
    Ring plus(Ring other) {
        return Merge.of(this, other).ring();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Ring that && Arrays.equals(x, that.x) && Arrays.equals(y, that.y);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(x) + Arrays.hashCode(y);
    }

    /**
     * A Minkowski sum that knows, for each of its vertices, which two vertices it is the sum of.
     *
     * @param ring the sum
     * @param first for each vertex of the sum, the vertex of the first ring
     * @param second for each vertex of the sum, the vertex of the second ring
     */
    @SuppressWarnings("ArrayRecordComponent") // stays inside this package, and is never compared
    record Merge(Ring ring, int[] first, int[] second) {

        static Merge of(Ring a, Ring b) {
            int most = Math.max(1, a.edges() + b.edges());
            long[] x = new long[most];
            long[] y = new long[most];
            int[] first = new int[most];
            int[] second = new int[most];
            int i = 0;
            int j = 0;
            int n = 0;
            do {
                int ai = i == a.size() ? 0 : i;
                int bj = j == b.size() ? 0 : j;
                x[n] = a.x[ai] + b.x[bj];
                y[n] = a.y[ai] + b.y[bj];
                first[n] = ai;
                second[n] = bj;
                n++;
                int order = i == a.edges() ? (j == b.edges() ? 0 : 1) : j == b.edges() ? -1 : compare(a, i, b, j);
                i += order <= 0 && i < a.edges() ? 1 : 0;
                j += order >= 0 && j < b.edges() ? 1 : 0;
            } while (i < a.edges() || j < b.edges());
            return new Merge(
                    new Ring(Arrays.copyOf(x, n), Arrays.copyOf(y, n)),
                    Arrays.copyOf(first, n),
                    Arrays.copyOf(second, n));
        }

        /** Which edge comes first: negative for the first ring's, positive for the second's, 0 if they are parallel. */
        private static int compare(Ring a, int i, Ring b, int j) {
            long ax = a.edgeX(i);
            long ay = a.edgeY(i);
            long bx = b.edgeX(j);
            long by = b.edgeY(j);
            boolean aLate = ax < 0 || (ax == 0 && ay < 0);
            boolean bLate = bx < 0 || (bx == 0 && by < 0);
            return aLate != bLate ? (aLate ? 1 : -1) : Long.signum(bx * ay - by * ax);
        }
    }
}
