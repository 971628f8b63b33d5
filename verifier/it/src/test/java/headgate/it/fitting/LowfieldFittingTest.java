package headgate.it.fitting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import headgate.api.shape.Point;
import headgate.it.Checkout;
import headgate.runtime.carriage.Carriage;
import headgate.runtime.carriage.CarriageReader;
import headgate.runtime.cropplan.CropPlanReader;
import headgate.runtime.fitting.Fitting;
import headgate.runtime.fitting.FittingReader;
import headgate.runtime.origin.InvalidFileException;
import headgate.runtime.origin.Loaded;
import headgate.runtime.policy.PolicyReader;
import headgate.sample.gripper.Gripper;
import headgate.sample.planter.PlugPlanter;
import headgate.verifier.check.Case;
import headgate.verifier.check.Edit;
import headgate.verifier.check.Finding;
import headgate.verifier.check.HeadUnderTest;
import headgate.verifier.check.Outcome;
import headgate.verifier.fitting.ChangeOver;
import headgate.verifier.fitting.FittingCase;
import headgate.verifier.fitting.FittingProblems;
import headgate.verifier.fitting.ServedSpacing;
import headgate.verifier.geometry.Gap;
import headgate.verifier.geometry.Occupied;
import headgate.verifier.interlock.Interlock;
import headgate.verifier.interlock.Interlocks;
import headgate.verifier.remedy.LeaveArmsEmpty;
import headgate.verifier.remedy.SetRowSpacing;
import headgate.verifier.remedy.TrimHead;
import headgate.verifier.rules.clearance.ArmToArm;
import headgate.verifier.rules.rows.EveryLaneHasAnArm;
import headgate.verifier.setup.ArmAllowance;
import headgate.verifier.setup.Setup;
import headgate.verifier.setup.Station;
import headgate.verifier.setup.StationSpace;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Lowfield's figures are invented; what is expected of them is worked out by hand beside each test. */
class LowfieldFittingTest {

    private static final Path FOLDER = Checkout.folder().resolve("sample-heads/lowfield/src/main/resources/lowfield");

    private final HeadUnderTest gripper = SheetOnly.head("gripper", new Gripper().sheet());
    private final HeadUnderTest planter = SheetOnly.head("planter", new PlugPlanter().sheet());

    @Test
    void grippersWorkWhilePlantersWaitAndTheTightestPlaceIsBesideTheOutrigger() throws Exception {
        Loaded<Fitting> file = FittingReader.read(FOLDER.resolve("celeriac-60-mixed.json"));
        Case mixed = mixed(file);

        Setup setup = Setup.of(mixed);
        Finding gap = new ArmToArm().check(mixed).get(0);

        assertThat(FittingProblems.of(
                        file,
                        mixed.carriage().value(),
                        mixed.plan().value(),
                        Map.of(
                                "gripper",
                                gripper.sheet().orElseThrow(),
                                "planter",
                                planter.sheet().orElseThrow())))
                .isEmpty();
        assertThat(new EveryLaneHasAnArm().check(mixed).get(0).outcome()).isEqualTo(Outcome.PASS);
        assertThat(setup.stations()).hasSize(6).allMatch(s -> s.head().id().equals("gripper"));
        assertThat(setup.waiting()).extracting(s -> s.arm().id()).containsExactly("front-1", "rear-4");
        // The rails of the planter's outrigger stand out 0.60 m to the left; front-1 waits at the right end of its
        // rail,
        // -1.8 m. The frame of the gripper on front-2, over the row at -0.9 m, stands out 0.18 m.
        assertThat(setup.waiting().get(0).mount().y()).isEqualTo(-1_800_000);
        assertThat(gap.outcome()).isEqualTo(Outcome.PASS);
        // The other planter, on rear-4, is given just as much room beside rear-3.
        assertThat(gap.subject()).contains("waiting lifted", " lifting");
        assertThat(gap.comparison().orElseThrow().measured().value())
                .isCloseTo(-0.9 - 0.18 - (-1.8 + 0.60), within(2e-6));
        // Without that planter the place is not tight any more.
        Finding without = new ArmToArm()
                .check(new LeaveArmsEmpty(List.of("front-1")).apply(mixed))
                .get(0);
        assertThat(without.comparison().orElseThrow().margin())
                .isGreaterThan(gap.comparison().orElseThrow().margin() + 0.1);
    }

    @Test
    void anOverLongHeadFitsOnceItIsTrimmed() throws Exception {
        // Planters on every arm in lettuce at 45 cm: even spread as far as the reach lets them they are too near.
        Case tight = lettuce("lettuce-45-planting.json", planter);

        Finding finding = new ArmToArm().check(tight).get(0);
        List<Edit> trims =
                finding.proposals().stream().filter(TrimHead.class::isInstance).toList();

        assertThat(finding.outcome()).isEqualTo(Outcome.FAIL);
        assertThat(Setup.of(tight).margin().orElseThrow()).isNegative();
        assertThat(trims).hasSize(1);
        assertThat(trims.get(0).text()).startsWith("trim head planter by ").endsWith(" at +y");
        Case trimmed = trims.get(0).apply(tight);
        assertThat(new ArmToArm().check(trimmed).get(0).outcome()).isEqualTo(Outcome.PASS);
        assertThat(Setup.of(trimmed).margin().orElseThrow()).isNotNegative();
    }

