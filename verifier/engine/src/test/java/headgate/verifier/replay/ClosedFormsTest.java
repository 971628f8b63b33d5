package headgate.verifier.replay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import headgate.api.shape.Outline;
import headgate.api.vocabulary.PlantClass;
import headgate.runtime.stand.Plant;
import headgate.verifier.dispatch.Dispatch;
import headgate.verifier.dispatch.EarliestDue;
import headgate.verifier.dispatch.Jobs;
import headgate.verifier.evidence.Evidence;
import headgate.verifier.stand.GeneratedStand;
import headgate.verifier.stand.Ground;
import headgate.verifier.stand.RandomWeeds;
import headgate.verifier.stand.SizeLaw;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The replay against queues with known answers.
 *
 * <p>The configuration: weeds at random in line with the arms, one at a time, 0.1 m/s. An action is 1 ms to the weed, 1 ms in
 * the ground, and the rest the way back, so that it takes as long as its law says: the weed's stem carries the time. The
 * reach is as long as the patience asks for, d = chord / v - t_g. A weed is known when it could be started, so nobody looks
 * ahead, and arms take what came first. Several arms stand one behind the other: what one misses comes to the next, which
 * finds the same pattern later; so they lose what arms side by side would.
 *
 * <p>Each figure must lie inside the simulation's own confidence interval of 99.9 % over seeds, and the interval must be
 * narrow. The slice that every build runs tells a loss to three hundredths, the evidence to half a hundredth.
 */
class ClosedFormsTest {

    private static final String ID = "replay-closed-forms";

    /**
     * How much is simulated.
     *
     * @param seeds number of seeds
     * @param weeds mean number of weeds for each
     * @param student Student's t for 0.05 % on either side and seeds - 1 degrees of freedom: any table
     * @param widest half width of the interval that is let pass, as a share of 1 for a loss and of the wait for a wait
     */
    private record Size(int seeds, int weeds, double student, double widest) {}

    private static final Size SLICE = new Size(12, 2_500, 4.437, 0.035);

    private static final Size ALL = new Size(24, 20_000, 3.768, 0.006);

    private static final double SPEED = 0.1;

    /** Time to the weed, and time in the ground, s. */
    private static final double MOMENT = 0.001;

    /** Mean time of an action, s. */
    private static final double MEAN = 1.0;

    /** Seconds per metre of stem: stems are told apart by half millimetres, times therefore by 12 ms. */
    private static final double SECONDS_PER_STEM = 24;

    /** How long an action takes, as a share of all below a time. Each has the mean 1 s. */
    enum Law {
        FIXED {
            @Override
            double at(double share) {
                return MEAN;
            }
        },
        EXPONENTIAL {
            @Override
            double at(double share) {
                return -MEAN * StrictMath.log(1 - share);
            }
        },
        /** Half of them 0.5, half 1.5 times the mean: squared variation 0.25. */
        SHORT_OR_LONG {
            @Override
            double at(double share) {
                return MEAN * (share < 0.5 ? 0.5 : 1.5);
            }
        };

        abstract double at(double share);
    }

    /** Takes what came first. */
    private static final class FirstCome implements Dispatch {
        @Override
        public int next(Jobs jobs, double now) {
            int first = 0;
            for (int job = 1; job < jobs.size(); job++) {
                if (jobs.ready(job) < jobs.ready(first)) {
                    first = job;
                }
            }
            return first;
        }
    }

    /** Weeds in line, so many per second at the speed; the stem carries the time of the law. */
    private static Iterable<Plant> weeds(double perSecond, int number, Law law, long seed) {
        double width = 0.01;
        GeneratedStand even = new GeneratedStand(
                new Ground(number * SPEED / perSecond, -width / 2, width / 2),
                Optional.empty(),
                List.of(new GeneratedStand.Weeds(
                        new RandomWeeds(perSecond / SPEED / width),
                        List.of(),
                        List.of(PlantClass.BROADLEAF),
                        SizeLaw.even(0, 1),
                        SizeLaw.always(0.05),
                        SizeLaw.UNKNOWN)),
                seed);
        return () -> {
            Iterator<Plant> plants = even.iterator();
            return new Iterator<>() {
                @Override
                public boolean hasNext() {
                    return plants.hasNext();
                }

                @Override
                public Plant next() {
                    Plant plant = plants.next();
                    return new Plant(
                            new Plant.Position(plant.position().x(), 0),
                            plant.kind(),
                            law.at(plant.stem()) / SECONDS_PER_STEM,
                            plant.height(),
                            0);
                }
            };
        };
    }

