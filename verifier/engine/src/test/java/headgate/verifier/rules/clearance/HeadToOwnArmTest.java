package headgate.verifier.rules.clearance;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.api.shape.Body;
import headgate.api.shape.Prism;
import headgate.runtime.carriage.Arm;
import headgate.verifier.check.Case;
import headgate.verifier.check.Cases;
import headgate.verifier.check.Finding;
import headgate.verifier.check.NeverFinds;
import headgate.verifier.check.Outcome;
import org.junit.jupiter.api.Test;

/**
 * Hand arithmetic: the head stands out 50 mm behind its plate. Head and column go along with the side shift together and no
 * force bends them, so the policy's 25 mm are all that is required.
 */
@NeverFinds(
        value = Outcome.UNDECIDED,
        because = "an arm whose file names no column has none, and every sheet has bodies")
class HeadToOwnArmTest {

    @Test
    void passesWithTheGapToTheColumn() {
        Finding finding = check(column(-0.2, -0.1));

        assertThat(finding.outcome()).isEqualTo(Outcome.PASS);
        assertThat(measured(finding)).isEqualTo(0.050);
        assertThat(limit(finding)).isEqualTo(0.025);
        assertThat(finding.examined()).isEqualTo(4);
    }

    @Test
    void holdsExactlyAtTheLimit() {
        Finding finding = check(column(-0.2, -0.075));

        assertThat(finding.outcome()).isEqualTo(Outcome.PASS);
        assertThat(measured(finding)).isEqualTo(limit(finding));
    }

    @Test
    void failsOneMicrometreBelowTheLimit() {
        Case tight = column(-0.2, -0.074999);

        Finding finding = check(tight);

        assertThat(finding.outcome()).isEqualTo(Outcome.FAIL);
        assertThat(measured(finding)).isEqualTo(0.024999);
        assertThat(finding.message()).contains("head test-head 1.0.0 on arm");
        assertThat(finding.proposals()).anySatisfy(e -> {
            assertThat(e.text()).isEqualTo("trim head test-head by 1 mm at -x");
            assertThat(check(e.apply(tight)).outcome()).isEqualTo(Outcome.PASS);
        });
    }

    @Test
    void angularPlayCounts() {
        // The farthest corner of the box about the head is at 450, 150, 600 mm: 764.85 mm from the mount, times 0.01
        // rad.
        Finding finding = check(Cases.weeding()
                .sheet(b -> b.forces(ArmToArmTest.NO_FORCE))
                .arms(a -> withColumn(a, -0.2, -0.1, 0.01))
                .build());

        assertThat(limit(finding)).isEqualTo(0.032648529);
    }

    @Test
    void doesNotApplyWithoutAColumn() {
        assertThat(check(Cases.weeding().build()).outcome()).isEqualTo(Outcome.NOT_APPLICABLE);
    }

    private static Case column(double rear, double front) {
        return Cases.weeding()
                .sheet(b -> b.forces(ArmToArmTest.NO_FORCE))
                .arms(a -> withColumn(a, rear, front, 0))
                .build();
    }

    /** On each beam a column of 100 mm width that spans all heights of the lift. */
    private static Arm withColumn(Arm a, double rear, double front, double angularPlay) {
        double beam = a.beam().equals("front") ? 0 : -1.2;
        Arm.Tolerance t = a.tolerance();
        return new Arm(
                a.id(),
                a.beam(),
                a.shift(),
                a.lift(),
                a.shiftMotion(),
                a.liftMotion(),
                new Arm.Tolerance(t.backlash(), t.tracking(), t.sigma(), angularPlay, t.stiffness()),
                a.payload(),
                a.plate(),
                a.connectors(),
                a.supply(),
                a.body(),
                Body.of(Prism.box(beam + rear, beam + front, -0.05, 0.05, 0.2, 1.4)),
                a.liftPath(),
                a.following(),
                a.plateNormal());
    }

    private static Finding check(Case subject) {
        return new HeadToOwnArm().check(subject).get(0);
    }

    private static double measured(Finding finding) {
        return finding.comparison().orElseThrow().measured().value();
    }

    private static double limit(Finding finding) {
        return finding.comparison().orElseThrow().limit().value();
    }
}
