package headgate.verifier.rules.clearance;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.api.shape.Prism;
import headgate.runtime.carriage.Carriage;
import headgate.verifier.check.Case;
import headgate.verifier.check.Cases;
import headgate.verifier.check.Edit;
import headgate.verifier.check.Finding;
import headgate.verifier.check.Outcome;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Hand arithmetic: the head of arm a1 stands out 450 mm in front of its mount at y = -750 mm and 150 mm to either side. An arm
 * may be off by backlash 1, tracking 2 and k sigma 1 mm, no force bends it; with the policy's 25 mm, 29 mm are required.
 */
class ArmToFrameTest {

    @Test
    void passesWithTheGapOfTheNearestPart() {
        List<Finding> findings = findings(withLeg(0.600));

        assertThat(findings).hasSize(1);
        Finding finding = findings.get(0);
        assertThat(finding.outcome()).isEqualTo(Outcome.PASS);
        assertThat(measured(finding)).isEqualTo(0.150);
        assertThat(limit(finding)).isEqualTo(0.029);
        // Four arms in three stances each against one part.
        assertThat(finding.examined()).isEqualTo(12);
        assertThat(finding.terms()).extracting(t -> t.name()).contains("gap by policy", "k sigma of arm a1");
        assertThat(finding.witness().orElseThrow().to().x()).isEqualTo(600_000);
    }

    @Test
    void holdsExactlyAtTheLimit() {
        Finding finding = findings(withLeg(0.479)).get(0);

        assertThat(finding.outcome()).isEqualTo(Outcome.PASS);
        assertThat(measured(finding)).isEqualTo(limit(finding)).isEqualTo(0.029);
    }

    @Test
    void failsOneMicrometreBelowTheLimit() {
        Case tight = withLeg(0.478999);

        Finding finding = findings(tight).get(0);

        assertThat(finding.outcome()).isEqualTo(Outcome.FAIL);
        assertThat(measured(finding)).isEqualTo(0.028999);
        // One micrometre is missing, trimmed to the next millimetre.
        assertThat(finding.proposals()).extracting(Edit::text).containsExactly("trim head test-head by 1 mm at +x");
        assertThat(findings(finding.proposals().get(0).apply(tight)).get(0).outcome())
                .isEqualTo(Outcome.PASS);
    }

    @Test
    void letsLiftsStopLowerUnderABeam() {
        // Lifted, an arm's own body ends at 950 + 1 + 300 = 1251 mm: 19 mm under the beam, 10 mm too near.
        Case tight = with(Cases.part("beam", Prism.box(-2, 2, -2, 2, 1.270, 1.4)));

        Finding finding = findings(tight).get(0);

        assertThat(finding.outcome()).isEqualTo(Outcome.FAIL);
        assertThat(measured(finding)).isEqualTo(0.019);
        Edit stop = finding.proposals().get(0);
        assertThat(stop.text())
                .isEqualTo("stop the lift of arm a1 at 940 mm, arm a2 at 940 mm, arm a3 at 940 mm, arm a4 at 940 mm");
        assertThat(findings(stop.apply(tight)).get(0).outcome()).isEqualTo(Outcome.PASS);
        assertThat(stop.figures()).containsEntry("a1", 0.94);
    }

    @Test
    void undecidedWithoutAFrame() {
        assertThat(findings(with()).get(0).outcome()).isEqualTo(Outcome.UNDECIDED);
    }

    @Test
    void warnsWhereTheFrameBarsSomeOfTheRail() {
        // A post up to y = -1160 mm: the mount may come to -1160 + 150 + 29 = -981 mm, its rail ends at -1000 mm.
        List<Finding> findings = findings(with(Cases.part("post", Prism.box(0, 0.1, -1.2, -1.16, 0, 1.2))));

        assertThat(findings).hasSize(2);
        assertThat(findings.get(0).outcome()).isEqualTo(Outcome.PASS);
        assertThat(findings.get(1).outcome()).isEqualTo(Outcome.CAUTION);
        assertThat(findings.get(1).message())
                .isEqualTo(
                        "The frame bars some of the rail of arm a1: from its set-point at y = -750 mm it may be shifted to y ="
                                + " -981 mm and to y = -500 mm, but its rail goes from -1000 mm to -500 mm.");
    }

    private static Case withLeg(double front) {
        return with(Cases.part("leg", Prism.box(front, 0.8, -0.8, -0.7, 0, 2)));
    }

    private static Case with(Carriage.Part... parts) {
        return Cases.weeding()
                .sheet(b -> b.forces(ArmToArmTest.NO_FORCE))
                .carriage(c -> c.withStructure(List.of(parts)))
                .build();
    }

    private static List<Finding> findings(Case subject) {
        return new ArmToFrame().check(subject);
    }

    private static double measured(Finding finding) {
        return finding.comparison().orElseThrow().measured().value();
    }

    private static double limit(Finding finding) {
        return finding.comparison().orElseThrow().limit().value();
    }
}
