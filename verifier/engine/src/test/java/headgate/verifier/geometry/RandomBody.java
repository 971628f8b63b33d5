package headgate.verifier.geometry;

import headgate.api.shape.Body;
import headgate.api.shape.Interval;
import headgate.api.shape.Outline;
import headgate.api.shape.Point;
import headgate.api.shape.Prism;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** A body made at random together with convex parts that fill it exactly, for an engine of other authors. */
public record RandomBody(Body body, List<Part> parts) {

    public static final RandomBody NOTHING = new RandomBody(Body.NONE, List.of());

    /** An outline and convex corner lists that fill it. */
    public record Plan(Outline outline, List<List<Point>> convexParts) {}

    public static RandomBody of(SplittableRandom random, boolean convexOnly, int prisms) {
        List<Prism> made = new ArrayList<>();
        List<Part> parts = new ArrayList<>();
        for (int i = 0; i < prisms; i++) {
            Plan plan = plan(random, convexOnly);
            long low = random.nextLong(-300_000, 100_000);
            Interval height = new Interval(low, low + random.nextLong(1_000, 300_000));
            made.add(Prism.of(plan.outline(), height));
            plan.convexParts().forEach(c -> parts.add(new Part(c, height)));
        }
        return new RandomBody(Body.of(made), parts);
    }

    public static Plan plan(SplittableRandom random, boolean convexOnly) {
        long x = random.nextLong(-150_000, 150_001);
        long y = random.nextLong(-150_000, 150_001);
        if (convexOnly) {
            Outline hull = convex(random, x, y);
            return new Plan(hull, List.of(hull.vertices()));
        }
        return switch (random.nextInt(4)) {
            case 0 -> {
                Outline hull = convex(random, x, y);
                yield new Plan(hull, List.of(hull.vertices()));
            }
            case 1 -> ell(random, x, y);
            case 2 -> fork(random, x, y);
            default -> star(random, x, y);
        };
    }

    private static Outline convex(SplittableRandom random, long x, long y) {
        while (true) {
            List<Point> points = new ArrayList<>();
            int n = random.nextInt(3, 13);
            long size = random.nextLong(2_000, 150_000);
            for (int i = 0; i < n; i++) {
                points.add(new Point(x + random.nextLong(-size, size + 1), y + random.nextLong(-size, size + 1)));
            }
            if (points.stream().anyMatch(p -> Point.cross(points.get(0), points.get(1), p) != 0)) {
                return Outline.hullOf(points);
            }
        }
    }

    /** An L, sheared so that it is not along the axes. */
    private static Plan ell(SplittableRandom random, long x, long y) {
        long w = random.nextLong(2, 60_000);
        long a = w + random.nextLong(1, 150_000);
        long b = w + random.nextLong(1, 150_000);
        long k = random.nextLong(-2, 3);
        return new Plan(
                Outline.of(sheared(x, y, k, 0, 0, a, 0, a, w, w, w, w, b, 0, b)),
                List.of(sheared(x, y, k, 0, 0, a, 0, a, w, 0, w), sheared(x, y, k, 0, w, w, w, w, b, 0, b)));
    }

    /** A fork with two tines. */
    private static Plan fork(SplittableRandom random, long x, long y) {
        long w = random.nextLong(2, 40_000);
        long slot = random.nextLong(1, 120_000);
        long a = w + random.nextLong(1, 150_000);
        long b = 2 * w + slot;
        long k = random.nextLong(-2, 3);
        return new Plan(
                Outline.of(sheared(x, y, k, 0, 0, a, 0, a, w, w, w, w, w + slot, a, w + slot, a, b, 0, b)),
                List.of(
                        sheared(x, y, k, 0, 0, w, 0, w, b, 0, b),
                        sheared(x, y, k, w, 0, a, 0, a, w, w, w),
                        sheared(x, y, k, w, w + slot, a, w + slot, a, b, w, b)));
    }

    private static List<Point> sheared(long x, long y, long k, long... xy) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < xy.length; i += 2) {
            points.add(new Point(x + xy[i] + k * xy[i + 1], y + xy[i + 1]));
        }
        return points;
    }

    /** A polygon all of whose corners are seen from one point: triangles from that point fill it. */
    private static Plan star(SplittableRandom random, long x, long y) {
        while (true) {
            int n = random.nextInt(4, 11);
            Point centre = new Point(x, y);
            List<Point> ring = new ArrayList<>();
            for (int i = 0; i < n; i++) {
                double angle = 2 * Math.PI * (i + 0.8 * random.nextDouble()) / n;
                double radius = random.nextDouble(3_000, 150_000);
                ring.add(new Point(
                        x + Math.round(radius * StrictMath.cos(angle)),
                        y + Math.round(radius * StrictMath.sin(angle))));
            }
            List<List<Point>> triangles = new ArrayList<>();
            boolean good = true;
            for (int i = 0; i < n; i++) {
                Point a = ring.get(i);
                Point b = ring.get((i + 1) % n);
                good &= Point.cross(centre, a, b) > 0;
                triangles.add(List.of(centre, a, b));
            }
            if (good) {
                return new Plan(Outline.of(ring), triangles);
            }
        }
    }
}