    /** A run of one seed: what came of it, and how long each weed that was treated had waited. */
    private record Ran(ReplayOutcome outcome, double meanWait) {
        double lost() {
            return 1 - (double) outcome.reached() / outcome.targets();
        }
    }

    private static List<Ran> run(
            double perSecond, Size size, Law law, double patience, int arms, Supplier<Dispatch> dispatch) {
        double chord = SPEED * (patience + MOMENT);
        Outline reach = Outline.rectangle(0.0, chord, -0.05, 0.05);
        TestHead head = new TestHead(
                reach,
                task -> MOMENT,
                task -> MOMENT,
                task -> Math.max(0, task.stemDiameter() * SECONDS_PER_STEM - 2 * MOMENT),
                1e-5);
        ReplaySetting setting = head.setting(
                SPEED,
                chord + SPEED * MOMENT,
                IntStream.range(0, arms)
                        .mapToObj(i -> behind(TestHead.arm("a" + i, 0), -1_000_000L * i))
                        .toArray(ReplayArm[]::new));
        AnswerBook book = new AnswerBook(setting.tools(), List.of(head.answers()), 0, Long.MAX_VALUE);
        List<Replay> replays = new ArrayList<>();
        List<Waits> waits = new ArrayList<>();
        for (int seed = 0; seed < size.seeds(); seed++) {
            Waits own = new Waits(chord, size.weeds());
            waits.add(own);
            replays.add(new Replay(
                    setting,
                    PlantSource.of(weeds(perSecond, size.weeds(), law, 100 + seed)),
                    book,
                    new Replay.Options(dispatch, own, false, 256)));
        }
        assertThat(ReplayRun.run(replays, book, 2)).isTrue();
        return IntStream.range(0, size.seeds())
                .mapToObj(i -> new Ran(
                        replays.get(i).outcome().orElseThrow(), waits.get(i).mean()))
                .toList();
    }

    private static ReplayArm behind(ReplayArm arm, long mountX) {
        return new ReplayArm(
                arm.id(),
                arm.tool(),
                arm.facing(),
                mountX,
                arm.setPoint(),
                arm.shift(),
                arm.motion(),
                arm.height(),
                arm.bands());
    }

    /** Adds up how long each weed waited after it could have been started; the first fifth only fills the queue. */
    private static final class Waits implements ActionObserver {
        private final double chord;
        private final int number;
        private long counted;
        private long seen;
        private double sum;

        Waits(double chord, int number) {
            this.chord = chord;
            this.number = number;
        }

        @Override
        public void acted(Done action) {
            seen++;
            if (seen > number / 5) {
                counted++;
                sum += action.start() - ((action.plantX() * 1e-6 - chord) / SPEED - MOMENT);
            }
        }

        double mean() {
            return sum / counted;
        }
    }

    /** What is simulated, and what is known of it. */
    private record Row(Law law, double load, int arms, double patience, boolean waits, double expected) {

        static Row loss(Law law, double load, int arms, double patience, double expected) {
            return new Row(law, load, arms, patience, false, expected);
        }

        static Row meanWait(Law law, double load, double expected) {
            return new Row(law, load, 1, 60, true, expected);
        }

        Found found(Size size, Supplier<Dispatch> dispatch) {
            List<Ran> runs = run(load / MEAN, size, law, patience * MEAN, arms, dispatch);
            if (waits) {
                assertThat(runs).allMatch(r -> r.lost() == 0);
            }
            List<Double> figures =
                    runs.stream().map(waits ? Ran::meanWait : Ran::lost).toList();
            double mean = figures.stream().mapToDouble(f -> f).average().orElseThrow();
            double squares =
                    figures.stream().mapToDouble(f -> (f - mean) * (f - mean)).sum();
            return new Found(mean, size.student() * Math.sqrt(squares / (figures.size() - 1) / figures.size()));
        }

        double widest(Size size) {
            // The wait of a busy queue is remembered long: it is told less sharply.
            return waits ? 15 * size.widest() * expected : size.widest();
        }

