package headgate.verifier.rules.clearance;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.api.shape.Point3;
import headgate.api.shape.Prism;
import headgate.runtime.carriage.Carriage;
import headgate.runtime.carriage.Stance;
import headgate.verifier.check.Case;
import headgate.verifier.check.Cases;
import headgate.verifier.check.Edit;
import headgate.verifier.check.Finding;
import headgate.verifier.check.Outcome;
import headgate.verifier.check.Witness;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/**
 * Hand arithmetic: a head is 150 mm wide to either side of its mount, stands out 450 mm in front and 50 mm behind. Stowed, it
 * hangs 200 mm down, with its tool anywhere 600 mm. The arm's own body stands 300 mm over the mount. Two arms need 30 + 2 x 4 =
 * 38 mm between them, an arm and the frame 25 + 4 = 29 mm. The beam is 2.4 m wide and ends at 1.5 and 1.6 m. The ground moves by
 * 20 mm. There are no wheels unless a test puts some.
 */
class TransportClearsTest {

    private static final int GAP = 0;
    private static final int WIDTH = 1;
    private static final int HEIGHT = 2;
    private static final int GROUND = 3;

    @Test
    void passesWithGapWidthHeightAndGround() {
        List<Finding> findings = check(road());

        assertThat(findings)
                .extracting(Finding::outcome)
                .containsOnly(Outcome.PASS)
                .hasSize(4);
        // Lifted to 950 mm, 1 mm too high at most, the arm's body ends at 1251 mm, 249 mm under the beam.
        assertThat(measured(findings, GAP)).isEqualTo(0.249);
        assertThat(measured(findings, WIDTH)).isEqualTo(2.4);
        assertThat(measured(findings, HEIGHT)).isEqualTo(1.6);
        // Nothing holds the tools: 950 - 600 - 20 mm.
        assertThat(measured(findings, GROUND)).isEqualTo(0.330);
        // Six pairs of arms, and four arms against one beam; on the road and on the way to it.
        assertThat(findings.get(GAP).examined()).isEqualTo(20);
    }

    @Test
    void holdsTheGapOfTwoArmsExactlyAtTheLimit() {
        // -750 + 150 + 38 + 150 = -412 mm.
        List<Finding> findings = check(road(latched("a3", 0, -0.412, 0.95)));

        assertThat(findings.get(GAP).outcome()).isEqualTo(Outcome.PASS);
        assertThat(measured(findings, GAP)).isEqualTo(limit(findings, GAP)).isEqualTo(0.038);
    }

    @Test
    void failsWhereAStepBringsTwoArmsTooNear() {
        Stance stance = new Stance(
                "road",
                Stance.Use.TRANSPORT,
                Map.of(),
                List.of(),
                List.of(new Stance.Step("shift a3", List.of(latched("a3", 0, -0.412001, 0.95)), List.of())),
                List.of(),
                0);

        Finding finding = check(stance).get(GAP);

        assertThat(finding.outcome()).isEqualTo(Outcome.FAIL);
        assertThat(finding.message())
                .contains(
                        "arm a1 with head test-head 1.0.0 and arm a3 with head test-head 1.0.0 in the step \"shift a3\"");
        assertThat(finding.comparison().orElseThrow().measured().value()).isEqualTo(0.037999);
        assertThat(finding.terms()).extracting(t -> t.name()).contains("backlash of arm a1", "backlash of arm a3");
        assertThat(finding.witness().orElseThrow().fold()).contains(new Witness.Fold("road", 1));
        assertThat(check(stance).get(WIDTH).witness().orElseThrow().fold()).contains(new Witness.Fold("road", 2));
    }

