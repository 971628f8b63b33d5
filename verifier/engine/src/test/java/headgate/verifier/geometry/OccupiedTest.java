package headgate.verifier.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import headgate.api.shape.Interval;
import headgate.api.shape.Outline;
import headgate.api.shape.Point3;
import headgate.api.shape.Prism;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class OccupiedTest {

    private static final Occupied POST = box(0, 0.1, 0, 0.1, 0, 0.5);

    @Test
    void touchingPrismsAreOnePartAndAHairApartAreTwo() {
        Occupied touching = POST.and(box(0.1, 0.3, 0, 0.1, 0, 0.1));
        Occupied apart = POST.and(box(0.100001, 0.3, 0, 0.1, 0, 0.1));
        Occupied bridged = apart.and(box(0.05, 0.15, 0.02, 0.04, 0.05, 0.06));

        assertThat(touching.connectedParts()).hasSize(1);
        assertThat(apart.connectedParts()).hasSize(2);
        assertThat(bridged.connectedParts()).hasSize(1);
        assertThat(bridged.connectedParts().get(0).prisms()).hasSize(3);
        assertThat(Occupied.NOTHING.connectedParts()).isEmpty();
    }

    @Test
    void whatOverlapsCountsOnceInTheVolume() {
        Occupied crossed = POST.and(box(-0.1, 0.2, 0, 0.1, 0.2, 0.3));

        // 0.1 x 0.1 x 0.5 and two ends of 0.1 x 0.1 x 0.1: derived.
        assertThat(crossed.cubicMetres()).isCloseTo(0.005 + 0.002, within(1e-12));
        assertThat(Occupied.NOTHING.cubicMetres()).isZero();
    }

    @Test
    void aHeightBandCutsPrismsExactly() {
        Occupied low = POST.and(box(1, 2, 0, 1, 0.3, 0.4)).within(Interval.ofMetres(0.1, 0.3));

        assertThat(low).isEqualTo(box(0, 0.1, 0, 0.1, 0.1, 0.3));
    }

    @Test
    void quarterTurnsAddUp() {
        Occupied bar = box(0, 0.3, -0.1, 0.05, 0, 0.1);

        assertThat(bar.quarterTurned(1)).isEqualTo(box(-0.05, 0.1, 0, 0.3, 0, 0.1));
        assertThat(bar.quarterTurned(2)).isEqualTo(bar.turned());
        assertThat(bar.quarterTurned(-1)).isEqualTo(bar.quarterTurned(3));
        assertThat(bar.quarterTurned(4)).isEqualTo(bar);
    }

    @Test
    void thePlanHullHoldsAllCorners() {
        Occupied two = POST.and(box(1, 1.1, 1, 1.1, 0, 0.1));

        Outline hull = two.planHull().orElseThrow();

        assertThat(hull).isEqualTo(Outline.ofMetres(0, 0, 0.1, 0, 1.1, 1, 1.1, 1.1, 1, 1.1, 0, 0.1));
        assertThat(Occupied.NOTHING.planHull()).isEmpty();
    }

    /** A displacement of b makes it meet a if and only if it lies in the set of differences. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void differencesAreTheDisplacementsAtWhichVolumesMeet(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int met = 0;
        for (int i = 0; i < 100; i++) {
            Occupied a = Occupied.of(RandomBody.of(random, false, 2).body());
            Occupied b = Occupied.of(RandomBody.of(random, false, 2).body());
            Occupied differences = a.minus(b);
            for (int k = 0; k < 10; k++) {
                Point3 by = somewhere(random);
                boolean meets = gap(a, b.shifted(by)) == 0;
                boolean holds = differences.prisms().stream()
                        .anyMatch(p ->
                                p.outline().contains(by.plan()) && p.height().contains(by.z()));

                assertThat(holds).as("seed %s, round %s", seed, i).isEqualTo(meets);
                met += meets ? 1 : 0;
            }
        }
        assertThat(met).isBetween(50, 950);
    }

    /** All within the gap is held, and what is held is within the bound that the method states. */
    @ParameterizedTest
    @ValueSource(longs = {4, 5, 6})
    void grownHoldsAllWithinTheGapAndLittleMore(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 60; i++) {
            Occupied a = Occupied.of(RandomBody.of(random, false, 2).body());
            Occupied b = Occupied.of(RandomBody.of(random, false, 1).body()).shifted(somewhere(random));
            long gap = random.nextLong(0, 100_000);
            long apart = gap(a, b);
            long left = gap(a.grown(gap), b);

            if (apart <= gap * 1000) {
                assertThat(left).isZero();
            }
            if (left == 0) {
                assertThat(apart / 1000.0).isLessThanOrEqualTo(1.43 * gap + 3);
            }
        }
        assertThatThrownBy(() -> POST.grown(-1)).hasMessageContaining("at least 0");
    }

    @Test
    void equalPrismsAreKeptOnce() {
        assertThat(POST.and(POST)).isEqualTo(POST);
        assertThat(POST.bounds().orElseThrow().squaredGapTo(POST.bounds().orElseThrow()))
                .isZero();
        assertThat(Occupied.NOTHING.bounds()).isEmpty();
    }

    private static long gap(Occupied a, Occupied b) {
        return Gap.between(a, b).orElseThrow().nanometres();
    }

    private static Point3 somewhere(SplittableRandom random) {
        return new Point3(
                random.nextLong(-250_000, 250_001),
                random.nextLong(-250_000, 250_001),
                random.nextLong(-200_000, 200_001));
    }

    private static Occupied box(double x0, double x1, double y0, double y1, double z0, double z1) {
        return Occupied.of(List.of(Prism.box(x0, x1, y0, y1, z0, z1)));
    }
}
