package headgate.verifier.rules.clearance;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.api.shape.Body;
import headgate.api.shape.Interval;
import headgate.api.shape.Outline;
import headgate.api.shape.Point;
import headgate.api.shape.Point3;
import headgate.api.shape.Prism;
import headgate.api.sheet.HeadSheet;
import headgate.api.sheet.Posture;
import headgate.api.sheet.Reach;
import headgate.api.vocabulary.PostureName;
import headgate.runtime.carriage.Arm;
import headgate.runtime.carriage.Carriage;
import headgate.verifier.check.Case;
import headgate.verifier.check.Cases;
import headgate.verifier.check.Comparison;
import headgate.verifier.check.Finding;
import headgate.verifier.geometry.RandomBody;
import headgate.verifier.setup.Setup;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What must hold of the whole rule for every head, over explicit seeds: its gap and its required gap move only the way they
 * must. Where the set-points could hide it, the rails have no play. Interlocks are switched off, so that the one finding
 * tells all.
 */
class ArmToArmPropertiesTest {

    private static final int ROUNDS = 4;

    /** A head made at random: fixed bodies that differ from posture to posture, a moving body, a reach. */
    private record Head(List<Body> fixed, Body moving, Outline reach, Interval heights) {

        static Head of(SplittableRandom random) {
            List<Body> fixed = new ArrayList<>();
            for (int i = 0; i < 3; i++) {
                fixed.add(RandomBody.of(random, false, 1).body());
            }
            long low = random.nextLong(-600_000, -450_000);
            return new Head(
                    fixed,
                    RandomBody.of(random, false, 1).body(),
                    over(RandomBody.plan(random, false).outline().vertices()),
                    new Interval(low, low + random.nextLong(200_000, 300_000)));
        }

        /** A reach that holds these points, and the whole of the lane under an arm without play. */
        private static Outline over(List<Point> points) {
            List<Point> all = new ArrayList<>(points);
            all.addAll(Outline.rectangle(0.1, 0.4, -0.12, 0.12).vertices());
            return Outline.hullOf(all);
        }

        Head with(int posture, Body more) {
            List<Body> changed = new ArrayList<>(fixed);
            changed.set(posture, fixed.get(posture).and(more));
            return new Head(changed, moving, reach, heights);
        }

        Head reaching(Outline outline, Interval z) {
            return new Head(fixed, moving, outline, z);
        }

        Head mirrored() {
            return new Head(
                    fixed.stream().map(ArmToArmPropertiesTest::mirrored).toList(),
                    ArmToArmPropertiesTest.mirrored(moving),
                    ArmToArmPropertiesTest.mirrored(reach),
                    heights);
        }

        HeadSheet.Builder sheet(HeadSheet.Builder builder) {
            Reach ready = Reach.at(builder.build().readyToolPoint());
            List<Posture> postures = List.of(
                    Cases.posture(PostureName.STOWED, fixed.get(0), moving, ready),
                    Cases.posture(PostureName.READY, fixed.get(1), moving, ready),
                    Cases.posture(PostureName.WORK, fixed.get(2), moving, Reach.over(reach, heights)));
            return builder.postures(postures);
        }
    }

    private static Cases of(Head head) {
        return Cases.weeding()
                .sheet(head::sheet)
                .policy(p -> Cases.withArmsInTurn(p, 1))
                .arms(ArmToArmPropertiesTest::withoutPlay);
    }

