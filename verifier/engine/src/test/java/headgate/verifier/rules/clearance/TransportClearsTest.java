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
import org.junit.jupiter.api.Test;

/**
 * Hand arithmetic: a head is 150 mm wide to either side of its mount, stands out 450 mm in front and 50 mm behind. Stowed, it
 * hangs 200 mm down, with its tool anywhere 600 mm. The arm's own body stands 300 mm over the mount. Two arms need 30 + 2 x 4 =
 * 38 mm between them, an arm and the frame 25 + 4 = 29 mm. The beam is 2.4 m wide and ends at 1.5 and 1.6 m. The ground moves by
 * 20 mm.
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
        // Six pairs of arms, and four arms against one beam.
        assertThat(findings.get(GAP).examined()).isEqualTo(10);
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

    private static Case with(Stance stance) {
        return Cases.weeding()
                .sheet(b -> b.forces(ArmToArmTest.NO_FORCE))
                .carriage(c -> c.withStances(List.of(stance)))
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
