package headgate.verifier.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import headgate.api.shape.Body;
import headgate.api.shape.Interval;
import headgate.api.shape.Outline;
import headgate.api.shape.Point;
import headgate.api.shape.Point3;
import headgate.api.shape.Prism;
import headgate.api.sheet.Reach;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Worked values of plane geometry that do not come from this project. */
class GeometryReferencesTest {

    private static final Outline UNIT_SQUARE = Outline.rectangle(0, 1, 0, 1);
    private static final Outline TRIANGLE = Outline.ofMetres(0, 0, 1, 0, 0, 1);
    private static final Outline DIAMOND = Outline.ofMetres(1, 0, 0, 1, -1, 0, 0, -1);
    private static final Interval LAYER = Interval.ofMetres(0, 0.1);

    /**
     * Steiner's formula for the parallel set of a convex figure in the plane: area A + P r + pi r^2, perimeter
     * P + 2 pi r (the Minkowski-Steiner formula, as in any text on convex geometry). The disc stands as a polygon around
     * it and one inside it: the exact value must lie between, and the two must be close.
     */
    @ParameterizedTest
    @MethodSource
    void steinerFormula(Outline convex, double r, double area, double perimeter) {
        Outline outer = sum(convex, Outline.aroundDisc(Point.ORIGIN, r, 256));
        Outline inner = sum(convex, Outline.insideDisc(Point.ORIGIN, r, 256));

        assertThat(outer.area()).isGreaterThanOrEqualTo(area).isCloseTo(area, within(1e-4 * area));
        assertThat(inner.area()).isLessThanOrEqualTo(area).isCloseTo(area, within(1e-4 * area));
        assertThat(perimeter(outer)).isGreaterThanOrEqualTo(perimeter).isCloseTo(perimeter, within(1e-4 * perimeter));
        assertThat(perimeter(inner)).isLessThanOrEqualTo(perimeter).isCloseTo(perimeter, within(1e-4 * perimeter));
    }

    static Stream<Arguments> steinerFormula() {
        return Stream.of(
                Arguments.of(UNIT_SQUARE, 0.1, 1.4314159265, 4.6283185307),
                Arguments.of(Outline.rectangle(0, 0.4, 0, 0.2), 0.05, 0.1478539816, 1.5141592654),
                Arguments.of(Outline.ofMetres(0, 0, 1, 0, 0.5, 0.8660254037844386), 0.2, 1.1586764080, 4.2566370614));
    }

    /**
     * Sums of convex polygons. Derived: areas add with twice the mixed area, perimeters add, and edges in the same
     * direction join. A triangle less itself is a hexagon of six times its area, the known ratio of a difference body.
     */
    @ParameterizedTest
    @MethodSource
    void sumsOfConvexPolygons(Outline p, Outline q, double area, double perimeter, int vertices) {
        Outline sum = sum(p, q);

        assertThat(sum.area()).isCloseTo(area, within(1e-9));
        assertThat(perimeter(sum)).isCloseTo(perimeter, within(1e-6));
        assertThat(sum.vertices()).hasSize(vertices);
        assertThat(Ring.of(p).plus(Ring.of(q)).size()).isEqualTo(vertices);
    }

    static Stream<Arguments> sumsOfConvexPolygons() {
        return Stream.of(
                Arguments.of(UNIT_SQUARE, UNIT_SQUARE, 4.0, 8.0, 4),
                Arguments.of(UNIT_SQUARE, TRIANGLE, 3.5, 7.414214, 5),
                Arguments.of(UNIT_SQUARE, DIAMOND, 7.0, 9.656854, 8),
                Arguments.of(TRIANGLE, TRIANGLE.turned(), 3.0, 6.828427, 6));
    }

    /** Upright prisms: hypotenuse of planar distance and height gap, each 0 where they overlap. Derived (Pythagoras). */
    @ParameterizedTest
    @MethodSource
    void distanceOfPrisms(double planar, double vertical, double distance) {
        Occupied a = box(0, 1, 0, 1, 0, 0.5);
        Occupied b = box(1 + planar, 2 + planar, 0, 1, 0.5 + vertical, 1.5 + vertical);

        assertThat(Gap.between(a, b).orElseThrow().metres()).isCloseTo(distance, within(1e-9));
    }

