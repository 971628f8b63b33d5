package headgate.verifier.replay;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.api.shape.Interval;
import headgate.api.shape.Outline;
import headgate.api.shape.Point;
import headgate.runtime.stand.Plant;
import headgate.verifier.dispatch.Dispatch;
import headgate.verifier.dispatch.Jobs;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The replay and a second simulation in fixed steps agree on random cases, within what a step can change. */
class ReplayAgainstStepSimulationTest {

    private static final int CASES = 50;
    private static final double STEP = 0.0005;

    /** Where two choices lie nearer together than a step, a finer one tells them apart; this is the finest. */
    private static final double FINEST = STEP / 64;

    private static final double BAND_FRONT = 1.0;
    private static final double LATENCY = 0.1;
    private static final double FRAME = 0.05;

    /** How late a replay that is wrong on purpose knows of plants, s more. */
    private static final double LATE = 5;

    /** A reach of two rectangles side by side: 0.3 m long on the right, 0.1 m on the left. */
    private static final Outline REACH = reach(0.4);

    private static Outline reach(double far) {
        return Outline.of(List.of(
                Point.ofMetres(0.1, -0.1),
                Point.ofMetres(far, -0.1),
                Point.ofMetres(far, 0),
                Point.ofMetres(0.3, 0),
                Point.ofMetres(0.3, 0.1),
                Point.ofMetres(0.2, 0.1),
                Point.ofMetres(0.2, 0),
                Point.ofMetres(0.1, 0)));
    }

    /** Of what can be begun now, what is due first; otherwise what can be begun first. */
    private static final Dispatch SIMPLE = new Dispatch() {
        @Override
        public int next(Jobs jobs, double now) {
            int best = NONE;
            for (int i = 0; i < jobs.size(); i++) {
                if (jobs.ready(i) <= now && (best == NONE || jobs.dueBefore(i, best))) {
                    best = i;
                }
            }
            for (int i = 0; best == NONE && i < jobs.size(); i++) {
                boolean first = true;
                for (int k = 0; k < jobs.size(); k++) {
                    first &= jobs.ready(i) <= jobs.ready(k);
                }
                best = first ? i : NONE;
            }
            return best;
        }
    };

    /** A start is put off by up to a step, and delays add up over the actions that an arm does without a pause. */
    private static final int DELAYS = 16;

    /**
     * Every plant is treated in both or in neither, and begun at the same time within what steps can add up to. An arm may
     * become free within a step of when another plant can be begun; then the order may turn round, and what follows with it.
     * Such a case is stepped anew with finer steps, until they tell the two apart. A fault of either simulation stays.
     */
    @Test
    void agreesOnRandomCases() {
        long treated = 0;
        int refined = 0;
        for (int seed = 1; seed <= CASES; seed++) {
            Plot plot = Plot.of(seed);
            Map<Integer, Double> replayed = replayed(plot, REACH, LATENCY);
            double step = STEP;
            while (!agree(plot, replayed, step)) {
                step /= 4;
                assertThat(step).as("step that case %s is told apart by", seed).isGreaterThanOrEqualTo(FINEST);
            }
            treated += replayed.size();
            refined += step < STEP ? 1 : 0;
        }
        assertThat(treated).isEqualTo(2944);
        // No more than a few may need it, or the comparison would be with whatever step happens to agree.
        assertThat(refined).isLessThanOrEqualTo(4);
    }

    /** The comparison finds a reach that is 3 mm too long at its far end, and one that ends 3 mm too soon. */
    @ParameterizedTest
    @ValueSource(doubles = {0.003, -0.003})
    void findsAReachThatIsWrong(double longer) {
        Outline wrong = reach(0.4 + longer);
        for (int seed = 1; seed <= CASES; seed += 7) {
            Plot plot = Plot.of(seed);
            Map<Integer, Double> replayed = replayed(plot, wrong, LATENCY);
            assertThat(agree(plot, replayed, STEP)).as("case %s", seed).isFalse();
            assertThat(agree(plot, replayed, STEP / 4))
                    .as("case %s, finer", seed)
                    .isFalse();
        }
    }

    /** The comparison finds that plants move a hundredth too slowly. */
    @Test
    void findsASpeedThatIsWrong() {
        for (int seed = 1; seed <= CASES; seed += 7) {
            Plot plot = Plot.of(seed);
            Map<Integer, Double> replayed = replayed(new Plot(plot.speed() - 0.001, plot.weeds()), REACH, LATENCY);
            assertThat(agree(plot, replayed, STEP)).as("case %s", seed).isFalse();
            assertThat(agree(plot, replayed, STEP / 4))
                    .as("case %s, finer", seed)
                    .isFalse();
        }
    }

    /** The comparison finds that plants are known too late: after some of them have come into reach. */
    @Test
    void findsALatencyThatIsWrong() {
        for (int seed = 1; seed <= CASES; seed += 7) {
            Plot plot = Plot.of(seed);
            Map<Integer, Double> replayed = replayed(plot, REACH, LATENCY + LATE);
            assertThat(agree(plot, replayed, STEP)).as("case %s", seed).isFalse();
        }
    }

