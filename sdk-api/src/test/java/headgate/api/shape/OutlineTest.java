package headgate.api.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import headgate.api.problem.InvalidValueException;
import java.awt.geom.Path2D;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class OutlineTest {

    private static Outline micrometres(long... xy) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < xy.length; i += 2) {
            points.add(new Point(xy[i], xy[i + 1]));
        }
        return Outline.of(points);
    }

    @Test
    void anyDirectionAndStartGiveTheSameOutline() {
        Outline expected = micrometres(0, 0, 4, 0, 4, 3, 0, 3);
        assertThat(micrometres(4, 3, 4, 0, 0, 0, 0, 3)).isEqualTo(expected);
        assertThat(micrometres(4, 0, 4, 3, 0, 3, 0, 0, 4, 0)).isEqualTo(expected);
        assertThat(micrometres(0, 0, 2, 0, 4, 0, 4, 3, 4, 3, 0, 3)).isEqualTo(expected);
        assertThat(expected.vertices())
                .containsExactly(new Point(0, 0), new Point(4, 0), new Point(4, 3), new Point(0, 3));
        assertThat(expected.area()).isEqualTo(12e-12);
    }

    @Test
    void aBoundaryThatCrossesOrTouchesItselfIsRefused() {
        // Bow tie; a corner on an edge; two squares at one corner; a spike; a line.
        for (long[] bad : new long[][] {
            {0, 0, 4, 4, 4, 0, 0, 4},
            {0, 0, 8, 0, 8, 8, 4, 0, 0, 8},
            {0, 0, 2, 0, 2, 2, 4, 2, 4, 4, 2, 4, 2, 2, 0, 2},
            {0, 0, 4, 0, 4, 4, 4, 8, 4, 4, 0, 4},
            {0, 0, 4, 4, 8, 8},
            {0, 0, 4, 4},
        }) {
            assertThatThrownBy(() -> micrometres(bad))
                    .isInstanceOf(InvalidValueException.class)
                    .hasMessageContaining("vertices must");
        }
    }

    /**
     * Pick's theorem (G. Pick, 1899): a simple polygon with whole corners, I grid points inside and B on its boundary has
     * the area I + B/2 - 1. B is a sum of greatest common divisors along the edges.
     */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void containsAgreesWithPicksTheorem(long seed) {
        Outline outline = star(seed, 30);
        long held = 0;
        for (long x = -31; x <= 31; x++) {
            for (long y = -31; y <= 31; y++) {
                held += outline.contains(new Point(x, y)) ? 1 : 0;
            }
        }
        long boundary = 0;
        List<Point> v = outline.vertices();
        for (int i = 0; i < v.size(); i++) {
            Point d = v.get((i + 1) % v.size()).minus(v.get(i));
            boundary += BigInteger.valueOf(d.x()).gcd(BigInteger.valueOf(d.y())).longValueExact();
        }
        double pick = held - boundary + boundary / 2.0 - 1;
        assertThat(outline.area() * 1e12).isCloseTo(pick, within(1e-9));
    }

    /** A star-shaped polygon about the origin: simple by construction. */
    private static Outline star(long seed, int radius) {
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
        while (true) {
            int n = random.nextInt(3, 14);
            List<Point> points = new ArrayList<>();
            for (int i = 0; i < n; i++) {
                double angle = 2 * Math.PI * (i + random.nextDouble() * 0.8) / n;
                double r = random.nextDouble(3, radius);
                points.add(new Point(Math.round(r * Math.cos(angle)), Math.round(r * Math.sin(angle))));
            }
            try {
                return Outline.of(points);
            } catch (InvalidValueException e) {
                // Rounding to the grid may fold a thin star; take the next.
            }
        }
    }

    /** The platform's own path, even-odd rule, agrees about every point that is off the boundary. */
    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14, 15})
    void containsAgreesWithThePlatformsPath(long seed) {
        Outline outline = star(seed, 1000);
        Path2D.Double path = new Path2D.Double(Path2D.WIND_EVEN_ODD);
        List<Point> v = outline.vertices();
        path.moveTo((double) v.get(0).x(), (double) v.get(0).y());
        v.subList(1, v.size()).forEach(p -> path.lineTo((double) p.x(), (double) p.y()));
        path.closePath();
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
        int inside = 0;
        for (int i = 0; i < 5000; i++) {
            Point p = new Point(random.nextLong(-1000, 1001), random.nextLong(-1000, 1001));
            if (!onBoundary(v, p)) {
                assertThat(outline.contains(p)).as("%s", p).isEqualTo(path.contains((double) p.x(), (double) p.y()));
                inside += outline.contains(p) ? 1 : 0;
            } else {
                assertThat(outline.contains(p)).isTrue();
            }
        }
        assertThat(inside).isPositive();
    }

    private static boolean onBoundary(List<Point> v, Point p) {
        for (int i = 0; i < v.size(); i++) {
            Point a = v.get(i);
            Point b = v.get((i + 1) % v.size());
            if (Point.cross(a, b, p) == 0
                    && Math.min(a.x(), b.x()) <= p.x()
                    && p.x() <= Math.max(a.x(), b.x())
                    && Math.min(a.y(), b.y()) <= p.y()
                    && p.y() <= Math.max(a.y(), b.y())) {
                return true;
            }
        }
        return false;
    }

    /** By the definition of a hull: it holds every point, its corners are among them, and every corner turns left. */
    @ParameterizedTest
    @ValueSource(longs = {21, 22, 23, 24, 25})
    void theHullIsTheSmallestConvexOutline(long seed) {
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < 200; i++) {
            points.add(new Point(random.nextLong(-20, 21), random.nextLong(-20, 21)));
        }
        Outline hull = Outline.hullOf(points);
        assertThat(points).containsAll(hull.vertices()).allMatch(hull::contains);
        List<Point> v = hull.vertices();
        for (int i = 0; i < v.size(); i++) {
            assertThat(Point.cross(v.get(i), v.get((i + 1) % v.size()), v.get((i + 2) % v.size())))
                    .isPositive();
        }
        Collections.reverse(points);
        assertThat(Outline.hullOf(points)).isEqualTo(hull);
        assertThat(hull.isConvex()).isTrue();
        assertThat(star(seed, 30).convexHull().isConvex()).isTrue();
    }

    @Test
    void theHullOfAnArrowHeadByHand() {
        Outline arrow = micrometres(0, 0, 10, 5, 0, 10, 3, 5);
        assertThat(arrow.isConvex()).isFalse();
        assertThat(arrow.contains(new Point(1, 5))).isFalse();
        assertThat(arrow.convexHull()).isEqualTo(micrometres(0, 0, 10, 5, 0, 10));
        assertThat(arrow.convexHull().contains(new Point(1, 5))).isTrue();
        assertThatThrownBy(() -> Outline.hullOf(List.of(new Point(0, 0), new Point(1, 1), new Point(2, 2))))
                .isInstanceOf(InvalidValueException.class);
    }

    /**
     * A regular polygon of n sides about a circle of radius r has the area n r² tan(pi / n), one inside it n/2 r² sin(2
     * pi / n): elementary geometry. Ours lie outside and inside by no more than the grid.
     */
    @ParameterizedTest
    @ValueSource(ints = {4, 5, 8, 16, 64, 256})
    void polygonsAboutAndInsideADisc(int sides) {
        double r = 0.02;
        Point centre = new Point(12_345, -678);
        Outline about = Outline.aroundDisc(centre, r, sides);
        Outline inside = Outline.insideDisc(centre, r, sides);
        double area = sides * r * r * Math.tan(Math.PI / sides);
        double inner = sides / 2.0 * r * r * Math.sin(2 * Math.PI / sides);
        assertThat(about.area()).isBetween(area * (1 - 1e-9), area * (1 + 4e-4));
        assertThat(inside.area()).isBetween(inner * (1 - 4e-4), inner * (1 + 1e-9));
        for (int i = 0; i < 720; i++) {
            double angle = Math.PI * i / 360;
            Point rim = new Point(
                    centre.x() + Math.round(20_000 * Math.cos(angle)),
                    centre.y() + Math.round(20_000 * Math.sin(angle)));
            assertThat(about.contains(rim)).isTrue();
        }
        assertThat(inside.vertices())
                .allMatch(p -> Math.hypot((double) (p.x() - centre.x()), (double) (p.y() - centre.y())) <= 20_000.0);
    }

    @Test
    void movingAndTurning() {
        Outline triangle = micrometres(1, 2, 5, 2, 1, 4);
        assertThat(triangle.shifted(new Point(10, -2))).isEqualTo(micrometres(11, 0, 15, 0, 11, 2));
        assertThat(triangle.turned()).isEqualTo(micrometres(-1, -2, -5, -2, -1, -4));
        assertThat(triangle.turned().turned()).isEqualTo(triangle);
        assertThat(triangle.xExtent()).isEqualTo(new Interval(1, 5));
        assertThat(triangle.yExtent()).isEqualTo(new Interval(2, 4));
    }

    @Test
    void theGridGoesToAHundredMetresAndStaysExact() {
        Outline largest = Outline.rectangle(-100, 100, -100, 100);
        assertThat(largest.area()).isEqualTo(40_000.0);
        assertThat(largest.contains(new Point(100_000_000, -100_000_000))).isTrue();
        assertThat(Outline.of(List.of(
                                new Point(-100_000_000, -100_000_000),
                                new Point(100_000_000, 99_999_999),
                                new Point(100_000_000, 100_000_000)))
                        .area())
                .isCloseTo(200 * 1e-6 / 2, within(1e-15));
        assertThatThrownBy(() -> Point.ofMetres(100.000001, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Point.ofMetres(Double.NaN, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThat(Point.ofMetres(0.12, -0.0455)).hasToString("(120, -45.5) mm");
    }

    @Test
    void intervalsByHand() {
        Interval a = new Interval(2, 5);
        assertThat(a.gapTo(new Interval(9, 12))).isEqualTo(4);
        assertThat(a.gapTo(new Interval(-3, 0))).isEqualTo(2);
        assertThat(a.gapTo(new Interval(5, 6))).isZero();
        assertThat(a.hull(new Interval(9, 12))).isEqualTo(new Interval(2, 12));
        assertThat(a.plus(new Interval(-1, 3))).isEqualTo(new Interval(1, 8));
        assertThat(a.shifted(-2)).isEqualTo(new Interval(0, 3));
        assertThat(a.length()).isEqualTo(3);
        assertThatThrownBy(() -> new Interval(1, 0)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void volumesByHand() {
        assertThat(Prism.box(0, 0.2, 0, 0.1, -0.3, 0).volume()).isCloseTo(0.006, within(1e-15));
        assertThatThrownBy(() -> Prism.box(0, 1, 0, 1, 0.5, 0.5)).isInstanceOf(IllegalArgumentException.class);
        Prism cylinder = Prism.aroundCylinder(0, 0, 0.02, 0, 0.1);
        double exact = Math.PI * 0.02 * 0.02 * 0.1;
        assertThat(cylinder.volume()).isBetween(exact, exact * 1.02 * 1.02);
    }
}