    static Stream<Arguments> distanceOfPrisms() {
        return Stream.of(
                Arguments.of(0.3, 0.4, 0.5),
                Arguments.of(-0.5, 0.4, 0.4),
                Arguments.of(0.3, -0.2, 0.3),
                Arguments.of(-0.5, -0.2, 0.0));
    }

    /** Sweep by a translation t: the area grows by |t| times the width across t. Derived (Cavalieri). */
    @ParameterizedTest
    @MethodSource
    void sweepAlongASegment(Outline convex, Point by, double area) {
        Occupied swept = Occupied.of(List.of(Prism.of(convex, LAYER))).along(Point.ORIGIN, by);

        assertThat(swept.prisms()).hasSize(1);
        assertThat(swept.prisms().get(0).outline().area()).isCloseTo(area, within(1e-9));
    }

    static Stream<Arguments> sweepAlongASegment() {
        return Stream.of(
                Arguments.of(UNIT_SQUARE, Point.ofMetres(1, 1), 3.0),
                Arguments.of(Outline.rectangle(0, 0.4, 0, 0.2), Point.ofMetres(0.3, 0), 0.14),
                Arguments.of(TRIANGLE, Point.ofMetres(2, 1), 3.5));
    }

    /** A point at height h under a sensor at H is thrown by the factor H / (H - h). Derived (similar triangles). */
    @ParameterizedTest
    @MethodSource
    void shadowOfAPoint(double x, double height, double thrown) {
        // A bar that ends in the point: its far edge is thrown farthest.
        Occupied bar = box(0.1, x, -0.01, 0.01, height / 2, height);

        double far = Shadow.onGround(bar, Point3.ofMetres(0, 0, 2)).orElseThrow().stream()
                .mapToLong(o -> o.xExtent().most())
                .max()
                .orElseThrow();

        assertThat(far / 1e6).isCloseTo(thrown, within(1e-6)).isGreaterThanOrEqualTo(thrown - 1e-9);
    }

    static Stream<Arguments> shadowOfAPoint() {
        return Stream.of(
                Arguments.of(0.5, 0.5, 0.6666666666),
                Arguments.of(1.0, 0.5, 1.3333333333),
                Arguments.of(0.3, 1.0, 0.6));
    }

    @Test
    @DisplayName("shadow of a prism: hull of its base and its thrown top (derived)")
    void shadowOfAPrism() {
        Point3 sensor = Point3.ofMetres(0, 0, 2);
        Occupied beside = box(0.5, 0.7, -0.1, 0.1, 0, 0.5);
        Occupied under = box(-0.1, 0.1, -0.1, 0.1, 0, 0.5);

        PlanArea shadow = PlanArea.of(Shadow.onGround(beside, sensor).orElseThrow());
        PlanArea below = PlanArea.of(Shadow.onGround(under, sensor).orElseThrow());

        // Rounded outward by at most 1.5 um along a boundary of 1.4 m.
        assertThat(shadow.squareMetres()).isBetween(0.110000, 0.110000 + 2.1e-6);
        assertThat(shadow.minus(PlanArea.of(beside)).squareMetres()).isCloseTo(0.070000, within(2.1e-6));
        assertThat(below.squareMetres()).isBetween(0.0711111111, 0.0711111111 + 2.1e-6);
    }

    @Test
    void aBodyAsHighAsTheSensorHasNoBoundedShadow() {
        assertThat(Shadow.onGround(box(0, 1, 0, 1, 0, 2), Point3.ofMetres(0, 0, 2)))
                .isEmpty();
    }

    @Test
    void whatLiesUnderTheGroundThrowsNoShadow() {
        assertThat(Shadow.onGround(box(0, 1, 0, 1, -0.2, 0), Point3.ofMetres(0, 0, 2))
                        .orElseThrow())
                .isEmpty();
    }

