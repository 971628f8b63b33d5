package headgate.verifier.rules.mount;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import headgate.verifier.check.Case;
import headgate.verifier.check.Cases;
import headgate.verifier.check.Edit;
import headgate.verifier.check.Finding;
import headgate.verifier.check.NeverFinds;
import headgate.verifier.check.Outcome;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Hand arithmetic with g = 9.80665 m/s²: 10 kg weigh 98.0665 N. The policy allows 80 % of an arm's 20 N m: 16 N m. */
@NeverFinds(value = Outcome.UNDECIDED, because = "every sheet gives three centres of mass, every arm its moments")
class StaticMomentTest {

    @Test
    void passesLevelGround() {
        // 98.0665 N x 0.15 m = 14.709975 N m about y.
        Finding finding = only(at(0.15, 0.01, -0.1).build());

        assertThat(finding.outcome()).isEqualTo(Outcome.PASS);
        assertThat(measured(finding)).isCloseTo(14.709975, within(1e-9));
        assertThat(finding.message())
                .isEqualTo("The weight of the soiled head turns its mount about the Y axis with 14.71 N m; arm a1 bears"
                        + " 20 N m, of which 80 % may be used: 16 N m.");
        // 3 states x 4 arms x 3 axes.
        assertThat(finding.examined()).isEqualTo(36);
    }

    @Test
    void addsTheHeightOnATiltedFrame() {
        // Roll with sine 0.1 and pitch with sine 0.05, worst about x: 98.0665 x (0.14 + 0.2 x 0.1) = 15.69064 N m.
        Finding finding = only(at(0.1, -0.14, -0.2)
                .ground(StrictMath.asin(0.1), StrictMath.asin(0.05), 0)
                .build());

        assertThat(finding.outcome()).isEqualTo(Outcome.PASS);
        assertThat(measured(finding)).isCloseTo(15.69064, within(1e-9));
        assertThat(finding.message()).contains("about the X axis");
    }

    @Test
    void holdsAtTheLimit() {
        // The arm bears just what 80 % of it must be: M / 0.8 = 98.0665 x 0.15 / 0.8.
        double borne = 98.0665 * 0.15 / 0.8;

        assertThat(only(at(0.15, 0, -0.1).payload(20, 40, borne + 1e-9, 40).build())
                        .outcome())
                .isEqualTo(Outcome.PASS);
        assertThat(only(at(0.15, 0, -0.1).payload(20, 40, borne - 1e-6, 40).build())
                        .outcome())
                .isEqualTo(Outcome.FAIL);
    }

    @Test
    void failsAndBringsTheCentreIn() {
        Case far = at(-0.2, 0, -0.1).build();

        Finding finding = only(far);

        // 98.0665 x 0.2 = 19.6133 > 16; 16 / 98.0665 = 0.163154... m, rounded down to 163.1 mm.
        assertThat(finding.outcome()).isEqualTo(Outcome.FAIL);
        assertThat(measured(finding)).isCloseTo(19.6133, within(1e-9));
        assertThat(finding.proposals())
                .extracting(Edit::text)
                .containsExactly("bring the centre of mass of head test-head to within 163.1 mm of the middle of its"
                        + " plate, along travel");
        assertThat(only(finding.proposals().get(0).apply(far)).outcome()).isEqualTo(Outcome.PASS);
    }

    private static Cases at(double x, double y, double z) {
        return Cases.weeding()
                .sheet(b -> b.mass(Cases.mass(8, x, y, z), Cases.mass(9, x, y, z), Cases.mass(10, x, y, z)));
    }

    private static double measured(Finding finding) {
        return finding.comparison().orElseThrow().measured().value();
    }

    private static Finding only(Case subject) {
        List<Finding> findings = new StaticMoment().check(subject);
        assertThat(findings).hasSize(1);
        return findings.get(0);
    }
}