    @Test
    void latchingHelpsWhereALooseToolIsTooLow() {
        // Loose 800 - 600 - 20 = 180 mm, stowed 800 - 200 - 20 = 580 mm.
        Stance loose = road(new Stance.Pose("a1", Point3.ofMetres(0, -0.75, 0.8), List.of(), false));

        Finding finding = check(loose).get(GROUND);

        assertThat(finding.outcome()).isEqualTo(Outcome.FAIL);
        assertThat(finding.comparison().orElseThrow().measured().value()).isEqualTo(0.180);
        assertThat(finding.proposals())
                .extracting(Edit::text)
                .containsExactly(
                        "latch the heads of arm a1 for stance \"road\"",
                        "hold the arms 70 mm higher in stance \"road\"");
        for (Edit edit : finding.proposals()) {
            assertThat(new TransportClears()
                            .check(edit.apply(with(loose)))
                            .get(GROUND)
                            .outcome())
                    .isEqualTo(Outcome.PASS);
        }
    }

    @Test
    void theSuspensionTakesGroundAwayOnTheRoadOnly() {
        // 330 - 80 = 250 mm, exactly the limit; a step only asks for 50 mm.
        Stance stance = new Stance("road", Stance.Use.TRANSPORT, Map.of(), List.of(), List.of(), List.of(), 0.080);
        Stance softer = new Stance("road", Stance.Use.TRANSPORT, Map.of(), List.of(), List.of(), List.of(), 0.080001);

        assertThat(measured(check(stance), GROUND)).isEqualTo(limit(check(stance), GROUND));
        assertThat(check(stance).get(GROUND).outcome()).isEqualTo(Outcome.PASS);
        assertThat(check(softer).get(GROUND).outcome()).isEqualTo(Outcome.FAIL);
    }

    @Test
    void aQuarterTurnLaysTheHeadAcross() {
        // Turned to the left, the front of the head stands out 450 mm to the left: 1200 + 1350 + 450 = 3000 mm.
        List<Finding> findings = check(road(turned("a4", 1.35, Stance.Axis.Z, 1)));
        assertThat(measured(findings, WIDTH)).isEqualTo(limit(findings, WIDTH)).isEqualTo(3.0);
        assertThat(findings.get(WIDTH).outcome()).isEqualTo(Outcome.PASS);

        Stance wider = road(turned("a4", 1.350001, Stance.Axis.Z, 1));
        Finding tooWide = check(wider).get(WIDTH);
        assertThat(tooWide.outcome()).isEqualTo(Outcome.FAIL);
        assertThat(tooWide.proposals()).extracting(Edit::text).containsExactly("trim head test-head by 1 mm at +x");
        assertThat(new TransportClears()
                        .check(tooWide.proposals().get(0).apply(with(wider)))
                        .get(WIDTH)
                        .outcome())
                .isEqualTo(Outcome.PASS);
    }

    @Test
    void aTippedHeadHangsByItsFront() {
        // Turned forward and down, what was 450 mm in front hangs 450 mm under the mount: 720 - 450 - 20 = 250 mm.
        Stance stance = road(new Stance.Pose(
                "a4", Point3.ofMetres(-1.2, 0.75, 0.72), List.of(new Stance.Turn(Stance.Axis.Y, 1)), true));

        assertThat(measured(check(stance), GROUND)).isEqualTo(0.250);
    }

    @Test
    void failsWhereTwoArmsAreTooNearOnTheWayOnly() {
        // a3 comes to rest in front of a1, 650 mm from beam to beam: 650 - 50 - 450 mm apart. On its straight way from
        // (0, 250) to
        // (650, -750) mm it would pass a1's front left corner; sideways first, it would go through it.
        assertThat(check(road(pose("a3", 0.65, -0.75))).get(GAP).message())
                .startsWith(
                        "Folding to stance \"road\", between arm a1 with head test-head 1.0.0 and arm a3 with head test-head"
                                + " 1.0.0 on the way to the road there are only ");
        Finding sideways = check(road(pose("a3", 0.65, -0.75, Stance.Move.Y))).get(GAP);
        assertThat(sideways.outcome()).isEqualTo(Outcome.FAIL);
        assertThat(sideways.comparison().orElseThrow().measured().value()).isZero();
        assertThat(sideways.witness().orElseThrow().fold()).contains(new Witness.Fold("road", 1));
        // Forward first, it never comes nearer than where it ends.
        Finding forward = check(road(pose("a3", 0.65, -0.75, Stance.Move.X))).get(GAP);
        assertThat(forward.outcome()).isEqualTo(Outcome.PASS);
        assertThat(forward.comparison().orElseThrow().measured().value()).isEqualTo(0.150);
    }