        @Override
        public String toString() {
            return String.format(
                    Locale.ROOT,
                    "%s, load %s, arms %d, patience %s",
                    law.name().toLowerCase(Locale.ROOT).replace('_', '-'),
                    load,
                    arms,
                    waits ? "without end" : patience);
        }
    }

    /** A mean over seeds and half its confidence interval. */
    private record Found(double mean, double half) {
        void holds(double expected, double widest) {
            assertThat(half).as("half width of the confidence interval").isLessThan(widest);
            assertThat(mean).as("mean over seeds").isCloseTo(expected, within(half));
        }

        String text() {
            return String.format(Locale.ROOT, "%.6f +- %.6f", mean, half);
        }
    }

    /**
     * Erlang's loss formula, which does not ask for the law of the action times: as printed by codingace.net (blocking
     * probability, six decimals: loads 8 and 12 at 10 arms), and B(1,1) and B(2,5) by its recursion.
     */
    static List<Row> withoutPatience() {
        List<Row> rows = new ArrayList<>();
        for (Law law : Law.values()) {
            rows.add(Row.loss(law, 1, 1, 0, 0.5));
            rows.add(Row.loss(law, 2, 5, 0, 0.036697));
            rows.add(Row.loss(law, 8, 10, 0, 0.121661));
            rows.add(Row.loss(law, 12, 10, 0, 0.301925));
        }
        return rows;
    }

    /**
     * Mean wait when all are served, in mean times: rho / (2 (1 - rho)) (1 + squared variation), Pollaczek and Khinchine as
     * in R. B. Cooper, Introduction to Queueing Theory, 2nd ed. 1981, p. 189. The reach is 60 mean times long, so that
     * nobody leaves.
     */
    static List<Row> withPatienceForAll() {
        return List.of(
                Row.meanWait(Law.FIXED, 0.5, 0.5),
                Row.meanWait(Law.FIXED, 0.8, 2.0),
                Row.meanWait(Law.SHORT_OR_LONG, 0.8, 2.5),
                Row.meanWait(Law.EXPONENTIAL, 0.8, 4.0),
                Row.meanWait(Law.FIXED, 0.9, 4.5));
    }

    /**
     * Loss with a patience of some mean times: the constant-patience queue of Bae and Kim, Queueing Systems 64 (2010) 253-265.
     * Exponential times: (1 - rho) rho e / (1 - rho² e), e = exp(-(1 - rho) d), and 1 / (2 + d) at rho 1; fixed times by the
     * series of the M/D/1 queue; both derived from the workload equation, as {@code BoundedWait} says.
     */
    static List<Row> withSomePatience() {
        double[][] known = {
            {0.5, 0, 0.333333, 0.333333},
            {0.5, 1, 0.178735, 0.096274},
            {0.5, 2, 0.101285, 0.027242},
            {0.8, 1, 0.275196, 0.199570},
            {0.8, 2, 0.187832, 0.103299},
            {1.0, 1, 0.333333, 0.268941},
            {1.2, 2, 0.311818, 0.254880},
            {1.5, 1, 0.456352, 0.419661}
        };
        List<Row> rows = new ArrayList<>();
        for (double[] row : known) {
            rows.add(Row.loss(Law.EXPONENTIAL, row[0], 1, row[1], row[2]));
            rows.add(Row.loss(Law.FIXED, row[0], 1, row[1], row[3]));
        }
        return rows;
    }

    /** All but the busiest queue: its wait is remembered so long that a short run says nothing of it. */
    static List<Row> sliced() {
        return all().stream().filter(r -> !r.waits() || r.load() < 0.9).toList();
    }

    @ParameterizedTest
    @MethodSource("sliced")
    void aSliceIsAsKnown(Row row) {
        row.found(SLICE, FirstCome::new).holds(row.expected(), row.widest(SLICE));
    }

    @Test
    void theEvidenceBeginsWithThisSlice() throws IOException {
        Evidence committed = Evidence.read(ID);
        Row first = withSomePatience().get(2);

        assertThat(committed.fact("slice: " + first))
                .isEqualTo(first.found(SLICE, FirstCome::new).text());
        assertThat(committed.whole("figures")).isEqualTo(all().size());
        assertThat(committed.whole("seeds")).isEqualTo(ALL.seeds());
        assertThat(committed.whole("weedsPerSeed")).isEqualTo(ALL.weeds());
    }

