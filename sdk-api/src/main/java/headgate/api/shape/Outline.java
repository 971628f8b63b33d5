package headgate.api.shape;

import headgate.api.annotation.ApiStatus;
import headgate.api.problem.ProblemCollector;
import headgate.api.unit.Micrometres;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/**
 * A simple polygon in the ground plane: its boundary neither crosses nor touches itself. Vertices run counter-clockwise
 * from the one that is least by x, then y; repeated vertices and vertices on a straight edge are dropped. Two outlines
 * are equal if they have the same vertices.
 */
@ApiStatus(value = ApiStatus.Status.EXPERIMENTAL, since = "0.1.0")
public final class Outline {

    /** Most vertices that an outline may have. */
    public static final int MOST_VERTICES = 512;

    private final List<Point> vertices;
    private final boolean convex;

    private Outline(List<Point> vertices) {
        this.vertices = List.copyOf(vertices);
        this.convex = turnsLeftOnly(this.vertices);
    }

    /**
     * Makes an outline from its vertices, in either direction.
     *
     * @param vertices the corners, in order along the boundary; 3 to 512
     * @return the outline
     * @throws headgate.api.problem.InvalidValueException if the polygon has no area, too few or too many corners, or
     *     crosses or touches itself
     */
    public static Outline of(List<Point> vertices) {
        ProblemCollector problems = new ProblemCollector("outline");
        problems.demand(
                vertices.size() <= MOST_VERTICES,
                "vertices",
                vertices.size() + " vertices",
                "must have at most " + MOST_VERTICES + " vertices");
        problems.throwIfAny();
        List<Point> ring = tidy(vertices);
        if (problems.demand(
                ring.size() >= 3, "vertices", vertices, "must have at least 3 corners that are not on one line")) {
            int fault = firstFault(ring);
            problems.demand(
                    fault < 0,
                    "vertices",
                    fault < 0 ? "" : "an edge at " + ring.get(fault),
                    "must have a boundary that does not cross or touch itself");
        }
        problems.throwIfAny();
        return new Outline(canonical(ring));
    }

    /**
     * Makes an outline from corner coordinates in metres.
     *
     * @param xy the corners as x, y, x, y and so on, m; an even count, 6 to 1024
     * @return the outline
     * @throws IllegalArgumentException as {@link #of(List)}, or if the count is odd or a coordinate out of bounds
     */
    public static Outline ofMetres(double... xy) {
        if (xy.length % 2 != 0) {
            throw new IllegalArgumentException("corners come as x, y pairs, but there are " + xy.length + " numbers");
        }
        List<Point> points = new ArrayList<>(xy.length / 2);
        for (int i = 0; i < xy.length; i += 2) {
            points.add(Point.ofMetres(xy[i], xy[i + 1]));
        }
        return of(points);
    }

    /**
     * Makes a rectangle along the axes.
     *
     * @param x extent along x
     * @param y extent along y
     * @return the rectangle
     * @throws headgate.api.problem.InvalidValueException if an extent has no length
     */
    public static Outline rectangle(Interval x, Interval y) {
        return of(List.of(
                new Point(x.least(), y.least()),
                new Point(x.most(), y.least()),
                new Point(x.most(), y.most()),
                new Point(x.least(), y.most())));
    }

    /**
     * Makes a rectangle along the axes from metres.
     *
     * @param xLeast rear edge, m
     * @param xMost front edge, m
     * @param yLeast right edge, m
     * @param yMost left edge, m
     * @return the rectangle
     * @throws IllegalArgumentException if an extent has no length or is out of bounds
     */
    public static Outline rectangle(double xLeast, double xMost, double yLeast, double yMost) {
        return rectangle(Interval.ofMetres(xLeast, xMost), Interval.ofMetres(yLeast, yMost));
    }

    /**
     * Makes a regular polygon that holds a disc: use it for what a head occupies, since it rounds outward. Its corners
     * stand out by the radius over cos(pi / sides), plus one micrometre for the grid.
     *
     * @param centre centre of the disc
     * @param radius radius of the disc, m; more than 0
     * @param sides corners of the polygon, 4 to 256
     * @return the polygon
     * @throws headgate.api.problem.InvalidValueException if the radius or the number of sides is out of bounds
     */
    public static Outline aroundDisc(Point centre, double radius, int sides) {
        checkDisc(radius, sides);
        // A grid corner lies within 0.71 um of the true one, so an apothem longer by 1 um still clears the disc.
        double corner = (Math.ceil(radius * Micrometres.PER_METRE) + 1.0) / StrictMath.cos(Math.PI / sides);
        return regular(centre, corner, sides);
    }