    @Test
    void holdsTheGapOnTheWayExactlyAtTheLimit() {
        // Forward by 538 mm and then shifted in front of a1: 538 - 50 - 450 = 38 mm, which is required.
        List<Finding> findings = check(road(pose("a3", 0.538, -0.75, Stance.Move.X)));
        assertThat(findings.get(GAP).outcome()).isEqualTo(Outcome.PASS);
        assertThat(measured(findings, GAP)).isEqualTo(limit(findings, GAP)).isEqualTo(0.038);

        Stance near = road(pose("a3", 0.537999, -0.75, Stance.Move.X));
        assertThat(check(near).get(GAP).outcome()).isEqualTo(Outcome.FAIL);

        // Past a1 on the straight way sideways, to 500 mm further on: the same gap, and nowhere in a step.
        Stance.Pose past = pose("a3", 0.538, -1.25, Stance.Move.X);
        assertThat(measured(check(road(past)), GAP)).isEqualTo(0.038);
        Stance.Pose tooNear = pose("a3", 0.537999, -1.25, Stance.Move.X);
        Finding finding = check(road(tooNear)).get(GAP);
        assertThat(finding.outcome()).isEqualTo(Outcome.FAIL);
        assertThat(finding.message()).contains("on the way to the road there are only");
    }

    @Test
    void aTurnSweepsWhatIsBesideIt() {
        // A quarter turn about z lays the front of a3's head, 450 mm, across to the left; a1 is on its right. Half a
        // turn may go
        // either way, and so passes over a1's place: hypot(450, 150) = 474 mm, and from mount to mount there are 640 -
        // 150 mm.
        Point3 place = Point3.ofMetres(0, -0.11, 0.95);
        Stance quarter = road(new Stance.Pose("a3", place, List.of(new Stance.Turn(Stance.Axis.Z, 1)), true));
        Stance half = road(new Stance.Pose("a3", place, List.of(new Stance.Turn(Stance.Axis.Z, 2)), true));

        assertThat(check(quarter).get(GAP).outcome()).isEqualTo(Outcome.PASS);
        Finding swept = check(half).get(GAP);
        assertThat(swept.outcome()).isEqualTo(Outcome.FAIL);
        assertThat(swept.message()).contains("on the way to the road");
        // 490 - 474.3 mm, less up to 0.22 % of the radius.
        assertThat(swept.comparison().orElseThrow().measured().value()).isBetween(0.0146, 0.0158);
    }

    @Test
    void turnsAfterItHasGoneAwayAreClearOfWhatWasThere() {
        // The same half turn 400 mm further forward, turned there and not before.
        Point3 place = Point3.ofMetres(0.8, -0.11, 0.95);
        List<Stance.Turn> half = List.of(new Stance.Turn(Stance.Axis.Z, 2));
        List<Stance.Move> goThenTurn = List.of(Stance.Move.X, Stance.Move.Y, Stance.Move.TURN);
        List<Stance.Move> turnThenGo = List.of(Stance.Move.Y, Stance.Move.TURN, Stance.Move.X);

        assertThat(check(road(new Stance.Pose("a3", place, half, true, goThenTurn)))
                        .get(GAP)
                        .outcome())
                .isEqualTo(Outcome.PASS);
        assertThat(check(road(new Stance.Pose("a3", place, half, true, turnThenGo)))
                        .get(GAP)
                        .outcome())
                .isEqualTo(Outcome.FAIL);
    }

