package headgate.verifier.replay;

import headgate.api.answer.Action;
import headgate.api.answer.Contact;
import headgate.api.shape.Interval;
import headgate.api.shape.Outline;
import headgate.api.shape.Point;
import headgate.api.shape.Point3;
import headgate.api.sheet.ActionTime;
import headgate.api.sheet.Figure;
import headgate.api.sheet.HeadSheet;
import headgate.api.sheet.Range;
import headgate.api.sheet.Reach;
import headgate.api.sheet.WorkRange;
import headgate.api.vocabulary.PlantClass;
import headgate.api.vocabulary.PostureName;
import headgate.api.vocabulary.SoilClass;
import headgate.runtime.answers.HeadAnswers;
import headgate.runtime.answers.SpotAnswer;
import headgate.runtime.carriage.Arm;
import headgate.runtime.stand.Plant;
import headgate.runtime.task.LatticeSpotTask;
import headgate.verifier.behaviour.Facing;
import headgate.verifier.check.Cases;
import headgate.verifier.check.FakeHead;
import headgate.verifier.interlock.Interlocks;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * A head for tests whose times are set by hand. It takes any plant, wherever its action starts, so that windows come from
 * the reach alone. Times can depend on the plant's stem: the stem in metres is a free parameter of the test.
 *
 * @param reach outline of the reach, head frame
 * @param approach t_a for a plant, s
 * @param inGround t_g for a plant, s
 * @param back t_r for a plant, s
 * @param treatedRadius radius of the treated ground, m
 */
record TestHead(
        Outline reach,
        Function<LatticeSpotTask, Double> approach,
        Function<LatticeSpotTask, Double> inGround,
        Function<LatticeSpotTask, Double> back,
        double treatedRadius) {

    static final long HEIGHT = 500_000;

    /** Times that are the same for every plant. */
    static TestHead fixed(Outline reach, double approach, double inGround, double back) {
        return new TestHead(reach, t -> approach, t -> inGround, t -> back, 0.005);
    }

    HeadSheet sheet() {
        Point3 ready = ready();
        Reach over = Reach.over(reach, Interval.ofMetres(-0.6, -0.2));
        HeadSheet.Builder builder = Cases.weederSheet()
                .turnable(true)
                .actionTime(ActionTime.of(Figure.assumed(0.001), Figure.assumed(1), Figure.assumed(600)))
                .workRange(WorkRange.builder()
                        .groundSpeed(Range.of(0.0, 10))
                        .plantClasses(PlantClass.BROADLEAF, PlantClass.GRASS, PlantClass.PLUG)
                        .stemDiameter(Range.of(0, 0.5))
                        .plantHeight(Range.of(0, 5))
                        .soils(SoilClass.FINE, SoilClass.MEDIUM, SoilClass.COARSE)
                        .moisture(Range.of(0, 1))
                        .depth(Range.of(0.02, 0.02))
                        .build());
        HeadSheet base = Cases.weederSheet().build();
        return builder.postures(
                        Cases.posture(
                                PostureName.STOWED,
                                base.posture(PostureName.STOWED).orElseThrow().fixed(),
                                base.posture(PostureName.STOWED).orElseThrow().moving(),
                                Reach.at(ready)),
                        Cases.posture(
                                PostureName.READY,
                                base.posture(PostureName.READY).orElseThrow().fixed(),
                                base.posture(PostureName.READY).orElseThrow().moving(),
                                Reach.at(ready)),
                        Cases.posture(
                                PostureName.WORK,
                                base.posture(PostureName.WORK).orElseThrow().fixed(),
                                base.posture(PostureName.WORK).orElseThrow().moving(),
                                over))
                .build();
    }

    private Point3 ready() {
        Point corner = reach.vertices().get(0);
        return new Point3(corner.x(), corner.y(), -200_000);
    }

    /** The head, asked in this process. */
    HeadAnswers answers() {
        HeadSheet sheet = sheet();
        return FakeHead.spot(sheet, task -> new SpotAnswer.Answered(act(task)));
    }

    private Action act(LatticeSpotTask task) {
        double ta = approach.apply(task);
        double tg = inGround.apply(task);
        Point3 in = along(task, ta);
        Point3 out = along(task, ta + tg);
        return Action.of(
                Cases.phase("approach", ta, in, Contact.FREE).build(),
                Cases.phase("work", tg, out, Contact.SOIL)
                        .treating(Outline.insideDisc(new Point(0, 0), treatedRadius, 12))
                        .build(),
                Cases.phase("return", back.apply(task), ready(), Contact.FREE).build());
    }

    /** Over the plant at a time, with the tool at the top of its reach, so that only labels say what it touches. */
    private static Point3 along(LatticeSpotTask task, double time) {
        return new Point3(
                task.position().x() + Math.round(task.groundVelocity().x() * time),
                task.position().y() + Math.round(task.groundVelocity().y() * time),
                -200_000);
    }

    /** A tool of the head. */
    ReplayTool tool() {
        return new ReplayTool("test head", sheet(), Optional.empty());
    }

    /** An arm at y = 0 that does not shift and works without sensors. */
    static ReplayArm arm(String id, long y) {
        return new ReplayArm(
                id, 0, Facing.FORWARD, 0, y, Interval.at(y), new Arm.AxisMotion(0.5, 2, 2, 0), HEIGHT, List.of());
    }

    /** A setting with perfect perception and one kind of head. */
    ReplaySetting setting(double speed, double ahead, ReplayArm... arms) {
        return setting(speed, ahead, List.of(), arms);
    }

    /** The same over strips of ground; none for all of it. */
    ReplaySetting setting(double speed, double ahead, List<Interval> ground, ReplayArm... arms) {
        return new ReplaySetting(
                speed,
                List.of(tool()),
                List.of(arms),
                List.of(),
                ground,
                ahead,
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

    /** Runs one replay and demands that it ends. */
    ReplayOutcome run(ReplaySetting setting, List<Plant> plants) {
        return run(setting, plants, ActionObserver.NONE);
    }

    ReplayOutcome run(ReplaySetting setting, List<Plant> plants, ActionObserver observer) {
        AnswerBook book = new AnswerBook(setting.tools(), List.of(answers()), 0, Long.MAX_VALUE);
        Replay replay = new Replay(
                setting,
                PlantSource.of(plants),
                book,
                Replay.Options.USUAL.withBound().withObserver(observer));
        if (!ReplayRun.run(List.of(replay), book, 1)) {
            throw new AssertionError("the replay did not end: " + book.fault());
        }
        return replay.outcome().orElseThrow();
    }

    /** A weed at a place, m, with a stem, m. */
    static Plant weed(double x, double y, double stem) {
        return new Plant(
                new Plant.Position(Math.round(x * 1e6), Math.round(y * 1e6)), PlantClass.BROADLEAF, stem, 0.05, 0);
    }

    /** Weeds in a row, m apart. */
    static List<Plant> row(int number, double apart) {
        List<Plant> plants = new ArrayList<>();
        for (int i = 0; i < number; i++) {
            plants.add(weed(i * apart, 0, 0.005));
        }
        return plants;
    }
}
