package headgate.verifier.replay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import headgate.api.shape.Interval;
import headgate.api.shape.Outline;
import headgate.api.shape.Point;
import headgate.api.sheet.ActionTime;
import headgate.api.sheet.Figure;
import headgate.api.sheet.HeadSheet;
import headgate.api.vocabulary.PlantClass;
import headgate.runtime.stand.Plant;
import headgate.verifier.behaviour.Facing;
import headgate.verifier.dispatch.EarliestDue;
import headgate.verifier.interlock.Interlock;
import headgate.verifier.interlock.Interlocks;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ReplayTest {

    private static final Outline REACH = Outline.rectangle(0.1, 0.4, -0.1, 0.1);

    /** t_a 0.3 s, t_g 0.4 s, t_r 0.3 s at 0.2 m/s: the reach of 0.3 m is passed in 1.5 s, so the start may wait 1.1 s. */
    private final TestHead head = TestHead.fixed(REACH, 0.3, 0.4, 0.3);

    @Test
    void beginsContactJustAsThePlantEntersTheReach() {
        List<ActionObserver.Done> timeline = new ArrayList<>();
        ReplayOutcome outcome = head.run(
                head.setting(0.2, 2, TestHead.arm("a", 0)), List.of(TestHead.weed(1, 0, 0.005)), timeline::add);
        assertThat(outcome.reached()).isEqualTo(1);
        // It enters the reach at (1 - 0.4) / 0.2 = 3 s, so the action starts at 3 - 0.3 = 2.7 s and takes 1 s.
        assertThat(timeline).singleElement().satisfies(done -> {
            assertThat(done.start()).isCloseTo(2.7, within(1e-9));
            assertThat(done.contactStart()).isCloseTo(3.0, within(1e-9));
            assertThat(done.contactEnd()).isCloseTo(3.4, within(1e-9));
            assertThat(done.end()).isCloseTo(3.7, within(1e-9));
        });
    }

    @Test
    void missesTheThirdOfThreeThatComeTogetherWhenItsWindowIsOver() {
        // Starts may be at 2.7 to 3.8 s. Actions at 2.7 and 3.7 s fit; the third would start at 4.7 s.
        ReplayOutcome outcome = head.run(
                head.setting(0.2, 2, TestHead.arm("a", 0)),
                List.of(TestHead.weed(1, -0.05, 0.005), TestHead.weed(1, 0, 0.005), TestHead.weed(1, 0.05, 0.005)));
        assertThat(outcome.reached()).isEqualTo(2);
        assertThat(outcome.missed(Miss.ARM_BUSY)).isEqualTo(1);
        assertThat(outcome.coverage()).isCloseTo(2.0 / 3, within(1e-12));
    }

    @Test
    void treatsEveryPlantOfARowAtTheSpeedAtWhichEachHasItsTime() {
        // 0.2 m apart at 0.2 m/s: one a second, and an action takes one second.
        assertThat(head.run(head.setting(0.2, 2, TestHead.arm("a", 0)), TestHead.row(1000, 0.2))
                        .reached())
                .isEqualTo(1000);
    }

    @Test
    void saysWhyAPlantWasMissed() {
        ReplayArm arm = TestHead.arm("a", 0);
        assertThat(head.run(head.setting(0.2, 2, arm), List.of(TestHead.weed(1, 0.2, 0.005)))
                        .missed(Miss.NEVER_IN_REACH))
                .isEqualTo(1);
        // At 1 m/s the reach is passed in 0.3 s, and 0.4 s are needed.
        assertThat(head.run(head.setting(1, 2, arm), List.of(TestHead.weed(1, 0, 0.005)))
                        .missed(Miss.WINDOW_TOO_SHORT))
                .isEqualTo(1);
        // Known 0.2 m before the mount: 1 s before it is there, but it leaves the reach 0.1 m before the mount.
        assertThat(head.run(head.setting(0.2, 0.2, arm), List.of(TestHead.weed(1, 0, 0.005)))
                        .missed(Miss.SEEN_TOO_LATE))
                .isEqualTo(1);
    }

    /**
     * Ten jobs of one machine as plants that stand side by side: duration and due time of a course problem on scheduling.
     * All are known and in reach together; the reach ends for each where its due time says. At most eight can be on time:
     * J. M. Moore, Management Science 15 (1968), and all 1024 sets tried.
     */
    @Test
    void doesAsManyOfTenKnownTogetherAsCanBeDone() {
        int[][] jobs = {
            {19, 48}, {23, 75}, {5, 170}, {31, 215}, {17, 205}, {8, 240}, {32, 85}, {41, 67}, {26, 100}, {18, 95}
        };
        // A staircase: at 1 m/s, and with a time unit of 10 ms, the reach is as long as the start may wait.
        List<Point> corners = new ArrayList<>();
        List<Plant> plants = new ArrayList<>();
        corners.add(Point.ofMetres(3, 0));
        for (int i = 0; i < jobs.length; i++) {
            double wait = (jobs[i][1] - jobs[i][0]) / 100.0;
            corners.add(0, Point.ofMetres(3 - wait, 0.02 * i));
            corners.add(0, Point.ofMetres(3 - wait, 0.02 * (i + 1)));
            plants.add(TestHead.weed(5, 0.02 * i + 0.01, jobs[i][0] / 1000.0));
        }
        corners.add(0, Point.ofMetres(3, 0.02 * jobs.length));
        TestHead staircase = new TestHead(Outline.of(corners), t -> 0.0, t -> 0.0, t -> 10 * t.stemDiameter(), 0.001);
        ReplayOutcome outcome = staircase.run(staircase.setting(1, 4, TestHead.arm("a", 0)), plants);
        assertThat(outcome.reached()).isEqualTo(8);
        assertThat(outcome.missed(Miss.ARM_BUSY)).isEqualTo(2);
        assertThat(outcome.mostTreatable().orElseThrow()).isEqualTo(8);
    }

    @Test
    void letsTwoArmsHelpEachOtherAndAnArmBehindTakeWhatTheFrontMissed() {
        List<Plant> three =
                List.of(TestHead.weed(1, -0.05, 0.005), TestHead.weed(1, 0, 0.005), TestHead.weed(1, 0.05, 0.005));
        assertThat(head.run(head.setting(0.2, 2, TestHead.arm("a", 0), TestHead.arm("b", 40_000)), three)
                        .reached())
                .isEqualTo(3);
        ReplayArm front = TestHead.arm("front", 0);
        ReplayArm behind = new ReplayArm(
                "behind", 0, front.facing(), -1_000_000, 0, front.shift(), front.motion(), front.height(), List.of());
        ReplayOutcome outcome = head.run(head.setting(0.2, 2, front, behind), three);
        assertThat(outcome.reached()).isEqualTo(3);
        assertThat(outcome.arms().get(1).actions()).isEqualTo(1);
    }

    @Test
    void shiftsBetweenActionsAndNotDuringThem() {
        ReplayArm base = TestHead.arm("a", 0);
        ReplayArm shifting = new ReplayArm(
                "a", 0, base.facing(), 0, 0, Interval.ofMetres(-0.5, 0.5), base.motion(), base.height(), List.of());
        List<ActionObserver.Done> timeline = new ArrayList<>();
        ReplayOutcome outcome = head.run(
                head.setting(0.2, 2, shifting),
                List.of(TestHead.weed(1, 0, 0.005), TestHead.weed(1.2, 0.3, 0.005)),
                timeline::add);
        assertThat(outcome.reached()).isEqualTo(2);
        // From 0 to 0.2 m, where the reach's edge comes over y = 0.3 m: a trapezoid of 0.2 / 0.5 + 0.5 / 2 = 0.65 s.
        ActionObserver.Done second = timeline.get(1);
        assertThat(second.mount()).isEqualTo(200_000);
        assertThat(second.shiftFrom()).isGreaterThanOrEqualTo(timeline.get(0).end() - 1e-9);
        assertThat(second.start() - second.shiftFrom()).isCloseTo(0.65, within(1e-9));
    }

    @Test
    void shiftsLinkedArmsTogetherAndOnlyAtRest() {
        ReplayArm base = TestHead.arm("a", 0);
        ReplayArm one = new ReplayArm(
                "one", 0, base.facing(), 0, 0, Interval.ofMetres(-0.5, 0.5), base.motion(), base.height(), List.of());
        ReplayArm two = new ReplayArm(
                "two",
                0,
                base.facing(),
                0,
                1_000_000,
                Interval.ofMetres(0.9, 1.5),
                base.motion(),
                base.height(),
                List.of());
        ReplaySetting alone = head.setting(0.2, 2, one, two);
        ReplaySetting linked = new ReplaySetting(
                alone.speed(),
                alone.tools(),
                alone.arms(),
                List.of(new LinkGroup(List.of(0, 1))),
                alone.ground(),
                alone.ahead(),
                alone.perception(),
                alone.crop(),
                alone.success(),
                alone.plugs(),
                alone.soil(),
                alone.moisture(),
                alone.rowLength(),
                alone.interlocks(),
                alone.seed());
        // Arm two has a plant at once; arm one needs 0.2 m of shift for its own, which must wait for arm two.
        List<Plant> plants = List.of(TestHead.weed(1, 1, 0.005), TestHead.weed(1.2, 0.3, 0.005));
        List<ActionObserver.Done> timeline = new ArrayList<>();
        assertThat(head.run(linked, plants, timeline::add).reached()).isEqualTo(2);
        assertThat(timeline.get(1).shiftFrom()).isCloseTo(timeline.get(0).end(), within(1e-9));
        timeline.clear();
        assertThat(head.run(alone, plants, timeline::add).reached()).isEqualTo(2);
        assertThat(timeline.get(1).shiftFrom()).isLessThan(timeline.get(0).end() - 0.5);
    }

    @Test
    void missesWhatComesOnceTheMagazineIsEmpty() {
        Magazine magazine = new Magazine(4, 1, 30, Magazine.Place.HEADLAND, false);
        ReplayOutcome atHeadland = head.run(withMagazine(magazine), TestHead.row(10, 1));
        // Rows of 5 m hold the plants at 0 to 4 m and at 5 to 9 m: of each five the last finds nothing left.
        assertThat(atHeadland.reached()).isEqualTo(8);
        assertThat(atHeadland.missed(Miss.MAGAZINE_EMPTY)).isEqualTo(2);
        assertThat(atHeadland.stopped()).isEqualTo(30);
        ReplayOutcome anywhere =
                head.run(withMagazine(new Magazine(4, 1, 30, Magazine.Place.ANYWHERE, false)), TestHead.row(10, 1));
        assertThat(anywhere.reached()).isEqualTo(10);
        assertThat(anywhere.stopped()).isEqualTo(60);
        assertThat(anywhere.time()).isCloseTo(9 / 0.2 + 60, within(1e-9));
    }

    private ReplaySetting withMagazine(Magazine magazine) {
        ReplaySetting base = head.setting(0.2, 2, TestHead.arm("a", 0));
        return new ReplaySetting(
                base.speed(),
                List.of(new ReplayTool("head", head.sheet(), Optional.of(magazine))),
                base.arms(),
                base.links(),
                base.ground(),
                base.ahead(),
                base.perception(),
                base.crop(),
                base.success(),
                base.plugs(),
                base.soil(),
                base.moisture(),
                OptionalDouble.of(5),
                base.interlocks(),
                base.seed());
    }

    @Test
    void waitsForANeighbourThatMayNotActAtTheSameTime() {
        Interlock turns = new Interlock("a", "b", 0.03, List.of(), List.of(), List.of(), List.of(), List.of(), true, 0);
        ReplaySetting free = head.setting(0.2, 2, TestHead.arm("a", 0), TestHead.arm("b", 1_000_000));
        ReplaySetting inTurn = new ReplaySetting(
                free.speed(),
                List.of(shortTool()),
                free.arms(),
                free.links(),
                free.ground(),
                free.ahead(),
                free.perception(),
                free.crop(),
                free.success(),
                free.plugs(),
                free.soil(),
                free.moisture(),
                free.rowLength(),
                new Interlocks(List.of(turns)),
                free.seed());
        List<Plant> plants = List.of(
                TestHead.weed(1, 0, 0.005),
                TestHead.weed(1, 0.05, 0.005),
                TestHead.weed(1, 1, 0.005),
                TestHead.weed(1, 1.05, 0.005));
        assertThat(head.run(free, plants).reached()).isEqualTo(4);
        ReplayOutcome outcome = head.run(inTurn, plants);
        // Starts may be at 2.7 to 3.8 s, and an action takes 1 s: two of the four, whoever begins.
        assertThat(outcome.reached()).isEqualTo(2);
        assertThat(outcome.missed(Miss.BLOCKED)).isGreaterThanOrEqualTo(1);
    }

    /** A tool whose sheet allows no action longer than those that it does. */
    private ReplayTool shortTool() {
        HeadSheet sheet = head.sheet().toBuilder()
                .actionTime(ActionTime.of(Figure.assumed(1), Figure.assumed(1), Figure.assumed(1)))
                .build();
        return new ReplayTool("head", sheet, Optional.empty());
    }

    @Test
    void treatsWhatStandsInTheTreatedGroundToo() {
        TestHead wide = new TestHead(REACH, t -> 0.3, t -> 0.4, t -> 0.3, 0.03);
        ReplayOutcome outcome = wide.run(
                wide.setting(0.2, 2, TestHead.arm("a", 0)),
                List.of(
                        TestHead.weed(1, -0.02, 0.005),
                        TestHead.weed(1, 0, 0.005),
                        TestHead.weed(1.02, 0, 0.005),
                        TestHead.weed(1.1, 0, 0.005)));
        assertThat(outcome.reached()).isEqualTo(4);
        assertThat(outcome.alongside()).isGreaterThanOrEqualTo(1);
        assertThat(outcome.arms().get(0).actions()).isLessThan(4);
        assertThat(outcome.mostTreatable().orElseThrow()).isGreaterThanOrEqualTo(4);
    }

    @Test
    void seesPlantsThatStandTogetherAsOne() {
        ReplaySetting setting = head.setting(0.2, 2, TestHead.arm("a", 0))
                .withPerception(new Perception(1, List.of(), 0, 0, 0.012, false));
        ReplayOutcome outcome =
                head.run(setting, List.of(TestHead.weed(1, 0, 0.005), TestHead.weed(1.008, 0.004, 0.005)));
        // 8.9 mm apart: one detection; the treated disc of 5 mm does not come to the other.
        assertThat(outcome.reached()).isEqualTo(1);
        assertThat(outcome.missed(Miss.UNSEEN)).isEqualTo(1);
    }

    @Test
    void keepsOffTheCropAndCountsWhatIsHurt() {
        ReplaySetting base = head.setting(0.2, 2, TestHead.arm("a", 0));
        ReplaySetting careful = withCrop(base, new CropCare(0.05, PositionError.NONE, 0.4, 0.1, 0.0));
        Plant crop = new Plant(new Plant.Position(1_000_000, 0), Plant.CROP, 0, 0.4, 0.1);
        ReplayOutcome tooNear = head.run(careful, List.of(crop, TestHead.weed(1.04, 0, 0.005)));
        assertThat(tooNear.missed(Miss.TOO_NEAR)).isEqualTo(1);
        assertThat(tooNear.crop()).isEqualTo(new ReplayOutcome.Crop(1, 0, 0));
        // The fixed body is x -0.05 to 0.45, y -0.15 to 0.15 m, from 0.35 m over the ground up: it meets what is 0.4 m
        // high.
        ReplayOutcome met = head.run(careful, List.of(crop, TestHead.weed(1.06, 0, 0.005)));
        assertThat(met.reached()).isEqualTo(1);
        assertThat(met.crop().lost()).isEqualTo(1);
        // A plant lower than that is passed over.
        Plant low = new Plant(new Plant.Position(1_000_000, 0), Plant.CROP, 0, 0.2, 0.1);
        assertThat(head.run(careful, List.of(low, TestHead.weed(1.06, 0, 0.005)))
                        .crop())
                .isEqualTo(new ReplayOutcome.Crop(1, 0, 0));
    }

    @Test
    void keepsFartherOffTheCropTheFasterItGoes() {
        ReplaySetting slow = withCrop(
                head.setting(0.05, 2, TestHead.arm("a", 0)),
                new CropCare(0.05, new PositionError(0, 0, 0.1), 0.4, 0.1, 0.0));
        // The fixed body comes to y = 0.15 m, 60 mm from the plant. Kept off are 50 mm, and 5 mm at 0.05 m/s, 20 mm at
        // 0.2.
        Plant crop = new Plant(new Plant.Position(1_000_000, 210_000), Plant.CROP, 0, 0.4, 0.1);
        List<Plant> plants = List.of(crop, TestHead.weed(1.06, 0, 0.005));
        assertThat(head.run(slow, plants).crop()).isEqualTo(new ReplayOutcome.Crop(1, 0, 0));
        assertThat(head.run(slow.withSpeed(0.2), plants).crop()).isEqualTo(new ReplayOutcome.Crop(1, 1, 0));
    }

    private static ReplaySetting withCrop(ReplaySetting base, CropCare care) {
        return new ReplaySetting(
                base.speed(),
                base.tools(),
                base.arms(),
                base.links(),
                base.ground(),
                base.ahead(),
                base.perception(),
                care,
                base.success(),
                base.plugs(),
                base.soil(),
                base.moisture(),
                base.rowLength(),
                base.interlocks(),
                base.seed());
    }

    @Test
    void doesNotSeeWhatStandsUnderTheLeavesOfATallerPlant() {
        ReplaySetting setting =
                head.setting(0.2, 2, TestHead.arm("a", 0)).withPerception(new Perception(1, List.of(), 0, 0, 0, true));
        // Leaves 0.2 m wide, 0.1 m high. Weeds of 0.05 m stand 90 mm and 110 mm from the middle, one of 0.15 m in it.
        List<Plant> plants = List.of(
                TestHead.weed(0.91, 0, 0.005),
                new Plant(new Plant.Position(1_000_000, 0), Plant.CROP, 0, 0.1, 0.2),
                new Plant(new Plant.Position(1_000_000, 0), PlantClass.BROADLEAF, 0.005, 0.15, 0),
                TestHead.weed(1.11, 0, 0.005));
        ReplayOutcome outcome = head.run(setting, plants);
        assertThat(outcome.targets()).isEqualTo(3);
        assertThat(outcome.missed(Miss.UNSEEN)).isEqualTo(1);
        assertThat(outcome.reached()).isEqualTo(2);
        ReplayOutcome open = head.run(setting.withPerception(new Perception(1, List.of(), 0, 0, 0, false)), plants);
        assertThat(open.missed(Miss.UNSEEN)).isZero();
    }

    private ReplaySetting alarmed() {
        return head.setting(0.2, 2, List.of(Interval.ofMetres(-0.1, 0.1)), TestHead.arm("a", 0))
                .withPerception(new Perception(1, List.of(), 2, 0, 0, false));
    }

    @Test
    void leavesWhatNoHeadTakesAndWhatLooksLikeIt() {
        // A stem of 3 m is more than any head can be asked for; all that follows looks like it.
        ReplayOutcome outcome = head.run(alarmed(), List.of(TestHead.weed(0, 0, 3.0), TestHead.weed(100, 0, 3.0)));

        assertThat(outcome.missed(Miss.OUTSIDE_RANGE)).isEqualTo(2);
        assertThat(outcome.falseActions()).isZero();
    }

    @Test
    void actsForFalseAlarmsAndLosesTheTime() {
        ReplaySetting alarmed = alarmed();
        // 2 a square metre on 0.2 m x 200 m: 80 to be expected, and 50 to 115 but once in a thousand (Poisson).
        ReplayOutcome outcome = head.run(alarmed, TestHead.row(201, 1));
        ArmUse arm = outcome.arms().get(0);
        assertThat(outcome.falseActions()).isBetween(50L, 115L);
        assertThat(outcome.targets()).isEqualTo(201);
        assertThat(arm.actions()).isEqualTo(outcome.reached() + outcome.falseActions());
        assertThat(arm.acting()).isCloseTo(arm.actions() * 1.0, within(1e-6));
    }

    @Test
    void worksBehindTheMountWithATurnedHead() {
        ReplayArm forward = TestHead.arm("a", 0);
        ReplayArm turned = new ReplayArm(
                "a", 0, Facing.TURNED, 0, 0, forward.shift(), forward.motion(), forward.height(), List.of());
        List<ActionObserver.Done> timeline = new ArrayList<>();
        head.run(head.setting(0.2, 2, turned), List.of(TestHead.weed(1, 0, 0.005)), timeline::add);
        // The reach is from 0.1 to 0.4 m behind the mount: entered at (1 + 0.1) / 0.2 = 5.5 s.
        assertThat(timeline).singleElement().satisfies(done -> assertThat(done.contactStart())
                .isCloseTo(5.5, within(1e-9)));
    }

    @Test
    void treatsTwoOfEveryClump() {
        // Ten clumps of five, 2 m apart: of each, starts fit at 0 and 1 s of the 1.1 s that they may wait.
        List<Plant> clumps = new ArrayList<>();
        for (int i = 0; i < 10; i++) {
            for (int k = 0; k < 5; k++) {
                clumps.add(TestHead.weed(2.0 * i, 0.03 * (k - 2), 0.005));
            }
        }
        ReplayOutcome outcome = head.run(head.setting(0.2, 2, TestHead.arm("a", 0)), clumps);
        assertThat(outcome.reached()).isEqualTo(20);
        assertThat(outcome.missed(Miss.ARM_BUSY)).isEqualTo(30);
        assertThat(outcome.mostTreatable().orElseThrow()).isBetween(20L, 50L);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 7, 4096})
    void doesNotDependOnHowFarItReadsAhead(int readAhead) {
        ReplaySetting setting = head.setting(0.2, 1, TestHead.arm("a", 0), TestHead.arm("b", 40_000))
                .withPerception(new Perception(0.9, List.of(), 0, 0, 0.01, false));
        assertThat(reading(setting, readAhead)).isEqualTo(reading(setting, Replay.Options.USUAL.readAhead()));
    }

    private ReplayOutcome reading(ReplaySetting setting, int readAhead) {
        AnswerBook book = new AnswerBook(setting.tools(), List.of(head.answers()), 0, Long.MAX_VALUE);
        Replay.Options options = new Replay.Options(EarliestDue::new, ActionObserver.NONE, true, readAhead);
        Replay replay = new Replay(setting, plot(3), book, options);
        assertThat(ReplayRun.run(List.of(replay), book, 1)).isTrue();
        return replay.outcome().orElseThrow();
    }

    @Test
    void doesNotDependOnThreadsNorOnWhatElseIsReplayed() {
        ReplaySetting setting = head.setting(0.2, 1, TestHead.arm("a", 0), TestHead.arm("b", 40_000))
                .withPerception(new Perception(0.9, List.of(), 0, 0, 0.01, false));
        List<ReplayOutcome> alone = new ArrayList<>();
        for (long seed = 1; seed <= 6; seed++) {
            AnswerBook book = new AnswerBook(setting.tools(), List.of(head.answers()), 0, Long.MAX_VALUE);
            Replay replay = new Replay(setting.withSeed(seed), plot(seed), book);
            ReplayRun.run(List.of(replay), book, 1);
            alone.add(replay.outcome().orElseThrow());
        }
        AnswerBook book = new AnswerBook(setting.tools(), List.of(head.answers()), 0, Long.MAX_VALUE);
        List<Replay> together = new ArrayList<>();
        for (long seed = 1; seed <= 6; seed++) {
            together.add(new Replay(setting.withSeed(seed), plot(seed), book));
        }
        assertThat(ReplayRun.run(together, book, 3)).isTrue();
        assertThat(together.stream().map(r -> r.outcome().orElseThrow())).isEqualTo(alone);
    }

    private static PlantSource plot(long seed) {
        return new RandomPlot(seed, 500, 8, 1, 0, 0.1);
    }

    @Test
    void isUndecidedWhenTheBudgetOfAnswersIsUsedUp() {
        ReplaySetting setting = head.setting(0.2, 2, TestHead.arm("a", 0));
        AnswerBook book = new AnswerBook(setting.tools(), List.of(head.answers()), 0, 1);
        Replay replay = new Replay(setting, PlantSource.of(TestHead.row(10, 1)), book);
        assertThat(ReplayRun.run(List.of(replay), book, 1)).isFalse();
        assertThat(book.exhausted()).isTrue();
        assertThat(replay.outcome()).isEmpty();
    }
}