    @Test
    @DisplayName("least pitch of two boxes: their widths and the gap (derived)")
    void leastPitchOfBoxes() {
        Occupied head = box(-0.1, 0.1, -0.15, 0.15, 0, 0.3);

        ForbiddenOffsets offsets = ForbiddenOffsets.alongY(head, head, 30_000);

        assertThat(offsets.intervals()).containsExactly(new Interval(-330_000, 330_000));
        assertThat(offsets.leastPitch()).isEqualTo(330_000);
        assertThat(offsets.allows(330_000)).isTrue();
        assertThat(offsets.allows(329_999)).isFalse();
    }

    @Test
    @DisplayName("least pitch of corners apart in x and z: 3-4-12-13 box diagonal (derived)")
    void leastPitchAcrossCorners() {
        Occupied a = box(0, 0.1, 0, 0.1, 0, 0.1);
        // 30 mm apart in x, 40 mm in z; required 130 mm leaves 120 mm along y.
        Occupied b = box(0.13, 0.2, 0, 0.1, 0.14, 0.2);

        ForbiddenOffsets offsets = ForbiddenOffsets.alongY(a, b, 130_000);

        assertThat(offsets.leastPitch()).isEqualTo(100_000 + 120_000);
    }

    @Test
    @DisplayName("a notch leaves a second window below the least pitch (derived)")
    void notchLeavesAWindow() {
        // A fork open to the front: two tines 0.1 wide with 0.3 between them, and a peg 0.1 wide.
        Occupied fork = box(0, 0.2, -0.25, -0.15, 0, 0.1).and(box(0, 0.2, 0.15, 0.25, 0, 0.1));
        Occupied peg = box(0, 0.2, -0.05, 0.05, 0, 0.1);

        ForbiddenOffsets offsets = ForbiddenOffsets.alongY(fork, peg, 20_000);

        assertThat(offsets.intervals()).containsExactly(new Interval(-320_000, -80_000), new Interval(80_000, 320_000));
        assertThat(offsets.leastPitch()).isEqualTo(320_000);
        assertThat(offsets.allows(0)).isTrue();
    }

    @Test
    @DisplayName("occupied: fixed, with moving placed over the hull of an L-shaped region (derived)")
    void occupiedOverAnLShapedRegion() {
        Reach region = Reach.over(Outline.ofMetres(0, 0, 0.4, 0, 0.4, 0.1, 0.1, 0.1, 0.1, 0.4, 0, 0.4), LAYER);
        Body moving = Body.of(Prism.box(-0.01, 0.01, -0.01, 0.01, 0, 0.2));

        Occupied all = Occupied.of(Body.NONE, moving, Body.NONE, region);

        assertThat(all.prisms()).hasSize(1);
        Prism only = all.prisms().get(0);
        assertThat(only.height()).isEqualTo(Interval.ofMetres(0, 0.3));
        // The hull of the L is 0.16 less a corner of 0.3 x 0.3 / 2; a square of side s adds s (0.4 + 0.4) and s^2.
        assertThat(only.outline().area()).isCloseTo(0.115 + 0.02 * 0.8 + 0.0004, within(1e-9));
        assertThat(only.outline().contains(Point.ofMetres(0.2, 0.2))).isTrue();
    }

    private static Outline sum(Outline p, Outline q) {
        return Ring.of(p).plus(Ring.of(q)).outline();
    }

    private static double perimeter(Outline outline) {
        List<Point> ring = new ArrayList<>(outline.vertices());
        ring.add(ring.get(0));
        double sum = 0;
        for (int i = 0; i + 1 < ring.size(); i++) {
            Point e = ring.get(i + 1).minus(ring.get(i));
            sum += Math.hypot(e.xMetres(), e.yMetres());
        }
        return sum;
    }

    static Occupied box(double x0, double x1, double y0, double y1, double z0, double z1) {
        return Occupied.of(List.of(Prism.box(x0, x1, y0, y1, z0, z1)));
    }
}