    private static Arm withoutPlay(Arm arm) {
        return arm.withShift(Interval.at((arm.shift().least() + arm.shift().most()) / 2));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void swappingMirroringAndTranslatingChangeNothing(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < ROUNDS; i++) {
            Head head = Head.of(random);
            Comparison as = check(of(head).build());
            long x = random.nextLong(-2_000_000, 2_000_001);

            assertThat(check(of(head).carriage(c -> c.withArms(reversed(c.arms())))
                            .build()))
                    .as("swapped")
                    .isEqualTo(as);
            assertThat(check(of(head.mirrored())
                            .carriage(c -> c.withArms(c.arms().stream()
                                    .map(ArmToArmPropertiesTest::mirrored)
                                    .toList()))
                            .build()))
                    .as("mirrored")
                    .isEqualTo(as);
            assertThat(check(of(head).carriage(c -> moved(c, x)).build()))
                    .as("translated")
                    .isEqualTo(as);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {4, 5, 6})
    void moreMaterialInAnyPostureNeverWidensTheGap(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < ROUNDS; i++) {
            Head head = Head.of(random);
            double margin = check(of(head).build()).margin();
            for (int posture = 0; posture < 3; posture++) {
                // Above the plate: what hangs lower while ready leaves fewer heights to work at, which may well widen a
                // gap.
                Body more = RandomBody.of(random, false, 1).body().shifted(new Point3(0, 0, 300_000));

                assertThat(check(of(head.with(posture, more)).build()).margin()).isLessThanOrEqualTo(margin);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {7, 8, 9})
    void aWiderReachOrLiftNeverWidensTheGap(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < ROUNDS; i++) {
            Head head = Head.of(random);
            Comparison as = check(of(head).build());
            Outline wider = Outline.hullOf(Stream.concat(
                            head.reach().vertices().stream(),
                            Stream.of(
                                    new Point(random.nextLong(-400_000, 400_001), random.nextLong(-400_000, 400_001))))
                    .toList());

            assertThat(check(of(head.reaching(wider, head.heights())).build())
                            .measured()
                            .value())
                    .isLessThanOrEqualTo(as.measured().value());
            assertThat(check(of(head).arms(a -> a.withLift(new Interval(
                                            a.lift().least(), a.lift().most() + random.nextLong(0, 300_001))))
                                    .build())
                            .measured()
                            .value())
                    .isLessThanOrEqualTo(as.measured().value());
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {10, 11})
    void aTighterToleranceAsksForLessAndLeavesTheGapAsItIs(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < ROUNDS; i++) {
            Head head = Head.of(random);
            Arm.Tolerance loose = new Arm.Tolerance(0.004, 0.003, 0.002, 0.01, 50_000);
            List<Arm.Tolerance> tighter = List.of(
                    new Arm.Tolerance(0.003, 0.003, 0.002, 0.01, 50_000),
                    new Arm.Tolerance(0.004, 0.002, 0.002, 0.01, 50_000),
                    new Arm.Tolerance(0.004, 0.003, 0.001, 0.01, 50_000),
                    new Arm.Tolerance(0.004, 0.003, 0.002, 0.008, 50_000),
                    new Arm.Tolerance(0.004, 0.003, 0.002, 0.01, 60_000));
            Comparison as = check(of(head).arms(with(loose)).build());
            for (Arm.Tolerance tight : tighter) {
                Comparison then = check(of(head).arms(with(tight)).build());

                assertThat(then.measured()).isEqualTo(as.measured());
                assertThat(then.limit().value()).isLessThan(as.limit().value());
            }
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {12, 13, 14})
    void armsThatAreLinkedCanBeSetNoBetterThanFreeOnes(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < ROUNDS; i++) {
            Head head = Head.of(random);
            Cases free = Cases.weeding().sheet(head::sheet).policy(p -> Cases.withArmsInTurn(p, 1));
            long alone = margin(Setup.of(free.build()));
            Cases linked = free.carriage(c -> linked(c, "a1", "a3", 1_000_000));

            assertThat(margin(Setup.of(linked.build()))).isLessThanOrEqualTo(alone);
            // Linked as far apart as they stand anyway, without play: nothing changes.
            assertThat(check(of(head).carriage(c -> linked(c, "a1", "a3", 1_000_000))
                            .build()))
                    .isEqualTo(check(of(head).build()));
        }
    }

    private static long margin(Setup setup) {
        assertThat(setup.servesEveryLane()).isTrue();
        return setup.margin().orElse(Long.MAX_VALUE);
    }

    private static UnaryOperator<Arm> with(Arm.Tolerance tolerance) {
        return a -> new Arm(
                a.id(),
                a.beam(),
                a.shift(),
                a.lift(),
                a.shiftMotion(),
                a.liftMotion(),
                tolerance,
                a.payload(),
                a.plate(),
                a.connectors(),
                a.supply(),
                a.body());
    }

    private static Carriage linked(Carriage c, String one, String other, long apart) {
        Carriage.Link link = new Carriage.Link(
                "pair", List.of(new Carriage.Link.Member(one, 0), new Carriage.Link.Member(other, apart)));
        return new Carriage(
                c.name(),
                c.serial(),
                c.beams(),
                c.arms(),
                c.structure(),
                c.ground(),
                c.stopping(),
                c.turning(),
                c.wheels(),
                List.of(link),
                c.sensors(),
                c.errors(),
                c.stances(),
                c.stores(),
                c.drive(),
                Optional.empty());
    }

    private static Carriage moved(Carriage c, long x) {
        return new Carriage(
                c.name(),
                c.serial(),
                c.beams().stream()
                        .map(b -> new Carriage.Beam(b.id(), b.x() + x))
                        .toList(),
                c.arms(),
                c.structure(),
                c.ground(),
                c.stopping(),
                c.turning());
    }

    private static Arm mirrored(Arm arm) {
        return arm.withShift(new Interval(-arm.shift().most(), -arm.shift().least()));
    }

    private static List<Arm> reversed(List<Arm> arms) {
        List<Arm> turned = new ArrayList<>(arms);
        Collections.reverse(turned);
        return turned;
    }

    private static Body mirrored(Body body) {
        return Body.of(body.prisms().stream()
                .map(p -> Prism.of(mirrored(p.outline()), p.height()))
                .toList());
    }

    private static Outline mirrored(Outline outline) {
        return Outline.of(
                outline.vertices().stream().map(v -> new Point(v.x(), -v.y())).toList());
    }

    private static Comparison check(Case subject) {
        List<Finding> findings = new ArmToArm().check(subject);
        assertThat(findings).hasSize(1);
        return findings.get(0).comparison().orElseThrow();
    }
}