    @Test
    @Tag("evidence")
    void allAreAsKnown() throws IOException {
        Row first = withSomePatience().get(2);
        Evidence evidence = Evidence.of(ID)
                .with("claim", "Losses and waits of the replay are those of queues with known answers")
                .with(
                        "command",
                        "mvn -Pevidence verify -pl verifier/engine -am -Dtest=ClosedFormsTest"
                                + " -Dsurefire.failIfNoSpecifiedTests=false")
                .with("figures", all().size())
                .with("seeds", ALL.seeds())
                .with("weedsPerSeed", ALL.weeds())
                .with("intervals", "99.9 %, by Student's t over seeds")
                .with("slice: " + first, first.found(SLICE, FirstCome::new).text());
        for (Row row : all()) {
            Found found = row.found(ALL, FirstCome::new);
            found.holds(row.expected(), row.widest(ALL));
            evidence.with(row.toString(), found.text() + ", known " + row.expected());
        }
        evidence.write();
    }

    private static List<Row> all() {
        return Stream.of(withoutPatience(), withPatienceForAll(), withSomePatience())
                .flatMap(List::stream)
                .toList();
    }

    /** Where all actions take equally long, giving up the longest is giving up the last: the default dispatch is no better. */
    @Test
    void lookingAheadGainsNothingWhereAllActionsAreAlike() {
        Row.loss(Law.FIXED, 1.5, 1, 1, 0.419661).found(SLICE, EarliestDue::new).holds(0.419661, SLICE.widest());
    }

    /** Where actions differ, giving up the long ones loses fewer than taking what came first. */
    @Test
    void lookingAheadGainsWhereActionsDiffer() {
        Found found = Row.loss(Law.EXPONENTIAL, 1.5, 1, 1, 0.456352).found(SLICE, EarliestDue::new);

        assertThat(found.mean() + found.half()).isLessThan(0.456352);
    }

    /**
     * Planting keeps up to v = rate x spacing and no farther: 30 to 40 plants a minute by hand, 90 in batches (Acta
     * Horticulturae 187, paper 24), which at 0.30 m is 0.15, 0.20 and 0.45 m/s and 1800 plants an hour. Plants per hectare
     * are 10000 / (r s), as printed for 0.90 x 0.30 m (sabiagrik.com) and 0.45 x 0.25 m (calculator-era.com, cut off).
     */
    @ParameterizedTest
    @CsvSource({
        "30, 0.90, 0.30, 0.15, 37037",
        "40, 0.90, 0.30, 0.20, 37037",
        "90, 0.90, 0.30, 0.45, 37037",
        "36, 0.45, 0.25, 0.15, 88889",
        "45, 0.375, 0.20, 0.15, 133333"
    })
    void aPlanterKeepsUpToRateTimesSpacing(
            double perMinute, double rowSpacing, double plantSpacing, double speed, long perHectare) {
        int places = 3000;
        double action = 60 / perMinute;
        // In reach for two steps, so that the arm is never idle once it lags behind.
        TestHead head =
                TestHead.fixed(Outline.rectangle(0.0, 2.5 * plantSpacing, -0.05, 0.05), 0.05, 0.1, action - 0.15);
        List<Plant> row = new ArrayList<>();
        for (int i = 0; i < places; i++) {
            row.add(new Plant(
                    new Plant.Position(Math.round(i * plantSpacing * 1e6), 0), PlantClass.PLUG, 0.03, 0.08, 0));
        }

        ReplayOutcome keeps = head.run(head.setting(speed, 2, TestHead.arm("a", 0)), row);
        ReplayOutcome fallsBehind = head.run(head.setting(1.05 * speed, 2, TestHead.arm("a", 0)), row);

        assertThat(keeps.reached()).isEqualTo(places);
        double perHour = (places - 1) / keeps.time() * 3600;
        assertThat(perHour).isCloseTo(60 * perMinute, within(1e-6));
        assertThat(Math.round(keeps.reached() / (places * plantSpacing * rowSpacing) * 1e4))
                .isEqualTo(perHectare);
        // Faster, the arm is never idle: it sets as many an hour as before, and the rest of the places stay empty.
        assertThat((double) fallsBehind.reached() / places).isCloseTo(1 / 1.05, within(0.002));
        assertThat(fallsBehind.missed(Miss.ARM_BUSY)).isEqualTo(places - fallsBehind.reached());
    }
}
