package headgate.verifier.setup;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.api.shape.Body;
import headgate.api.shape.Interval;
import headgate.api.shape.Point3;
import headgate.api.shape.Prism;
import headgate.runtime.carriage.Arm;
import headgate.verifier.check.Cases;
import headgate.verifier.geometry.Box;
import headgate.verifier.geometry.Gap;
import headgate.verifier.geometry.Occupied;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Hand arithmetic: a mount that swings from x = 0 at 400 mm to x = 100 mm at 600 mm, and on to x = 100 mm at 900 mm. */
class LiftSweepTest {

    private static final Occupied CUBE = Occupied.of(List.of(Prism.box(-0.01, 0.01, -0.01, 0.01, -0.01, 0.01)));

    private static final Arm SWINGING = swinging(List.of(
            new Arm.LiftPoint(400_000, 0), new Arm.LiftPoint(600_000, 100_000), new Arm.LiftPoint(900_000, 100_000)));

    @Test
    void aStraightLiftIsSweptExactly() {
        Arm straight = Cases.arm("a1", "front", 0);

        assertThat(LiftSweep.over(straight, CUBE, Interval.ofMetres(0.4, 0.9)))
                .isEqualTo(CUBE.overLift(Interval.ofMetres(0.4, 0.9)));
    }

    @Test
    void aSwingingLiftIsWhereItsPathSays() {
        assertThat(bounds(0.4, 0.4)).isEqualTo(box(-0.01, 0.01, 0.39, 0.41));
        assertThat(bounds(0.5, 0.5)).isEqualTo(box(0.04, 0.06, 0.49, 0.51));
        assertThat(bounds(0.4, 0.9)).isEqualTo(box(-0.01, 0.11, 0.39, 0.91));
        assertThat(bounds(0.7, 0.8)).isEqualTo(box(0.09, 0.11, 0.69, 0.81));
    }

    @Test
    void itsPathGoesOnAsItEnds() {
        // 10 mm below its lowest point, half of that back.
        assertThat(bounds(0.39, 0.39)).isEqualTo(box(-0.015, 0.005, 0.38, 0.40));
        assertThat(bounds(0.95, 0.95)).isEqualTo(box(0.09, 0.11, 0.94, 0.96));
    }

    @ParameterizedTest
    @ValueSource(longs = {400_000, 412_345, 499_999, 555_555, 600_000, 601_000, 899_999})
    void theSweepHoldsEveryPlaceOnThePath(long height) {
        Occupied sweep = LiftSweep.over(SWINGING, CUBE, Interval.ofMetres(0.4, 0.9));
        long forward = Math.min(100_000, (height - 400_000) / 2);

        // The middle of the cube and its corners, as far as the sweep's prisms tell.
        for (long dx : new long[] {-10_000, 0, 10_000}) {
            for (long dz : new long[] {-10_000, 0, 10_000}) {
                assertThat(holds(sweep, forward + dx, height + dz)).isTrue();
            }
        }
    }

    @Test
    void itHoldsLittleMoreThanThePath() {
        Occupied sweep = LiftSweep.over(SWINGING, CUBE, Interval.ofMetres(0.4, 0.9));

        // At 500 mm the cube fills x from 40 to 60 mm; cubes 10 mm lower and higher 5 mm more to either side, a step of
        // the
        // sweep 5 mm at most besides.
        assertThat(holds(sweep, 35_000, 500_000)).isTrue();
        assertThat(holds(sweep, 29_999, 500_000)).isFalse();
        assertThat(holds(sweep, 70_001, 500_000)).isFalse();
    }

    private static boolean holds(Occupied sweep, long x, long z) {
        Occupied speck = Occupied.at(new Point3(x, 0, z));
        return Gap.between(sweep, speck).map(Gap::nanometres).equals(Optional.of(0L));
    }

    private static Box bounds(double low, double high) {
        return LiftSweep.over(SWINGING, CUBE, Interval.ofMetres(low, high))
                .bounds()
                .orElseThrow();
    }

    private static Box box(double x0, double x1, double z0, double z1) {
        return new Box(Interval.ofMetres(x0, x1), Interval.ofMetres(-0.01, 0.01), Interval.ofMetres(z0, z1));
    }

    private static Arm swinging(List<Arm.LiftPoint> path) {
        Arm a = Cases.arm("a1", "front", 0);
        return new Arm(
                a.id(),
                a.beam(),
                a.shift(),
                a.lift(),
                a.shiftMotion(),
                a.liftMotion(),
                a.tolerance(),
                a.payload(),
                a.plate(),
                a.connectors(),
                a.supply(),
                a.body(),
                Body.NONE,
                path,
                Optional.empty(),
                Arm.Direction.DOWN);
    }
}
