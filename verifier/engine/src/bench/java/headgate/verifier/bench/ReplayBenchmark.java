package headgate.verifier.bench;

import headgate.api.answer.Action;
import headgate.api.answer.Contact;
import headgate.api.shape.Interval;
import headgate.api.shape.Outline;
import headgate.api.shape.Point;
import headgate.api.shape.Point3;
import headgate.api.sheet.HeadSheet;
import headgate.api.sheet.Range;
import headgate.api.sheet.Reach;
import headgate.api.sheet.WorkRange;
import headgate.api.vocabulary.PlantClass;
import headgate.api.vocabulary.PostureName;
import headgate.api.vocabulary.SoilClass;
import headgate.runtime.answers.SpotAnswer;
import headgate.runtime.carriage.Arm;
import headgate.runtime.stand.Plant;
import headgate.runtime.task.LatticeSpotTask;
import headgate.verifier.behaviour.Facing;
import headgate.verifier.check.Cases;
import headgate.verifier.check.FakeHead;
import headgate.verifier.interlock.Interlocks;
import headgate.verifier.replay.AnswerBook;
import headgate.verifier.replay.CropCare;
import headgate.verifier.replay.Perception;
import headgate.verifier.replay.PlantSource;
import headgate.verifier.replay.PlugQuality;
import headgate.verifier.replay.Replay;
import headgate.verifier.replay.ReplayArm;
import headgate.verifier.replay.ReplayOutcome;
import headgate.verifier.replay.ReplayRun;
import headgate.verifier.replay.ReplaySetting;
import headgate.verifier.replay.ReplayTool;
import headgate.verifier.replay.Success;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Plants a second on one core, for one arm and for eight, and how that grows with the plants that each arm has to choose
 * from. The head answers at once and always the same, so the engine's own work is measured. At a load of 1 the plants just
 * fill the arms' time.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class ReplayBenchmark {

    static final int PLANTS = 20_000;

    /** Time of an action, s, and how long its start may wait, s. */
    static final double ACTION = 1.0;

    static final double PATIENCE = 1.0;

    private static final double SPEED = 0.2;
    private static final double IN_GROUND = 0.5;

    /** Arms side by side, each on its own lane. */
    @Param({"1", "8"})
    public int arms;

    /** Plants for each arm in the time of an action. */
    @Param({"0.5", "1", "2", "4"})
    public double load;

    private ReplaySetting setting;
    private List<Plant> plants;
    private FakeHead head;

    /** Makes plants and arms. */
    @Setup
    public void make() {
        SplittableRandom random = new SplittableRandom(11);
        plants = new ArrayList<>();
        double x = 0;
        for (int i = 0; i < PLANTS; i++) {
            x -= StrictMath.log(1 - random.nextDouble()) * SPEED * ACTION / load / arms;
            plants.add(new Plant(
                    new Plant.Position(Math.round(x * 1e6), 500_000L * random.nextInt(arms)),
                    PlantClass.BROADLEAF,
                    0.005,
                    0.05,
                    0));
        }
        double chord = SPEED * (PATIENCE + IN_GROUND);
        HeadSheet sheet = sheet(Outline.rectangle(0.1, 0.1 + chord, -0.1, 0.1));
        Action action = action();
        head = FakeHead.spot(sheet, (LatticeSpotTask task) -> new SpotAnswer.Answered(action));
        List<ReplayArm> all = new ArrayList<>();
        for (int i = 0; i < arms; i++) {
            all.add(arm(i, 500_000L * i));
        }
        setting = setting(SPEED, sheet, all);
    }

    /** Arms with one kind of head, which see everything. */
    static ReplaySetting setting(double speed, HeadSheet sheet, List<ReplayArm> arms) {
        return new ReplaySetting(
                speed,
                List.of(new ReplayTool("head", sheet, Optional.empty())),
                arms,
                List.of(),
                List.of(),
                1,
                Perception.PERFECT,
                CropCare.NONE,
                Success.ALWAYS,
                PlugQuality.PERFECT,
                SoilClass.MEDIUM,
                0.2,
                OptionalDouble.empty(),
                new Interlocks(List.of()),
                1);
    }

    /** An arm that stays at y, in micrometres. */
    static ReplayArm arm(int number, long y) {
        return new ReplayArm(
                "arm " + number,
                0,
                Facing.FORWARD,
                0,
                y,
                Interval.at(y),
                new Arm.AxisMotion(0.5, 2, 2, 0),
                500_000,
                List.of());
    }

    ReplaySetting setting() {
        return setting;
    }

    List<Plant> plants() {
        return plants;
    }

    FakeHead head() {
        return head;
    }

    /** A sheet of a head that takes any weed within a reach. */
    static HeadSheet sheet(Outline reach) {
        Reach over = Reach.over(reach, Interval.ofMetres(-0.6, -0.2));
        HeadSheet base = Cases.weederSheet().build();
        return Cases.weederSheet()
                .postures(base.postures().stream()
                        .map(p -> p.name().equals(PostureName.WORK)
                                ? Cases.posture(p.name(), p.fixed(), p.moving(), over)
                                : p)
                        .toList())
                .workRange(WorkRange.builder()
                        .groundSpeed(Range.of(0.0, 10))
                        .plantClasses(PlantClass.BROADLEAF)
                        .stemDiameter(Range.of(0, 0.5))
                        .plantHeight(Range.of(0, 5))
                        .soils(SoilClass.MEDIUM)
                        .moisture(Range.of(0, 1))
                        .depth(Range.of(0.02, 0.02))
                        .build())
                .build();
    }

    private static Action action() {
        Point3 at = Point3.ofMetres(0.25, 0, -0.2);
        return Action.of(
                Cases.phase("work", IN_GROUND, at, Contact.SOIL)
                        .treating(Outline.insideDisc(new Point(0, 0), 0.0005, 8))
                        .build(),
                Cases.phase("return", ACTION - IN_GROUND, at, Contact.FREE).build());
    }

    /** Replays the plants. */
    @Benchmark
    @OperationsPerInvocation(PLANTS)
    public ReplayOutcome replay() {
        AnswerBook book = new AnswerBook(setting.tools(), List.of(head), 0, Long.MAX_VALUE);
        Replay replay = new Replay(setting, PlantSource.of(plants), book);
        ReplayRun.run(List.of(replay), book, 1);
        return replay.outcome().orElseThrow();
    }
}