    private static boolean agree(Plot plot, Map<Integer, Double> replayed, double step) {
        Map<Integer, Double> stepped = stepped(plot, step);
        return stepped.keySet().equals(replayed.keySet())
                && replayed.entrySet().stream()
                        .allMatch(begun -> Math.abs(begun.getValue()
                                        - java.util.Objects.requireNonNull(stepped.get(begun.getKey())))
                                <= DELAYS * step);
    }

    /** A random case: a speed, m/s, and plants. */
    private record Plot(double speed, List<StepSimulation.Weed> weeds) {

        static Plot of(int seed) {
            Random random = new Random(seed);
            double speed = (100 + random.nextInt(150)) / 1000.0;
            return new Plot(speed, ReplayAgainstStepSimulationTest.weeds(random, 10 + random.nextInt(20)));
        }
    }

    private static List<StepSimulation.Weed> weeds(Random random, int perMetre) {
        List<StepSimulation.Weed> weeds = new ArrayList<>();
        for (int i = 0; i < 4 * perMetre; i++) {
            // Whole micrometres, as a stand has them; across travel whole millimetres, so that the task's lattice keeps
            // them.
            double x = Math.round((2 + 4 * random.nextDouble()) * 1e6) / 1e6;
            double y = (random.nextInt(250) - 125) / 1000.0 + 0.0005;
            int approach = 1 + random.nextInt(3);
            int inGround = 1 + random.nextInt(4);
            int back = 2 + 2 * random.nextInt(3);
            weeds.add(new StepSimulation.Weed(
                    x, y, stem(approach, inGround, back) / 2, approach / 10.0, inGround / 10.0, back / 10.0));
        }
        weeds.sort(Comparator.comparingDouble(StepSimulation.Weed::x));
        return weeds;
    }

    private static final List<StepSimulation.Gripping> ARMS = List.of(
            new StepSimulation.Gripping(0, -0.05),
            new StepSimulation.Gripping(0, 0.05),
            new StepSimulation.Gripping(-1, 0));

    private static Map<Integer, Double> stepped(Plot plot, double step) {
        StepSimulation simulation = new StepSimulation(plot.speed(), ARMS, plot.weeds(), BAND_FRONT, LATENCY, FRAME);
        return simulation.run(0, 9 / plot.speed(), step);
    }

    /** A plant's times stand in its stem, as tenths of seconds in its decimals. */
    private static Map<Integer, Double> replayed(Plot plot, Outline reach, double latency) {
        List<StepSimulation.Weed> weeds = plot.weeds();
        TestHead head = new TestHead(
                reach,
                t -> tenths(t.stemDiameter(), 0),
                t -> tenths(t.stemDiameter(), 1),
                t -> tenths(t.stemDiameter(), 2),
                0.0005);
        SensorBand band = new SensorBand(
                Interval.ofMetres(BAND_FRONT - 0.5, BAND_FRONT), Interval.ofMetres(-2, 2), latency, FRAME);
        List<ReplayArm> arms = new ArrayList<>();
        for (StepSimulation.Gripping arm : ARMS) {
            ReplayArm base = TestHead.arm("arm " + arms.size(), Math.round(arm.mountY() * 1e6));
            arms.add(new ReplayArm(
                    base.id(),
                    0,
                    base.facing(),
                    Math.round(arm.mountX() * 1e6),
                    base.setPoint(),
                    base.shift(),
                    base.motion(),
                    base.height(),
                    List.of(band)));
        }
        ReplaySetting setting = head.setting(plot.speed(), 2, arms.toArray(new ReplayArm[0]));
        Map<Plant.Position, Integer> numbers = new HashMap<>();
        List<Plant> plants = new ArrayList<>();
        for (int i = 0; i < weeds.size(); i++) {
            Plant plant = TestHead.weed(
                    weeds.get(i).x(), weeds.get(i).y(), 2 * weeds.get(i).radius());
            plants.add(plant);
            numbers.put(plant.position(), i);
        }
        Map<Integer, Double> begun = new HashMap<>();
        AnswerBook book = new AnswerBook(setting.tools(), List.of(head.answers()), 0, Long.MAX_VALUE);
        Replay.Options options = new Replay.Options(
                () -> SIMPLE,
                done -> begun.put(
                        java.util.Objects.requireNonNull(numbers.get(new Plant.Position(done.plantX(), done.plantY()))),
                        done.start()),
                true,
                16);
        Replay replay = new Replay(setting, PlantSource.of(plants), book, options);
        assertThat(ReplayRun.run(List.of(replay), book, 1)).isTrue();
        ReplayOutcome outcome = replay.outcome().orElseThrow();
        assertThat(outcome.reached()).isEqualTo(begun.size());
        assertThat(outcome.mostTreatable().orElseThrow()).isGreaterThanOrEqualTo(outcome.reached());
        return begun;
    }

    /** Stems lie on a lattice of half a millimetre; a stem holds three times in tenths of a second. */
    private static double stem(long approach, long inGround, long back) {
        return (approach + 10 * inGround + 40 * back) / 1000.0;
    }

    private static double tenths(double stem, int which) {
        long back = (long) Math.floor(stem / 0.04 + 1e-6) / 2 * 2;
        double rest = stem - back * 0.04;
        long code = Math.round(rest * 1000);
        return switch (which) {
            case 0 -> code % 10 / 10.0;
            case 1 -> Math.floorDiv(code, 10L) / 10.0;
            default -> back / 10.0;
        };
    }
}
