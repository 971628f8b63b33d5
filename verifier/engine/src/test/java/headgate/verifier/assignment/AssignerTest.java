package headgate.verifier.assignment;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.api.shape.Interval;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class AssignerTest {

    private static final Pitch APART_BY_TEN = (i, si, j, sj) -> Optional.of(new Interval(-10, 10));

    @Test
    void sharesTheSlackWhereNeighboursPressEachOther() {
        // Two lanes of no width 8 apart, each covered up to 4 off; the pitch is 10. Spread by x each: the pitch's slack
        // is
        // 8 + 2 x - 10, the cover's 4 - x. They are equal at x = 2: 2 each.
        List<Slider> sliders = List.of(
                slider("A", 0, work(0, 1, rail(-20, 20), -4, 4)), slider("B", 0, work(1, 1, rail(-20, 20), 4, 12)));

        Assignment best =
                Assigner.best(new Problem(sliders, List.of(1, 1), APART_BY_TEN)).orElseThrow();

        assertThat(best.margin()).isEqualTo(2);
        assertThat(best.setPoints()).containsExactly(-2L, 10L);
        assertThat(best.isProvenBest()).isTrue();
    }

    @Test
    void setsSlidersOverTheirLanesWhereThereIsRoom() {
        List<Slider> sliders = List.of(
                slider("A", 0, work(0, 1, rail(-50, 50), -4, 4)), slider("B", 0, work(1, 1, rail(-50, 50), 26, 34)));

        Assignment best =
                Assigner.best(new Problem(sliders, List.of(1, 1), APART_BY_TEN)).orElseThrow();

        assertThat(best.setPoints()).containsExactly(0L, 30L);
        assertThat(best.margin()).isEqualTo(20);
    }

    @Test
    void saysHowFarThePitchIsBrokenIfNoneKeepsIt() {
        // Cover leaves 1 to either side: 8 + 2 = 10 apart at most, where 15 are asked.
        List<Slider> sliders = List.of(
                slider("A", 0, work(0, 1, rail(-20, 20), -1, 1)), slider("B", 0, work(1, 1, rail(-20, 20), 7, 9)));

        Assignment best = Assigner.best(
                        new Problem(sliders, List.of(1, 1), (i, si, j, sj) -> Optional.of(new Interval(-15, 15))))
                .orElseThrow();

        assertThat(best.margin()).isEqualTo(-5);
        assertThat(best.keepsPitches()).isFalse();
        assertThat(best.setPoints()).containsExactly(-1L, 9L);
    }

    @Test
    void servesTwoLanesWithOneSliderOnlyIfItMust() {
        Choice one = work(0, 1, rail(-20, 20), -8, 8);
        Choice both = work(0, 2, rail(-20, 20), 3, 5);
        Choice other = work(1, 1, rail(-20, 20), 4, 12);
        Slider a = slider("A", 0, both, one);

        Assignment alone = Assigner.best(
                        new Problem(List.of(slider("A", 0, one, other, both)), List.of(1, 1), APART_BY_TEN))
                .orElseThrow();
        Assignment shared = Assigner.best(new Problem(
                        List.of(a, slider("B", 1, other, wait(rail(-20, 20)))),
                        List.of(1, 1),
                        (i, si, j, sj) -> Optional.empty()))
                .orElseThrow();

        assertThat(alone.choices()).containsExactly(2);
        assertThat(alone.mostLanes()).isEqualTo(2);
        assertThat(shared.choices()).containsExactly(1, 0);
        assertThat(shared.mostLanes()).isEqualTo(1);
    }

    @Test
    void findsNoneIfALaneIsOutOfReach() {
        assertThat(Assigner.best(new Problem(
                        List.of(slider("A", 0, work(0, 1, rail(-20, 20), -4, 4))), List.of(1, 1), APART_BY_TEN)))
                .isEmpty();
    }

    @Test
    void saysWhatNoAssignmentExceedsIfItGivesUp() {
        List<Slider> sliders = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            List<Choice> choices = new ArrayList<>();
            for (int lane = 0; lane < 6; lane++) {
                choices.add(work(lane, 1, rail(-500, 500), 40 * lane - 15, 40 * lane + 15));
            }
            sliders.add(slider("S" + i, i, choices.toArray(Choice[]::new)));
        }
        Problem problem =
                new Problem(sliders, List.of(1, 1, 1, 1, 1, 1), (i, si, j, sj) -> Optional.of(new Interval(-39, 39)));
        Assignment exact = Assigner.best(problem).orElseThrow();

        Assignment hasty = Assigner.best(problem, 40).orElseThrow();

        assertThat(exact.isProvenBest()).isTrue();
        assertThat(hasty.margin()).isLessThanOrEqualTo(exact.margin());
        assertThat(hasty.mostMargin()).isGreaterThanOrEqualTo(exact.margin());
        assertThat(hasty.isProvenBest()).isFalse();
    }

    /** 20 times 100 cases against trying every choice at every whole set-point. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
    void equalsBruteForce(int seed) {
        Random random = new Random(seed);
        int kept = 0;
        int broken = 0;
        int none = 0;
        for (int round = 0; round < 100; round++) {
            Problem problem = randomProblem(random);

            Optional<Assignment> found = Assigner.best(problem);

            BruteForce.Best best = BruteForce.best(problem);
            assertThat(found.isPresent()).isEqualTo(best.exists());
            if (found.isEmpty()) {
                none++;
                continue;
            }
            Assignment a = found.get();
            assertThat(a.keepsPitches()).isEqualTo(best.margin() >= 0);
            assertThat(a.mostLanes()).isEqualTo(best.lanes());
            assertThat(a.margin()).isEqualTo(best.margin());
            assertThat(a.isProvenBest()).isTrue();
            assertThat(BruteForce.margin(problem, a.choices(), a.setPoints())).hasValue(best.margin());
            if (a.keepsPitches()) {
                kept++;
            } else {
                broken++;
            }
        }
        // The cases are of all three kinds.
        assertThat(List.of(kept, broken, none)).allMatch(count -> count >= 3, "at least 3 of 100");
    }

    private static Problem randomProblem(Random random) {
        int n = 2 + random.nextInt(2);
        int lanes = 1 + random.nextInt(3);
        List<Slider> sliders = new ArrayList<>();
        boolean linked = random.nextInt(4) == 0;
        for (int i = 0; i < n; i++) {
            List<Choice> choices = new ArrayList<>();
            int from = random.nextInt(3) + 4 * i;
            List<Interval> rail = new ArrayList<>(List.of(new Interval(from, from + 7)));
            if (random.nextInt(4) == 0) {
                rail = new ArrayList<>(List.of(new Interval(from, from + 1), new Interval(from + 4, from + 6)));
            }
            for (int c = 2 + random.nextInt(3); c > 0; c--) {
                int first = random.nextInt(lanes);
                int run = 1 + random.nextInt(Math.min(2, lanes - first));
                int middle = 5 * first + 3 + random.nextInt(3);
                int half = random.nextInt(3);
                choices.add(new Choice(
                        random.nextInt(2),
                        first,
                        run,
                        rail,
                        Optional.of(new Interval(middle - half, middle + half)),
                        middle,
                        random.nextBoolean() ? OptionalInt.of(random.nextInt(2)) : OptionalInt.empty()));
            }
            if (random.nextInt(5) != 0) {
                choices.add(new Choice(2, 0, 0, rail, Optional.empty(), from + 2));
            }
            sliders.add(new Slider(
                    "S" + i,
                    random.nextInt(2),
                    linked && i < 2 ? Optional.of(new Slider.Link(0, 4L * i)) : Optional.empty(),
                    choices));
        }
        List<Integer> needs = new ArrayList<>();
        for (int lane = 0; lane < lanes; lane++) {
            needs.add(random.nextInt(9) == 0 ? 2 : 1);
        }
        long[] lower = random.longs(64, -10, 1).toArray();
        long[] width = random.longs(64, 3, 18).toArray();
        return new Problem(
                sliders,
                needs,
                (i, si, j, sj) -> {
                    int at = (i * 31 + si * 17 + j * 7 + sj * 3) % 64;
                    return at % 3 == 0 ? Optional.empty() : Optional.of(new Interval(lower[at], lower[at] + width[at]));
                },
                List.of(random.nextInt(3), 1 + random.nextInt(2)));
    }

    private static Slider slider(String id, int beam, Choice... choices) {
        return new Slider(id, beam, Optional.empty(), List.of(choices));
    }

    private static Choice work(int lane, int lanes, List<Interval> rail, long least, long most) {
        return new Choice(0, lane, lanes, rail, Optional.of(new Interval(least, most)), (least + most) / 2);
    }

    private static Choice wait(List<Interval> rail) {
        return new Choice(1, 0, 0, rail, Optional.empty(), 0);
    }

    private static List<Interval> rail(long least, long most) {
        return List.of(new Interval(least, most));
    }
}