    @Test
    void theGroundIsClearedOnTheWayToo() {
        // In half a turn about y what stands out 450 mm in front and 150 mm under the mount passes underneath,
        // hypot(450, 150) = 474
        // mm away and up to 0.22 % more: 750 - 475 - 20 mm are enough for a step, and 540 - 475 - 20 = 45 mm are not.
        assertThat(onTheWayOver(0.75).outcome()).isEqualTo(Outcome.PASS);
        Finding low = onTheWayOver(0.54);
        assertThat(low.outcome()).isEqualTo(Outcome.FAIL);
        assertThat(low.message()).startsWith("On the way to the step \"tip\" arm a4");
        assertThat(low.comparison().orElseThrow().limit().value()).isEqualTo(0.050);
    }

    /** Tips a4 over where it is, then lifts it up again for the road. */
    private static Finding onTheWayOver(double height) {
        List<Stance.Turn> over = List.of(new Stance.Turn(Stance.Axis.Y, 2));
        Stance.Pose tipped =
                new Stance.Pose("a4", Point3.ofMetres(-1.2, 0.75, height), over, true, List.of(Stance.Move.Z));
        Stance.Pose up = new Stance.Pose("a4", Point3.ofMetres(-1.2, 0.75, 1.0), over, true);
        return check(new Stance(
                        "road",
                        Stance.Use.TRANSPORT,
                        Map.of(),
                        List.of(up),
                        List.of(new Stance.Step("tip", List.of(tipped), List.of())),
                        List.of(),
                        0))
                .get(GROUND);
    }

    @Test
    void aPartOfTheFrameThatMovesIsMetOnItsWay() {
        // A leg that swings past a1's front, from 1 m to its right to 1 m to its left, touches nothing at either end.
        Carriage.Part beam = Cases.part("beam", Prism.box(-0.05, 0.05, -1.2, 1.2, 1.5, 1.6));
        Carriage.Part leg = Cases.part("leg", Prism.box(0.2, 0.3, -1.75, -1.65, 0.0, 1.5));
        Carriage.Part moved = Cases.part("leg", Prism.box(0.2, 0.3, 1.65, 1.75, 0.0, 1.5));
        Stance still = new Stance("road", Stance.Use.TRANSPORT, Map.of(), List.of(), List.of(), List.of(), 0);
        Stance swung = new Stance("road", Stance.Use.TRANSPORT, Map.of(), List.of(), List.of(), List.of(moved), 0);

        Finding passes = check(still, c -> c.withStructure(List.of(beam, leg))).get(GAP);
        Finding fails = check(swung, c -> c.withStructure(List.of(beam, leg))).get(GAP);

        assertThat(passes.outcome()).isEqualTo(Outcome.PASS);
        assertThat(fails.outcome()).isEqualTo(Outcome.FAIL);
        assertThat(fails.message()).contains("and leg on the way to the road there are only 0 mm");
    }

    @Test
    void armsThatAreTooNearParkedAreLeftToAnotherRuleUntilTheyMove() {
        // Heads on a1 and a3 are 700 mm apart, others less, and the policy wants 900 mm: no news of the road.
        Stance still = road();
        assertThat(check(still, c -> c, 0.9).get(GAP).outcome()).isEqualTo(Outcome.PASS);
        // But as a3 moves it is looked at.
        assertThat(check(road(pose("a3", 0.0, 0.2)), c -> c, 0.9).get(GAP).outcome())
                .isEqualTo(Outcome.FAIL);
    }

