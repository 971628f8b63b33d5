package headgate.verifier.interlock;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.api.shape.Interval;
import headgate.api.shape.Point3;
import headgate.verifier.geometry.Box;
import headgate.verifier.geometry.Gap;
import headgate.verifier.geometry.Occupied;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * No zone of an interlock can be left out: without it, the tool points could take a place, or two places together, that
 * brings material too near, or as near as an outer bound of the gap, and that nothing else closes. On random pairs of arms.
 */
class FewestZonesTest {

    private static final double GAP = 0.040;

    /** What {@link Occupied#grown} holds lies within so much of the volume, micrometres. */
    private static final long OUTER = (long) (1.43 * GAP * 1e6) + 3;

    private static final int TRIES = 4_000;

    @ParameterizedTest
    @ValueSource(longs = {0, 60, 120, 180, 240, 300, 360, 420, 480, 540})
    void withoutAnyOneZoneSomethingTooNearWouldBeAllowed(long first) {
        int zones = 0;
        for (long seed = first; seed < first + 60; seed++) {
            RandomPair pair = RandomPair.of(new SplittableRandom(CoincidenceTally.SEED + seed));
            Optional<Interlock> made =
                    InterlockMaker.of(pair.right().atWork(), pair.left().atWork(), GAP);
            if (made.isPresent()) {
                zones += new Look(pair, made.get(), seed).all();
            }
        }
        // A floor: the seeds make something to look at.
        assertThat(zones).isGreaterThan(3);
    }

    /** One interlock, with the material that it is about. */
    private static final class Look {

        private final Interlock interlock;
        private final ArmMaterial a;
        private final ArmMaterial b;
        private final SplittableRandom random;
        private final String name;

        Look(RandomPair pair, Interlock interlock, long seed) {
            this.interlock = interlock;
            this.a = ArmMaterial.of(pair.right().atWork());
            this.b = ArmMaterial.of(pair.left().atWork());
            this.random = new SplittableRandom(seed);
            this.name = "pair " + seed;
        }

        int all() {
            places(interlock.firstNever(), List.of(), b.resting().minus(a.moving()), a.reach(), "firstNever");
            places(interlock.secondNever(), List.of(), a.resting().minus(b.moving()), b.reach(), "secondNever");
            places(
                    interlock.firstWhileSecondActs(),
                    interlock.firstNever(),
                    b.fixed().minus(a.moving()),
                    a.reach(),
                    "firstWhileSecondActs");
            places(
                    interlock.secondWhileFirstActs(),
                    interlock.secondNever(),
                    a.fixed().minus(b.moving()),
                    b.reach(),
                    "secondWhileFirstActs");
            places(
                    interlock.offsets(),
                    List.of(),
                    a.moving().minus(b.moving()),
                    b.reach().minus(a.reach()),
                    "offsets");
            return interlock.zones();
        }

        private void places(List<Zone> zones, List<Zone> closed, Occupied set, Occupied reach, String what) {
            for (Zone zone : zones) {
                List<Zone> others = new ArrayList<>(closed);
                zones.stream().filter(z -> !z.equals(zone)).forEach(others::add);
                assertThat(someOnlyIn(zone, others, set, reach))
                        .as(name + ", " + what + ", " + zone + " without " + others)
                        .isTrue();
            }
        }

        private boolean someOnlyIn(Zone zone, List<Zone> others, Occupied set, Occupied reach) {
            List<Rest> left = Rest.of(zone, others);
            for (int i = 0; i < TRIES && !left.isEmpty(); i++) {
                Box box = left.get(random.nextInt(left.size())).box();
                Point3 at = new Point3(in(box.x()), in(box.y()), in(box.z()));
                ToolWay standing = new ToolWay(at, at);
                Occupied place = Occupied.at(at);
                if (standing.meets(zone)
                        && others.stream().noneMatch(standing::meets)
                        && isZero(Gap.between(place, reach))
                        && !Gap.between(place, set).orElseThrow().isAtLeast(OUTER)) {
                    return true;
                }
            }
            return false;
        }

        private static boolean isZero(Optional<Gap> gap) {
            return !gap.orElseThrow().isAtLeast(1);
        }

        private long in(Interval side) {
            return random.nextLong(side.least(), side.most() + 1);
        }
    }
}