    /**
     * Makes a regular polygon inside a disc: use it for what a head treats, since it rounds inward.
     *
     * @param centre centre of the disc
     * @param radius radius of the disc, m; more than 2 micrometres
     * @param sides corners of the polygon, 4 to 256
     * @return the polygon
     * @throws headgate.api.problem.InvalidValueException if the radius or the number of sides is out of bounds
     */
    public static Outline insideDisc(Point centre, double radius, int sides) {
        checkDisc(radius, sides);
        return regular(centre, Math.floor(radius * Micrometres.PER_METRE) - 1.0, sides);
    }

    private static void checkDisc(double radius, int sides) {
        ProblemCollector problems = new ProblemCollector("outline of a disc");
        problems.within("radius", radius, 2e-6, 50.0, "m");
        problems.demand(sides >= 4 && sides <= 256, "sides", sides, "must be from 4 to 256");
        problems.throwIfAny();
    }

    private static Outline regular(Point centre, double corner, int sides) {
        List<Point> points = new ArrayList<>(sides);
        for (int i = 0; i < sides; i++) {
            double angle = 2.0 * Math.PI * i / sides;
            points.add(new Point(
                    centre.x() + (long) Math.rint(corner * StrictMath.cos(angle)),
                    centre.y() + (long) Math.rint(corner * StrictMath.sin(angle))));
        }
        return of(points);
    }

    /** {@return the corners, counter-clockwise, from the least by x, then y} */
    public List<Point> vertices() {
        return vertices;
    }

    /** {@return true if no corner turns to the right} */
    public boolean isConvex() {
        return convex;
    }

    /** {@return the extent along x} */
    public Interval xExtent() {
        return new Interval(
                vertices.stream().mapToLong(Point::x).min().orElseThrow(),
                vertices.stream().mapToLong(Point::x).max().orElseThrow());
    }

    /** {@return the extent along y} */
    public Interval yExtent() {
        return new Interval(
                vertices.stream().mapToLong(Point::y).min().orElseThrow(),
                vertices.stream().mapToLong(Point::y).max().orElseThrow());
    }

    /** {@return the area, square metres} */
    public double area() {
        return twiceArea(vertices) / 2.0 / ((double) Micrometres.PER_METRE * Micrometres.PER_METRE);
    }

    /**
     * Says whether a point lies inside or on the boundary; exact.
     *
     * @param p the point
     * @return true if it does
     */
    public boolean contains(Point p) {
        boolean inside = false;
        for (int i = 0, j = vertices.size() - 1; i < vertices.size(); j = i++) {
            Point a = vertices.get(j);
            Point b = vertices.get(i);
            long cross = Point.cross(a, b, p);
            if (cross == 0 && between(a, b, p)) {
                return true;
            }
            if ((a.y() > p.y()) != (b.y() > p.y()) && (cross > 0) == (b.y() > a.y())) {
                inside = !inside;
            }
        }
        return inside;
    }

    /** {@return the convex hull} */
    public Outline convexHull() {
        return convex ? this : new Outline(canonical(hull(vertices)));
    }

    /**
     * The convex hull of some points.
     *
     * @param points the points, at least three that are not on one line
     * @return the hull; it may have more corners than {@link #MOST_VERTICES}
     * @throws headgate.api.problem.InvalidValueException if all points are on one line
     */
    public static Outline hullOf(List<Point> points) {
        List<Point> hull = hull(points);
        ProblemCollector problems = new ProblemCollector("convex hull");
        problems.demand(hull.size() >= 3, "points", points, "must not all be on one line");
        problems.throwIfAny();
        return new Outline(canonical(hull));
    }

    /**
     * Moves the outline.
     *
     * @param by the displacement
     * @return the moved outline
     */
    public Outline shifted(Point by) {
        return new Outline(vertices.stream().map(by::plus).toList());
    }

    /** {@return the outline turned by 180 degrees about the origin} */
    public Outline turned() {
        return new Outline(canonical(vertices.stream().map(Point::turned).toList()));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Outline that && vertices.equals(that.vertices);
    }

    @Override
    public int hashCode() {
        return vertices.hashCode();
    }

    /** {@return the corners in millimetres} */
    @Override
    public String toString() {
        return "outline " + vertices;
    }