    @Test
    void holdsWidthInATurnedFittingExactlyAtTheLimit() {
        // Fitted turned, the front of a head is at the rear: after a quarter to the left it stands out 450 mm to the
        // right.
        // 1500 mm to either side is allowed in all, and the beam is 1200 mm wide to the left: -1350 - 450 = -1800 mm.
        Stance fits = road(new Stance.Pose(
                "a1", Point3.ofMetres(0, -1.35, 0.95), List.of(new Stance.Turn(Stance.Axis.Z, 1)), true));
        Stance wide = road(new Stance.Pose(
                "a1", Point3.ofMetres(0, -1.350001, 0.95), List.of(new Stance.Turn(Stance.Axis.Z, 1)), true));

        Case turned = turned(fits);
        List<Finding> findings = new TransportClears().check(turned);
        assertThat(measured(findings, WIDTH)).isEqualTo(limit(findings, WIDTH)).isEqualTo(3.0);
        assertThat(findings.get(WIDTH).outcome()).isEqualTo(Outcome.PASS);
        Case tooWide = turned(wide);
        Finding finding = new TransportClears().check(tooWide).get(WIDTH);
        assertThat(finding.outcome()).isEqualTo(Outcome.FAIL);
        assertThat(finding.proposals()).extracting(Edit::text).containsExactly("trim head test-head by 1 mm at +x");
        assertThat(new TransportClears()
                        .check(finding.proposals().get(0).apply(tooWide))
                        .get(WIDTH)
                        .outcome())
                .isEqualTo(Outcome.PASS);
    }

    private static Case turned(Stance stance) {
        return Cases.weeding()
                .sheet(b -> b.forces(ArmToArmTest.NO_FORCE))
                .carriage(c -> c.withStances(List.of(stance)).withWheels(List.of()))
                .turned()
                .build();
    }

    @Test
    void holdsHeightAndGroundExactlyAtTheLimit() {
        // 3700 + 300 = 4000 mm; stowed, 470 - 200 - 20 = 250 mm.
        List<Finding> high = check(road(latched("a1", 0.5, -0.75, 3.7)));
        assertThat(measured(high, HEIGHT)).isEqualTo(limit(high, HEIGHT)).isEqualTo(4.0);
        assertThat(high.get(HEIGHT).outcome()).isEqualTo(Outcome.PASS);
        assertThat(check(road(latched("a1", 0.5, -0.75, 3.700001))).get(HEIGHT).outcome())
                .isEqualTo(Outcome.FAIL);

        List<Finding> low = check(road(latched("a1", 0.5, -0.75, 0.47)));
        assertThat(measured(low, GROUND)).isEqualTo(limit(low, GROUND)).isEqualTo(0.25);
        assertThat(low.get(GROUND).outcome()).isEqualTo(Outcome.PASS);
        assertThat(check(road(latched("a1", 0.5, -0.75, 0.469999))).get(GROUND).outcome())
                .isEqualTo(Outcome.FAIL);
    }

    @Test
    void wheelsTakePartByThemselves() {
        // Set 1440 mm to either side for the plan, tyres 120 mm wide: 2 (1440 + 60) = 3000 mm, which is allowed.
        List<Finding> limit = check(road(), c -> c.withWheels(wheelsAt(1.44)));
        assertThat(measured(limit, WIDTH)).isEqualTo(3.0);
        assertThat(limit.get(WIDTH).outcome()).isEqualTo(Outcome.PASS);
        List<Finding> wide = check(road(), c -> c.withWheels(wheelsAt(1.440001)));
        assertThat(wide.get(WIDTH).outcome()).isEqualTo(Outcome.FAIL);
        assertThat(wide.get(WIDTH).message()).contains("from wheel right to wheel left");
        // A stance may draw them in; then the beam, 2400 mm, is widest.
        Stance drawnIn = new Stance(
                "road",
                Stance.Use.TRANSPORT,
                Map.of(),
                List.of(),
                List.of(),
                List.of(),
                Map.of("right", -1_000_000L, "left", 1_000_000L),
                0);
        List<Finding> narrow = check(drawnIn, c -> c.withWheels(wheelsAt(1.440001)));
        assertThat(measured(narrow, WIDTH)).isEqualTo(2.4);
        // Folded in front of the wheel's axle, a head that is carried low meets it: 650 mm to the tyre, and it reaches
        // 300 + 450.
        Finding met = check(road(latched("a1", 0.3, -1.3, 0.7)), c -> c.withWheels(wheelsAt(1.44)))
                .get(GAP);
        assertThat(met.outcome()).isEqualTo(Outcome.FAIL);
        assertThat(met.message()).contains(" and wheel right on the road there are only 0 mm");
    }

