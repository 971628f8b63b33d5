package headgate.verifier.interlock;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.api.shape.Interval;
import headgate.verifier.geometry.Box;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RestTest {

    private static final long T = Zone.TENTH;

    @Test
    void nothingIsLeftOfWhatAnotherHolds() {
        assertThat(Rest.of(zone(0, 4, 0, 4, 0, 4), List.of(zone(0, 4, 0, 4, 0, 4))))
                .isEmpty();
        assertThat(Rest.of(zone(1, 3, 1, 3, 1, 3), List.of(zone(0, 4, 0, 4, 0, 4))))
                .isEmpty();
    }

    /** Zones are open: where two only touch, the face between them is in neither. */
    @Test
    void theFaceBetweenTwoThatTouchIsLeft() {
        List<Rest> left = Rest.of(zone(0, 4, 0, 4, 0, 4), List.of(zone(0, 2, 0, 4, 0, 4), zone(2, 4, 0, 4, 0, 4)));

        assertThat(left)
                .extracting(Rest::box)
                .containsExactly(new Box(Interval.at(2 * T), new Interval(0, 4 * T), new Interval(0, 4 * T)));
        assertThat(Rest.of(zone(0, 4, 0, 4, 0, 4), List.of(zone(0, 3, 0, 4, 0, 4), zone(2, 4, 0, 4, 0, 4))))
                .isEmpty();
    }

    /** Every place of a lattice that is twice as fine as the faces: left exactly if it is in the zone and in no other. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void isExactOnEveryPlace(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 50; i++) {
            Zone zone = random(random);
            List<Zone> others = new ArrayList<>();
            for (int k = random.nextInt(6); k > 0; k--) {
                others.add(random(random));
            }
            List<Box> left = Rest.of(zone, others).stream().map(Rest::box).toList();
            for (long x = 0; x <= 12; x++) {
                for (long y = 0; y <= 12; y++) {
                    for (long z = 0; z <= 12; z++) {
                        long[] at = {x * T / 2, y * T / 2, z * T / 2};
                        boolean only = inside(zone, at) && others.stream().noneMatch(o -> inside(o, at));
                        if (only) {
                            assertThat(left).anyMatch(b -> holds(b, at));
                        }
                    }
                }
            }
            double volume = left.stream()
                    .mapToDouble(b -> (double) b.x().length() * b.y().length() * b.z().length())
                    .sum();
            assertThat(volume).isEqualTo(cells(zone, others) * (double) (T * T * T));
        }
    }

    /** How many unit cells are in the zone and in no other. */
    private static long cells(Zone zone, List<Zone> others) {
        long count = 0;
        for (long x = 0; x < 6; x++) {
            for (long y = 0; y < 6; y++) {
                for (long z = 0; z < 6; z++) {
                    long[] middle = {x * T + T / 2, y * T + T / 2, z * T + T / 2};
                    count += inside(zone, middle) && others.stream().noneMatch(o -> inside(o, middle)) ? 1 : 0;
                }
            }
        }
        return count;
    }

    private static boolean inside(Zone zone, long[] at) {
        return inside(zone.x(), at[0]) && inside(zone.y(), at[1]) && inside(zone.z(), at[2]);
    }

    private static boolean inside(Interval side, long at) {
        return side.least() < at && at < side.most();
    }

    private static boolean holds(Box box, long[] at) {
        return box.x().contains(at[0]) && box.y().contains(at[1]) && box.z().contains(at[2]);
    }

    private static Zone random(SplittableRandom random) {
        long[] side = new long[6];
        for (int i = 0; i < 6; i += 2) {
            side[i] = random.nextLong(0, 6);
            side[i + 1] = random.nextLong(side[i] + 1, 7);
        }
        return zone(side[0], side[1], side[2], side[3], side[4], side[5]);
    }

    /** In tenths of a millimetre. */
    private static Zone zone(long x0, long x1, long y0, long y1, long z0, long z1) {
        return new Zone(new Interval(x0 * T, x1 * T), new Interval(y0 * T, y1 * T), new Interval(z0 * T, z1 * T));
    }
}
