package headgate.verifier.bench;

import headgate.api.answer.Action;
import headgate.api.answer.Contact;
import headgate.api.shape.Outline;
import headgate.api.shape.Point;
import headgate.api.shape.Point3;
import headgate.api.sheet.HeadSheet;
import headgate.api.vocabulary.PlantClass;
import headgate.runtime.answers.SpotAnswer;
import headgate.runtime.task.LatticeSpotTask;
import headgate.verifier.check.Cases;
import headgate.verifier.check.FakeHead;
import headgate.verifier.replay.CaseSetting;
import headgate.verifier.replay.PlantSource;
import headgate.verifier.replay.ReplayArm;
import headgate.verifier.stand.GeneratedStand;
import headgate.verifier.stand.Ground;
import headgate.verifier.stand.RandomWeeds;
import headgate.verifier.stand.SizeLaw;
import headgate.verifier.trial.Trial;
import headgate.verifier.trial.TrialPlan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.AuxCounters;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * One hectare with ten weeds on each square metre, under eight arms, and the search for its best speed: ten speeds of a
 * ladder and nine between the last that passes and the next. The head takes longer for thicker stems; it answers in this
 * process, so that the engine is measured and not a pipe.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.SECONDS)
@Fork(1)
@Warmup(iterations = 1)
@Measurement(iterations = 3)
public class HectareBenchmark {

    private static final double DENSITY = 10;
    private static final int ARMS = 8;
    private static final double SPACING = 0.45;
    private static final double WIDTH = ARMS * SPACING;
    private static final double LENGTH = 10_000 / WIDTH;

    /** Coverage that is wanted: the arms reach it in the middle of the ladder. */
    private static final double WANTED = 0.85;

    private static final double STEP = 0.05;
    private static final double MOST = 0.5;

    /** Threads that work on it. */
    @Param({"1", "2"})
    public int threads;

    /** What is counted beside the time. */
    @State(Scope.Thread)
    @AuxCounters(AuxCounters.Type.EVENTS)
    public static class Counts {
        /** Weeds of the hectare. */
        public long weeds;
        /** Passes over it. */
        public long passes;
        /** Tasks that the head was asked. */
        public long asked;
        /** How often an answer was looked up; what was not asked came from memory. */
        public long lookedUp;
        /** The best speed, mm/s. */
        public long bestMillimetresPerSecond;
    }

    private static GeneratedStand stand(double density, long seed) {
        return new GeneratedStand(
                new Ground(LENGTH, -WIDTH / 2, WIDTH / 2),
                Optional.empty(),
                List.of(new GeneratedStand.Weeds(
                        new RandomWeeds(density),
                        List.of(),
                        List.of(PlantClass.BROADLEAF),
                        SizeLaw.even(0.001, 0.008),
                        SizeLaw.even(0.01, 0.15),
                        SizeLaw.UNKNOWN)),
                seed);
    }

    private static Action act(LatticeSpotTask task) {
        Point3 at = Point3.ofMetres(0.25, 0, -0.2);
        return Action.of(
                Cases.phase("work", 0.1 + 20 * task.stemDiameter(), at, Contact.SOIL)
                        .treating(Outline.insideDisc(new Point(0, 0), 0.0005, 8))
                        .build(),
                Cases.phase("return", 0.3, at, Contact.FREE).build());
    }

    private static CaseSetting subject() {
        HeadSheet sheet = ReplayBenchmark.sheet(Outline.rectangle(0.09, 0.43, -SPACING / 2, SPACING / 2));
        List<ReplayArm> arms = new ArrayList<>();
        for (int i = 0; i < ARMS; i++) {
            long y = Math.round((i - (ARMS - 1) / 2.0) * SPACING * 1e6);
            arms.add(ReplayBenchmark.arm(i, y));
        }
        return new CaseSetting(
                ReplayBenchmark.setting(MOST, sheet, arms), List.of(FakeHead.spot(sheet, task -> new SpotAnswer.Answered(act(task)))), List.of());
    }

    /** Searches the best speed of the hectare. */
    @Benchmark
    public Trial.Climb bestSpeed(Counts counts) {
        TrialPlan plan = new TrialPlan(WANTED, 0.95, 2, 2, Long.MAX_VALUE, threads);
        Trial trial = new Trial(
                subject(), (density, seed) -> PlantSource.of(stand(density, seed)), plan, true);
        Trial.Climb climb = trial.bestSpeed(DENSITY, STEP, MOST).orElseThrow();
        counts.passes = climb.cells().size();
        counts.weeds = climb.cells().get(0).outcomes().get(0).targets();
        counts.asked = trial.asked();
        counts.lookedUp = trial.lookedUp();
        counts.bestMillimetresPerSecond = Math.round(1000 * climb.best().orElse(0.0));
        return climb;
    }
}