    private static List<Carriage.Wheel> wheelsAt(double y) {
        return List.of(Cases.wheel("right", -y, -y), Cases.wheel("left", y, y));
    }

    @Test
    void theFrameMayBeTooWideByItself() {
        Carriage.Part wide = Cases.part("beam", Prism.box(-0.05, 0.05, -1.6, 1.6, 1.5, 1.6));
        Stance stance = new Stance("road", Stance.Use.TRANSPORT, Map.of(), List.of(), List.of(), List.of(wide), 0);

        assertThat(check(stance).get(WIDTH).message())
                .isEqualTo(
                        "On the road the carriage is 3200 mm wide, from beam to beam, where only 3000 mm is allowed; the"
                                + " frame alone is too wide.");
    }

    @Test
    void failsWhereAnArmStandsTooHigh() {
        // 3750 + 300 = 4050 mm.
        List<Finding> findings = check(road(latched("a1", 0.5, -0.75, 3.75)));

        assertThat(findings.get(HEIGHT).outcome()).isEqualTo(Outcome.FAIL);
        assertThat(measured(findings, HEIGHT)).isEqualTo(4.05);
    }

    @Test
    void undecidedWithoutAStanceForTheRoad() {
        List<Finding> findings = new TransportClears()
                .check(Cases.weeding().carriage(c -> c.withStances(List.of())).build());

        assertThat(findings).extracting(Finding::outcome).containsExactly(Outcome.UNDECIDED);
    }

    private static Stance road(Stance.Pose... poses) {
        return new Stance("road", Stance.Use.TRANSPORT, Map.of(), Arrays.asList(poses), List.of(), List.of(), 0);
    }

    private static Stance.Pose latched(String arm, double x, double y, double z) {
        return new Stance.Pose(arm, Point3.ofMetres(x, y, z), List.of(), true);
    }

    private static Stance.Pose turned(String arm, double y, Stance.Axis axis, int quarters) {
        return new Stance.Pose(arm, Point3.ofMetres(-1.2, y, 0.95), List.of(new Stance.Turn(axis, quarters)), true);
    }

    private static Stance.Pose pose(String arm, double x, double y, Stance.Move... way) {
        return new Stance.Pose(arm, Point3.ofMetres(x, y, 0.95), List.of(), true, Arrays.asList(way));
    }

    private static List<Finding> check(Stance stance, UnaryOperator<Carriage> change) {
        return check(stance, change, 0.03);
    }

    private static List<Finding> check(Stance stance, UnaryOperator<Carriage> change, double armGap) {
        return new TransportClears()
                .check(Cases.weeding()
                        .sheet(b -> b.forces(ArmToArmTest.NO_FORCE))
                        .carriage(
                                c -> change.apply(c.withStances(List.of(stance)).withWheels(List.of())))
                        .policy(p -> Cases.withArmGap(p, armGap))
                        .build());
    }

    private static Case with(Stance stance) {
        return Cases.weeding()
                .sheet(b -> b.forces(ArmToArmTest.NO_FORCE))
                .carriage(c -> c.withStances(List.of(stance)).withWheels(List.of()))
                .build();
    }

    private static List<Finding> check(Stance stance) {
        return new TransportClears().check(with(stance));
    }

    private static double measured(List<Finding> findings, int which) {
        return findings.get(which).comparison().orElseThrow().measured().value();
    }

    private static double limit(List<Finding> findings, int which) {
        return findings.get(which).comparison().orElseThrow().limit().value();
    }
}
