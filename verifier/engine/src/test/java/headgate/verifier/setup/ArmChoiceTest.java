package headgate.verifier.setup;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.api.shape.Body;
import headgate.api.shape.Interval;
import headgate.api.sheet.PlateDesignation;
import headgate.runtime.carriage.Arm;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ArmChoiceTest {

    @Test
    void staggersNeighboursOverTwoBeams() {
        // Rails of 600 mm about -675, -225, 225 and 675 mm: the obvious choice for rows at 45 cm.
        List<Arm> arms = List.of(
                arm("F1", "front", -675), arm("R1", "rear", -225), arm("F2", "front", 225), arm("R2", "rear", 675));
        List<Lane> lanes = lanes(-675, -225, 225, 675);

        assertThat(names(ArmChoice.choose(arms, lanes))).contains(Map.of(1, "F1", 2, "R1", 3, "F2", 4, "R2"));
    }

    @Test
    void leavesTheArmEmptyThatWouldStandNextToANeighbourOnItsBeam() {
        // Two lanes, three arms: F1 and R1 stand on two beams and have no neighbour at all.
        List<Arm> arms = List.of(arm("F1", "front", -300), arm("F2", "front", 0), arm("R1", "rear", 300));
        List<Lane> lanes = lanes(-225, 225);

        assertThat(names(ArmChoice.choose(arms, lanes))).contains(Map.of(1, "F1", 2, "R1"));
    }

    @Test
    void findsNoneIfALaneIsOutOfEveryRail() {
        assertThat(ArmChoice.choose(List.of(arm("F1", "front", 0)), lanes(301))).isEmpty();
        assertThat(ArmChoice.choose(List.of(arm("F1", "front", 0)), lanes(300))).isPresent();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16})
    void widestLeastPitchEqualsThatOfBruteForce(long seed) {
        Random random = new Random(seed);
        for (int round = 0; round < 25; round++) {
            int n = 1 + random.nextInt(7);
            List<Arm> arms = new ArrayList<>();
            for (int i = 0; i < n; i++) {
                arms.add(arm("A" + i, random.nextBoolean() ? "front" : "rear", random.nextInt(2000) - 1000));
            }
            long[] ys = random.longs(1 + random.nextInt(n), -1000, 1000)
                    .sorted()
                    .distinct()
                    .toArray();
            List<Lane> lanes = lanes(ys);

            Optional<Map<Integer, Arm>> chosen = ArmChoice.choose(arms, lanes);

            long best = bruteForce(sorted(arms), lanes, 0, 0, new HashMap<>());
            assertThat(chosen.map(c -> leastPitch(c, lanes)).orElse(-1L)).isEqualTo(best);
        }
    }

    /** The widest least pitch over all choices, or -1 if there is none. */
    private static long bruteForce(List<Arm> arms, List<Lane> lanes, int from, int lane, Map<String, Long> last) {
        if (lane == lanes.size()) {
            return Long.MAX_VALUE;
        }
        long best = -1;
        for (int i = from; i < arms.size(); i++) {
            Arm arm = arms.get(i);
            long y = lanes.get(lane).y();
            if (arm.shift().contains(y)) {
                Map<String, Long> next = new HashMap<>(last);
                Long before = next.put(arm.beam(), y);
                long rest = bruteForce(arms, lanes, i + 1, lane + 1, next);
                best = Math.max(best, Math.min(rest, before == null ? Long.MAX_VALUE : y - before));
            }
        }
        return best;
    }

    private static long leastPitch(Map<Integer, Arm> chosen, List<Lane> lanes) {
        long least = Long.MAX_VALUE;
        Map<String, Long> last = new HashMap<>();
        for (Lane lane : lanes) {
            Long before =
                    last.put(Objects.requireNonNull(chosen.get(lane.number())).beam(), lane.y());
            if (before != null) {
                least = Math.min(least, lane.y() - before);
            }
        }
        return least;
    }

    private static List<Arm> sorted(List<Arm> arms) {
        return arms.stream()
                .sorted(Comparator.comparingLong(
                                (Arm a) -> a.shift().least() + a.shift().most())
                        .thenComparing(Arm::id))
                .toList();
    }

    private static Optional<Map<Integer, String>> names(Optional<Map<Integer, Arm>> choice) {
        return choice.map(c -> {
            Map<Integer, String> names = new HashMap<>();
            c.forEach((lane, arm) -> names.put(lane, arm.id()));
            return names;
        });
    }

    private static List<Lane> lanes(long... millimetres) {
        List<Lane> lanes = new ArrayList<>();
        for (long y : millimetres) {
            lanes.add(new Lane(lanes.size() + 1, y * 1000));
        }
        return lanes;
    }

    private static Arm arm(String id, String beam, long middleMillimetres) {
        long middle = middleMillimetres * 1000;
        return new Arm(
                id,
                beam,
                new Interval(middle - 300_000, middle + 300_000),
                new Interval(400_000, 900_000),
                new Arm.AxisMotion(0.3, 0.5, 0.5, 0.002),
                new Arm.AxisMotion(0.3, 0.5, 0.5, 0.002),
                new Arm.Tolerance(0.001, 0.001, 0.001, 0.001, 50_000),
                new Arm.Payload(20, 50, 50, 50),
                PlateDesignation.of("9409-1-50-4-M6"),
                List.of(),
                new Arm.PowerSupply(200, 400),
                Body.NONE);
    }
}
