package headgate.verifier.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import headgate.api.shape.Outline;
import headgate.api.shape.Point3;
import headgate.api.shape.Prism;
import java.util.List;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is swept in a turn, against points that are turned one by one. */
class SwingTest {

    /** A bar from 300 to 500 mm in front, 40 mm wide and 100 mm high. */
    private static final Occupied BAR = Occupied.of(List.of(Prism.box(0.3, 0.5, -0.02, 0.02, 0.0, 0.1)));

    @Test
    void aFullTurnLeavesTheVolumeAsItIs() {
        assertThat(Swing.aboutZ(BAR, 0).prisms()).isEqualTo(BAR.prisms());
        assertThat(Swing.aboutX(BAR, 4).prisms()).isEqualTo(BAR.prisms());
        assertThat(Swing.aboutY(BAR, -4).prisms()).isEqualTo(BAR.prisms());
    }

    @ParameterizedTest
    @CsvSource({"1, 0, 500", "3, -500, 0", "2, -500, 500"})
    void aQuarterSweepsItsOwnSideAndHalfATurnBoth(int quarters, long right, long left) {
        Box box = Swing.aboutZ(BAR, quarters).bounds().orElseThrow();

        // The farthest corner is hypot(500, 20) = 500.4 mm away; the bar is 20 mm wide to either side of the middle,
        // and the steps
        // reach 0.22 % past it.
        assertThat(box.y().least() / 1000.0).isBetween(right - 21.6, right == 0 ? -20.0 : right - 0.3);
        assertThat(box.y().most() / 1000.0).isBetween(left == 0 ? 20.0 : left + 0.3, left + 21.6);
        assertThat(box.z()).isEqualTo(BAR.bounds().orElseThrow().z());
    }

    @Test
    void theInsideOfARingStaysFree() {
        Occupied swept = Swing.aboutZ(BAR, 2);

        // Its inner corners are hypot(300, 20) = 300.67 mm away and 7.63 degrees apart. In a step of 7.5 degrees
        // the hull closes what a chord over both cuts off: 300.67 cos(7.565 degrees) = 298.05 mm stay free.
        Occupied middle = Occupied.at(new Point3(0, 0, 50_000));
        assertThat(Gap.between(middle, swept).orElseThrow().metres()).isBetween(0.29803, 0.29806);
    }

    @Test
    void aSmallAngleSweepsToEitherSideAndNoFurther() {
        assertThat(Swing.eitherWayAboutZ(BAR, 0).prisms()).isEqualTo(BAR.prisms());
        Box box = Swing.eitherWayAboutZ(BAR, Math.toRadians(30)).bounds().orElseThrow();

        // The outer corner, 20 mm beside the middle, ends 500 sin 30 + 20 cos 30 = 267.3 mm to the side.
        assertThat(box.y().most() / 1000.0).isBetween(267.3, 268.0);
        assertThat(box.y().least() / 1000.0).isBetween(-268.0, -267.3);
        assertThatThrownBy(() -> Swing.eitherWayAboutZ(BAR, 1.6)).isInstanceOf(IllegalArgumentException.class);
    }

    /** Turns random convex prisms by random angles: every corner stays inside of what is swept, and is not far from its skin. */
    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14, 15, 16, 17, 18})
    void holdsEveryPointOnItsWay(long seed) {
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
        double x = random.nextDouble(-0.5, 0.5);
        double y = random.nextDouble(-0.5, 0.5);
        double z = random.nextDouble(-0.5, 0.5);
        Prism prism = random.nextBoolean()
                ? Prism.box(x, x + 0.2, y, y + 0.1, z, z + 0.3)
                : Prism.aroundCylinder(x, y, 0.1, z, z + 0.2);
        Occupied still = Occupied.of(List.of(prism));
        Box box = still.bounds().orElseThrow();
        int quarters = random.nextInt(1, 4);
        Occupied aboutZ = Swing.aboutZ(still, quarters);
        Occupied aboutX = Swing.aboutX(still, quarters);
        Occupied aboutY = Swing.aboutY(still, quarters);
        List<Point3> corners = prism.outline().vertices().stream()
                .map(p -> new Point3(
                        p.x(),
                        p.y(),
                        random.nextBoolean() ? box.z().least() : box.z().most()))
                .toList();
        for (int i = 0; i < 200; i++) {
            double share = random.nextDouble();
            double angle = Math.PI / 2 * (quarters == 1 ? share : quarters == 3 ? -share : 4 * share - 2);
            for (Point3 p : corners) {
                assertHolds(aboutZ, turned(p.x(), p.y(), angle, (a, b) -> new Point3(a, b, p.z())));
                assertHolds(aboutX, turned(p.y(), p.z(), angle, (a, b) -> new Point3(p.x(), a, b)));
                assertHolds(aboutY, turned(p.z(), p.x(), angle, (a, b) -> new Point3(b, p.y(), a)));
            }
        }
        double farthest = corners.stream()
                .mapToDouble(p -> Math.hypot(p.xMetres(), p.yMetres()) * 1e6)
                .max()
                .orElseThrow();
        long beyond = (long) Math.ceil(farthest * 1.0022) + 2;
        Box swept = aboutZ.bounds().orElseThrow();
        assertThat(Math.max(-swept.x().least(), swept.x().most())).isLessThanOrEqualTo(beyond);
        assertThat(Math.max(-swept.y().least(), swept.y().most())).isLessThanOrEqualTo(beyond);
    }

    private interface Place {
        Point3 at(long first, long second);
    }

    private static Point3 turned(long first, long second, double angle, Place place) {
        return place.at(
                Math.round(first * Math.cos(angle) - second * Math.sin(angle)),
                Math.round(first * Math.sin(angle) + second * Math.cos(angle)));
    }

    /** The point is rounded to the grid, so it may be off by less than a micrometre each way. */
    private static void assertHolds(Occupied swept, Point3 point) {
        assertThat(Gap.between(swept, Occupied.at(point)).orElseThrow().metres())
                .as("%s", point)
                .isLessThanOrEqualTo(1e-6);
    }

    /** An L that is not convex is turned piece by piece: its notch stays free. */
    @Test
    void aNotchStaysFree() {
        Outline angle = Outline.ofMetres(0.1, -0.4, 0.5, -0.4, 0.5, 0.4, 0.4, 0.4, 0.4, -0.3, 0.1, -0.3);
        Occupied swept = Swing.aboutZ(
                Occupied.of(List.of(Prism.of(angle, BAR.bounds().orElseThrow().z()))), 1);

        Occupied notch = Occupied.at(new Point3(0, 0, 50_000));
        assertThat(Gap.between(notch, swept).orElseThrow().metres()).isGreaterThan(0.28);
    }
}
