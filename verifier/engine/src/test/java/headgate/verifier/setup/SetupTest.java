package headgate.verifier.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import headgate.api.shape.Body;
import headgate.api.shape.Interval;
import headgate.api.shape.Outline;
import headgate.api.shape.Prism;
import headgate.api.sheet.Reach;
import headgate.api.vocabulary.PostureName;
import headgate.runtime.carriage.Arm;
import headgate.runtime.carriage.Carriage;
import headgate.runtime.cropplan.CropPlan;
import headgate.verifier.check.Case;
import headgate.verifier.check.Cases;
import headgate.verifier.check.Finding;
import headgate.verifier.check.HeadUnderTest;
import headgate.verifier.check.Outcome;
import headgate.verifier.interlock.Claws;
import headgate.verifier.interlock.Interlocks;
import headgate.verifier.rules.clearance.ArmToArm;
import headgate.verifier.rules.rows.EveryLaneHasAnArm;
import headgate.verifier.rules.throughput.KeepsPace;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SetupTest {

    @Test
    void setsMountsOverTheirLanes() {
        Setup setup = Setup.of(Cases.weeding().build());

        assertThat(setup.stations())
                .extracting(Station::label)
                .containsExactly("arm a1 on lane 1", "arm a2 on lane 2", "arm a3 on lane 3", "arm a4 on lane 4");
        assertThat(setup.stations()).extracting(Station::laneOffset).containsOnly(0L);
        assertThat(setup.waiting()).isEmpty();
        assertThat(setup.empty()).isEmpty();
    }

    @Test
    void setsAHeadThatReachesToOneSideBesideItsLane() {
        // Reach y from 0 to 0.3 m: its middle, 0.15 m, goes over the lane; turned, the mount stands on the other side.
        Reach reach = Reach.over(Outline.rectangle(0.1, 0.4, 0.0, 0.3), Interval.ofMetres(-0.6, -0.2));
        Cases cases = Cases.weeding().sheet(b -> {
            var work = b.build().posture(PostureName.WORK).orElseThrow();
            return b.postures(b.build().postures().stream()
                    .map(p -> p.name().equals(PostureName.WORK)
                            ? Cases.posture(PostureName.WORK, work.fixed(), work.moving(), reach)
                            : p)
                    .toList());
        });

        assertThat(Setup.of(cases.build()).stations())
                .extracting(s -> s.mount().y())
                .containsExactly(-900_000L, -400_000L, 100_000L, 600_000L);
        assertThat(Setup.of(cases.turned().build()).stations())
                .extracting(s -> s.mount().y())
                .containsExactly(-600_000L, -100_000L, 400_000L, 900_000L);
        assertThat(Setup.of(cases.turned().build()).stations())
                .extracting(Station::laneOffset)
                .containsOnly(150_000L);
    }

    @Test
    void leavesArmsThatTheCheckDoesNotNeedWithoutAHead() {
        Setup setup = Setup.of(
                Cases.weeding().rows(new CropPlan.Rows(0.5, 2, 0.4, 0.0)).build());

        assertThat(setup.stations()).hasSize(2);
        assertThat(setup.empty()).hasSize(2);
        assertThat(setup.waiting()).isEmpty();
    }

    @Test
    void letsHeadsOfAnotherOperationWaitLifted() {
        HeadUnderTest planter = Cases.planting().head();
        Case weeding = Cases.weeding().rows(new CropPlan.Rows(1.0, 2, 0.4, 0.0)).build();
        List<Case.Mounting> mixed = new ArrayList<>();
        for (Case.Mounting m : weeding.mountings()) {
            boolean front = m.armId().equals("a1") || m.armId().equals("a3");
            mixed.add(new Case.Mounting(m.armId(), front ? m.head() : planter, false, new Case.Duty.Fitted()));
        }

        Setup setup = Setup.of(weeding.withMountings(mixed));

        assertThat(setup.stations()).extracting(s -> s.arm().id()).containsExactly("a1", "a3");
        assertThat(setup.waiting())
                .extracting(Station::label)
                .containsExactly("arm a2, which waits lifted", "arm a4, which waits lifted");
    }

    @Test
    void obeysLanesThatAreGivenByHand() {
        Case weeding = Cases.weeding().rows(new CropPlan.Rows(0.5, 2, 0.4, 0.0)).build();
        List<Case.Mounting> byHand = weeding.mountings().stream()
                .map(m -> new Case.Mounting(
                        m.armId(),
                        m.head(),
                        false,
                        m.armId().equals("a2") ? new Case.Duty.OnLanes(List.of(1)) : new Case.Duty.Fitted()))
                .toList();

        assertThat(Setup.of(weeding.withMountings(byHand)).stations().get(0).label())
                .isEqualTo("arm a2 on lane 1");
    }

    @Test
    void letsArmsOfTwoBeamsShareALane() {
        // Two rows 1 m apart: at -500 mm the rails of a1 and a2 end, at 500 mm those of a3 and a4.
        Case weeding = Cases.weeding().rows(new CropPlan.Rows(1.0, 2, 0.4, 0.0)).build();
        Case shared = weeding.withMountings(weeding.mountings().stream()
                .map(m -> new Case.Mounting(
                        m.armId(),
                        m.head(),
                        false,
                        new Case.Duty.OnLanes(
                                List.of(m.armId().equals("a1") || m.armId().equals("a2") ? 1 : 2))))
                .toList());

        Setup setup = Setup.of(shared);

        assertThat(setup.stations())
                .extracting(Station::label)
                .containsExactly("arm a1 on lane 1", "arm a2 on lane 1", "arm a3 on lane 2", "arm a4 on lane 2");
        assertThat(setup.stations())
                .allSatisfy(s -> assertThat(setup.lanesOf(s)).isEqualTo(0.5));
        assertThat(new ArmToArm().check(shared).get(0).outcome()).isEqualTo(Outcome.PASS);
        assertThat(new EveryLaneHasAnArm().check(shared).get(0).outcome()).isEqualTo(Outcome.PASS);
        // Each arm is asked for half of what one arm alone would be.
        Case alone = weeding.withMountings(weeding.mountings().stream()
                .filter(m -> m.armId().equals("a1") || m.armId().equals("a4"))
                .toList());
        assertThat(asked(shared)).isCloseTo(asked(alone) / 2, within(1e-12));
    }

    private static double asked(Case subject) {
        return new KeepsPace()
                .check(subject).get(0).terms().stream()
                        .filter(t -> t.name().contains("asked to treat"))
                        .mapToDouble(t -> t.measure().value())
                        .findFirst()
                        .orElseThrow();
    }

    @Test
    void actsInTurnOnlyWhereNoSetPointKeepsHeadsApart() {
        // The claws of two arms on one beam want 2 x 490 + 38 mm: with rails that let them, they are set that far
        // apart.
        Case fixed = Claws.cases().build();
        Case movable = Claws.cases()
                .arms(a -> a.withShift(
                        new Interval(a.shift().least() - 20_000, a.shift().most() + 20_000)))
                .build();

        assertThat(Setup.of(fixed).margin().orElseThrow()).isNegative();
        assertThat(Interlocks.of(fixed).all()).hasSize(2);
        assertThat(new ArmToArm().check(fixed)).extracting(Finding::outcome).doesNotContain(Outcome.FAIL);
        assertThat(Setup.of(movable).margin().orElseThrow()).isNotNegative();
        assertThat(Interlocks.of(movable).all()).isEmpty();
    }

    @Test
    void setsLinkedArmsAsOne() {
        // Linked 0.98 m apart, rows 1.0 m apart, and each lane lies 0.1 m inside the reach: each is off by half of 20
        // mm.
        Cases cases = Cases.weeding()
                .rows(new CropPlan.Rows(1.0, 2, 0.4, 0.0))
                .weeds(2.0, 0.1, Optional.of(0.95), Optional.of(0.1))
                .carriage(c -> new Carriage(
                        c.name(),
                        c.serial(),
                        c.beams(),
                        c.arms().stream()
                                .filter(a -> a.id().equals("a1") || a.id().equals("a3"))
                                .map(a -> a.withShift(
                                        a.id().equals("a1")
                                                ? Interval.ofMetres(-0.8, -0.2)
                                                : Interval.ofMetres(0.2, 0.8)))
                                .toList(),
                        c.structure(),
                        c.ground(),
                        c.stopping(),
                        c.turning(),
                        c.wheels(),
                        List.of(new Carriage.Link(
                                "pair",
                                List.of(new Carriage.Link.Member("a1", 0), new Carriage.Link.Member("a3", 980_000)))),
                        c.sensors(),
                        c.errors(),
                        c.stances(),
                        c.stores(),
                        c.drive(),
                        c.energy()));

        assertThat(Setup.of(cases.build()).stations())
                .extracting(s -> s.mount().y())
                .containsExactly(-490_000L, 490_000L);
    }

    @Test
    void keepsArmsOffTheFrame() {
        // A post stands where arm a2 would stand over its row; the reach lets the mount go 50 mm aside.
        Cases cases = Cases.weeding()
                .weeds(2.0, 0.1, Optional.of(0.95), Optional.of(0.1))
                .carriage(c -> new Carriage(
                        c.name(),
                        c.serial(),
                        c.beams(),
                        c.arms(),
                        List.of(new Carriage.Part("post", Body.of(Prism.box(-1.2, -1.0, -0.55, -0.41, 0.0, 1.5)))),
                        c.ground(),
                        c.stopping(),
                        c.turning()));

        long free = Setup.of(Cases.weeding()
                        .weeds(2.0, 0.1, Optional.of(0.95), Optional.of(0.1))
                        .build())
                .stations()
                .get(1)
                .mount()
                .y();
        long beside = Setup.of(cases.build()).stations().get(1).mount().y();

        assertThat(free).isEqualTo(-250_000);
        assertThat(beside).isBetween(-249_999L, -200_000L);
    }

    /** What the set-up finds is looked at again by the rules, which measure gaps instead of forbidden offsets. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4})
    void everyAnswerIsUpheldByTheRules(int seed) {
        Random random = new Random(seed);
        int upheld = 0;
        for (int round = 0; round < 12; round++) {
            Case subject = randomCase(random);

            Setup setup = Setup.of(subject);

            Finding lanes = new EveryLaneHasAnArm().check(subject).get(0);
            assertThat(lanes.outcome() == Outcome.PASS).isEqualTo(setup.servesEveryLane());
            if (!setup.servesEveryLane()) {
                continue;
            }
            for (Station s : setup.stations()) {
                assertThat(s.arm().shift().contains(s.mount().y())).isTrue();
            }
            Finding pairs = new ArmToArm().check(subject).get(0);
            if (setup.margin().orElse(0L) >= 0) {
                assertThat(pairs.outcome()).isEqualTo(Outcome.PASS);
                upheld++;
            }
        }
        assertThat(upheld).isPositive();
    }

    private static Case randomCase(Random random) {
        int arms = 2 + random.nextInt(4);
        List<Arm> rails = new ArrayList<>();
        for (int i = 0; i < arms; i++) {
            double middle = (i - (arms - 1) / 2.0) * 0.4 + (random.nextDouble() - 0.5) * 0.1;
            rails.add(Cases.arm("a" + i, random.nextBoolean() ? "front" : "rear", middle));
        }
        double right = 0.1 + random.nextDouble() * 0.25;
        double left = 0.1 + random.nextDouble() * 0.25;
        double back = random.nextInt(3) == 0 ? -0.9 : -0.05;
        int rows = 1 + random.nextInt(arms);
        double spacing = 0.3 + random.nextInt(5) * 0.05;
        HeadUnderTest other = Cases.weeding().head();
        Case subject = Cases.weeding()
                .carriage(c -> c.withArms(rails))
                .rows(new CropPlan.Rows(spacing, rows, 0.4, 0.0))
                .weeds(2.0, 0.12, Optional.of(0.95), Optional.of(0.1))
                .ground(0.01, 0.0, 0.0)
                .sheet(b -> {
                    Body body = Body.of(
                            Prism.box(-0.05, 0.45, -0.1, 0.1, -0.15, 0.0),
                            Prism.box(back, 0.2, -right, left, -0.15, -0.05));
                    return b.postures(b.build().postures().stream()
                            .map(p -> Cases.posture(p.name(), body, p.moving(), p.region()))
                            .toList());
                })
                .build();
        return subject.withMountings(subject.mountings().stream()
                .map(m -> new Case.Mounting(
                        m.armId(),
                        random.nextInt(3) == 0 ? other : m.head(),
                        random.nextBoolean(),
                        random.nextInt(3) == 0 ? new Case.Duty.AsNeeded() : new Case.Duty.Fitted()))
                .toList());
    }
}
