package headgate.verifier.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import headgate.api.shape.Interval;
import headgate.api.shape.Outline;
import headgate.api.shape.Point;
import headgate.api.shape.Point3;
import headgate.api.shape.Prism;
import headgate.verifier.geometry.OtherEngine.Solid;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Distances of convex pairs against dyn4j, an engine of other authors, and against a plain walk over all edges. */
class ConvexPairsTest {

    private static final Interval LAYER = new Interval(0, 1000);

    @ParameterizedTest
    @ValueSource(longs = {101, 102, 103, 104})
    void apartNearAndOverlapping(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int met = 0;
        for (int i = 0; i < 1000; i++) {
            Outline a = RandomBody.plan(random, true).outline();
            Outline b = RandomBody.plan(random, true)
                    .outline()
                    .shifted(new Point(random.nextLong(-400_000, 400_001), random.nextLong(-400_000, 400_001)));
            double ours = gap(a, b);

            assertThat(ours).as("seed %s, pair %s", seed, i).isCloseTo(other(a, b), within(1e-6));
            assertThat(ours).isCloseTo(byAllEdges(a, b), within(2e-6));
            met += ours == 0 ? 1 : 0;
        }
        // The seeds give both kinds, or the comparison would say little.
        assertThat(met).isBetween(50, 950);
    }

    @ParameterizedTest
    @ValueSource(longs = {201, 202, 203})
    void oneInsideTheOther(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 500; i++) {
            Outline big = Outline.aroundDisc(Point.ORIGIN, 0.2 + random.nextDouble(), random.nextInt(4, 40));
            Outline small = Outline.aroundDisc(
                    new Point(random.nextLong(-50_000, 50_001), random.nextLong(-50_000, 50_001)),
                    0.001 + 0.02 * random.nextDouble(),
                    random.nextInt(4, 20));

            assertThat(gap(big, small)).isZero();
            assertThat(gap(small, big)).isZero();
            assertThat(other(big, small)).isZero();
        }
    }

    /** A corner of one put exactly on a corner of the other, from outside; then one micrometre away. */
    @ParameterizedTest
    @ValueSource(longs = {301, 302, 303})
    void touchingExactly(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 500; i++) {
            Outline a = RandomBody.plan(random, true).outline();
            Outline b = RandomBody.plan(random, true).outline();
            Point right = a.vertices().stream().max(Point::compareTo).orElseThrow();
            Point left = b.vertices().get(0);
            Outline touching = b.shifted(right.minus(left));

            assertThat(gap(a, touching)).isZero();
            assertThat(gap(a, touching.shifted(new Point(1, 0)))).isPositive().isLessThanOrEqualTo(1e-6);
        }
    }

    private static double gap(Outline a, Outline b) {
        return Gap.between(occupied(a), occupied(b)).orElseThrow().metres();
    }

    private static Occupied occupied(Outline outline) {
        return Occupied.of(List.of(Prism.of(outline, LAYER))).shifted(Point3.ORIGIN);
    }

    private static double other(Outline a, Outline b) {
        return OtherEngine.distance(List.of(solid(a)), List.of(solid(b))) / 1e6;
    }

    private static Solid solid(Outline outline) {
        return Solid.of(new Part(outline.vertices(), LAYER), false, List.of(), Interval.at(0));
    }

    /** Every corner against every edge, both ways: slow and plain. */
    private static double byAllEdges(Outline a, Outline b) {
        if (a.vertices().stream().anyMatch(b::contains) || b.vertices().stream().anyMatch(a::contains)) {
            return 0;
        }
        double least = Math.min(cornersToEdges(a, b), cornersToEdges(b, a));
        return edgesCross(a, b) ? 0 : least;
    }

    private static double cornersToEdges(Outline a, Outline b) {
        double least = Double.POSITIVE_INFINITY;
        List<Point> ring = b.vertices();
        for (Point p : a.vertices()) {
            for (int i = 0; i < ring.size(); i++) {
                Point from = ring.get(i);
                Point edge = ring.get((i + 1) % ring.size()).minus(from);
                double ex = edge.xMetres();
                double ey = edge.yMetres();
                Point d = p.minus(from);
                double t = (d.xMetres() * ex + d.yMetres() * ey) / (ex * ex + ey * ey);
                double s = Math.min(1, Math.max(0, t));
                least = Math.min(least, Math.hypot(d.xMetres() - s * ex, d.yMetres() - s * ey));
            }
        }
        return least;
    }

    private static boolean edgesCross(Outline a, Outline b) {
        List<Point> p = a.vertices();
        List<Point> q = b.vertices();
        for (int i = 0; i < p.size(); i++) {
            for (int j = 0; j < q.size(); j++) {
                Point p0 = p.get(i);
                Point p1 = p.get((i + 1) % p.size());
                Point q0 = q.get(j);
                Point q1 = q.get((j + 1) % q.size());
                if (Long.signum(Point.cross(p0, p1, q0)) != Long.signum(Point.cross(p0, p1, q1))
                        && Long.signum(Point.cross(q0, q1, p0)) != Long.signum(Point.cross(q0, q1, p1))) {
                    return true;
                }
            }
        }
        return false;
    }
}