    @Test
    void changesFrom50To37Point5CentimetresInOneStep() throws Exception {
        // Eight rows: the outermost mount goes 3.5 x 125 mm = 437.5 mm. At 0.5 m/s and 2 m/s2: L / v + v / a.
        Case at50 = SetRowSpacing.to(0.5).apply(lettuce("lettuce-45-weeding.json", gripper));

        ServedSpacing served = ServedSpacing.of(at50, List.of(0.375)).get(0);

        assertThat(served.isServed(at50)).isTrue();
        assertThat(served.setup().orElseThrow().stations())
                .extracting(s -> s.mount().y())
                .containsExactly(
                        -1_312_500L, -937_500L, -562_500L, -187_500L, 187_500L, 562_500L, 937_500L, 1_312_500L);
        ChangeOver change = served.fromPlan().orElseThrow();
        assertThat(change.steps()).hasSize(1);
        assertThat(change.steps().get(0).moves()).hasSize(8);
        assertThat(change.steps().get(0).time()).isCloseTo(0.4375 / 0.5 + 0.5 / 2, within(1e-9));
        assertThat(leastMargin(at50, change)).isGreaterThan(0.1);
    }

    /**
     * The least margin of any two lifted arms during a change of one step, m, by the clearance engine. The way of each arm
     * is worked out here, not taken from the plan. From one look to the next no gap shrinks by more than twice the top
     * speed lets it, so nothing happens between looks that the last margin does not cover.
     */
    private static double leastMargin(Case subject, ChangeOver change) {
        ChangeOver.Step step = change.steps().get(0);
        double k = subject.policy().value().coverageFactor().value();
        List<Station> arms = Setup.of(subject).stations();
        double worst = Double.POSITIVE_INFINITY;
        double left = 0;
        for (double t = 0; t <= step.time(); t += Math.max(left / (2 * 0.5), 0.001)) {
            List<Occupied> spaces = new ArrayList<>();
            for (Station s : arms) {
                ChangeOver.Move move = step.moves().stream()
                        .filter(m -> m.arm().equals(s.arm().id()))
                        .findFirst()
                        .orElseThrow();
                double way = (move.to() - move.from()) / 1e6;
                long y = move.from() + Math.round(Math.signum(way) * gone(Math.abs(way), t) * 1e6);
                spaces.add(StationSpace.waiting(
                        s.arm(),
                        Optional.of(s.sheet()),
                        s.turned(),
                        new Point(s.mount().x(), y)));
            }
            left = Double.POSITIVE_INFINITY;
            for (int i = 0; i < arms.size(); i++) {
                for (int j = i + 1; j < arms.size(); j++) {
                    double required = subject.policy().value().armGap().value()
                            + ArmAllowance.of(arms.get(i), k).total()
                            + ArmAllowance.of(arms.get(j), k).total();
                    double gap = Gap.between(spaces.get(i), spaces.get(j))
                            .orElseThrow()
                            .metres();
                    left = Math.min(left, gap - required);
                }
            }
            worst = Math.min(worst, left);
        }
        return worst;
    }

    /** How far an arm has gone after a time: up to 0.5 m/s at 2 m/s2, and down again. Short ways never reach 0.5 m/s. */
    private static double gone(double way, double time) {
        double peak = Math.min(0.5, Math.sqrt(2 * way));
        double whole = way / peak + peak / 2;
        double up = peak / 2;
        double t = Math.max(0, Math.min(whole, time));
        if (t < up) {
            return t * t;
        }
        return t > whole - up ? way - (whole - t) * (whole - t) : peak * (t - up / 2);
    }

    @Test
    void twoGrippersOnNeighbouringRowsOfOneBeamActInTurn() throws Exception {
        // By hand, front-1 and front-2 weed lettuce rows 1 and 2, 450 mm apart. Their frames, 180 mm wide to either
        // side,
        // keep 90 mm; the weed that they hold, round with a radius of 80 mm, goes out to 130 mm. A polygon of 16 sides
        // about it has corners at 80 mm / cos(pi / 16). No set-point helps: the lane is as wide as the reach.
        Case base = lettuce("lettuce-45-weeding.json", gripper);
        Case byHand = base.withMountings(base.mountings().stream()
                .map(m -> switch (m.armId()) {
                    case "front-1" -> new Case.Mounting(m.armId(), m.head(), false, new Case.Duty.OnLanes(List.of(1)));
                    case "front-2" -> new Case.Mounting(m.armId(), m.head(), false, new Case.Duty.OnLanes(List.of(2)));
                    default -> m;
                })
                .toList());

        List<Finding> findings = new ArmToArm().check(byHand);

        // Four rear arms and two front ones are left for six rows, so two of the rear beam are neighbours as well.
        assertThat(Interlocks.of(byHand).all())
                .extracting(Interlock::first, Interlock::second)
                .containsExactly(tuple("front-1", "front-2"), tuple("rear-1", "rear-2"));
        assertThat(findings)
                .extracting(Finding::outcome)
                .containsExactly(Outcome.PASS, Outcome.CAUTION, Outcome.CAUTION);
        assertThat(findings.get(1).comparison().orElseThrow().measured().value())
                .isCloseTo(0.45 - 2 * (0.13 + 0.08 / Math.cos(Math.PI / 16)), within(3e-6));
        // Left to the program, front and rear arms take turns from row to row, and nothing need wait.
        assertThat(Interlocks.of(base).all()).isEmpty();
    }

    private Case mixed(Loaded<Fitting> file) throws InvalidFileException {
        return FittingCase.of(
                file.value(),
                Map.of("gripper", gripper, "planter", planter),
                carriage(),
                CropPlanReader.read(FOLDER.resolve(file.value().cropPlan())),
                PolicyReader.builtIn());
    }

    private static Case lettuce(String plan, HeadUnderTest head) throws InvalidFileException {
        return Case.ofOneHead(head, carriage(), CropPlanReader.read(FOLDER.resolve(plan)), PolicyReader.builtIn());
    }

    private static Loaded<Carriage> carriage() throws InvalidFileException {
        return CarriageReader.read(FOLDER.resolve("carriage.json"));
    }
}