    private static List<Point> tidy(List<Point> given) {
        List<Point> ring = new ArrayList<>();
        for (Point p : given) {
            if (ring.isEmpty() || !ring.get(ring.size() - 1).equals(p)) {
                ring.add(p);
            }
        }
        while (ring.size() > 1 && ring.get(0).equals(ring.get(ring.size() - 1))) {
            ring.remove(ring.size() - 1);
        }
        boolean dropped = true;
        while (dropped && ring.size() >= 3) {
            dropped = false;
            for (int i = 0; i < ring.size() && !dropped; i++) {
                Point a = ring.get((i + ring.size() - 1) % ring.size());
                Point b = ring.get(i);
                Point c = ring.get((i + 1) % ring.size());
                // A spike that runs back on itself is a fault, and is left for the check to find.
                if (Point.cross(a, b, c) == 0 && between(a, c, b)) {
                    ring.remove(i);
                    dropped = true;
                }
            }
        }
        return ring;
    }

    private static List<Point> canonical(List<Point> ring) {
        List<Point> result = new ArrayList<>(ring);
        if (twiceArea(result) < 0) {
            Collections.reverse(result);
        }
        Collections.rotate(result, -result.indexOf(Collections.min(result)));
        return result;
    }

    /** Sums may wrap on the way; the end is right, since a doubled area within the bounds fits in a long. */
    private static long twiceArea(List<Point> ring) {
        long sum = 0;
        for (int i = 0, j = ring.size() - 1; i < ring.size(); j = i++) {
            sum += ring.get(j).x() * ring.get(i).y()
                    - ring.get(j).y() * ring.get(i).x();
        }
        return sum;
    }

    private static boolean turnsLeftOnly(List<Point> ring) {
        int n = ring.size();
        for (int i = 0; i < n; i++) {
            if (Point.cross(ring.get(i), ring.get((i + 1) % n), ring.get((i + 2) % n)) < 0) {
                return false;
            }
        }
        return true;
    }

    /** The index of the first edge that meets another where it must not, or -1. */
    private static int firstFault(List<Point> ring) {
        int n = ring.size();
        for (int i = 0; i < n; i++) {
            Point a = ring.get(i);
            Point b = ring.get((i + 1) % n);
            Point c = ring.get((i + 2) % n);
            if (Point.cross(a, b, c) == 0) {
                return i;
            }
            for (int j = i + 2; j < n; j++) {
                boolean neighbours = i == 0 && j == n - 1;
                if (!neighbours && meet(a, b, ring.get(j), ring.get((j + 1) % n))) {
                    return i;
                }
            }
        }
        return -1;
    }

    private static boolean meet(Point a, Point b, Point c, Point d) {
        int abc = Long.signum(Point.cross(a, b, c));
        int abd = Long.signum(Point.cross(a, b, d));
        int cda = Long.signum(Point.cross(c, d, a));
        int cdb = Long.signum(Point.cross(c, d, b));
        if (abc * abd < 0 && cda * cdb < 0) {
            return true;
        }
        return (abc == 0 && between(a, b, c))
                || (abd == 0 && between(a, b, d))
                || (cda == 0 && between(c, d, a))
                || (cdb == 0 && between(c, d, b));
    }

    /** Whether p, known to be on the line through a and b, lies from a to b. */
    private static boolean between(Point a, Point b, Point p) {
        return Math.min(a.x(), b.x()) <= p.x()
                && p.x() <= Math.max(a.x(), b.x())
                && Math.min(a.y(), b.y()) <= p.y()
                && p.y() <= Math.max(a.y(), b.y());
    }

    /** Monotone chain (Andrew 1979): lower chain, then upper chain; points on an edge are dropped. */
    private static List<Point> hull(List<Point> points) {
        Point[] sorted = points.stream().distinct().sorted().toArray(Point[]::new);
        if (sorted.length < 3) {
            return Arrays.asList(sorted);
        }
        List<Point> hull = new ArrayList<>(chain(Arrays.asList(sorted)));
        List<Point> back = Arrays.asList(sorted.clone());
        Collections.reverse(back);
        hull.remove(hull.size() - 1);
        List<Point> upper = chain(back);
        hull.addAll(upper.subList(0, upper.size() - 1));
        return hull;
    }

    private static List<Point> chain(List<Point> sorted) {
        List<Point> chain = new ArrayList<>();
        for (Point p : sorted) {
            while (chain.size() >= 2 && Point.cross(chain.get(chain.size() - 2), chain.get(chain.size() - 1), p) <= 0) {
                chain.remove(chain.size() - 1);
            }
            chain.add(p);
        }
        return chain;
    }
}
