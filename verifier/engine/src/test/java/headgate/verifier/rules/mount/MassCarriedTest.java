package headgate.verifier.rules.mount;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.runtime.carriage.Arm;
import headgate.verifier.check.Case;
import headgate.verifier.check.Cases;
import headgate.verifier.check.Edit;
import headgate.verifier.check.Finding;
import headgate.verifier.check.NeverFinds;
import headgate.verifier.check.Outcome;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The policy allows 90 % of an arm's payload. */
@NeverFinds(value = Outcome.UNDECIDED, because = "every sheet gives three masses, every arm a payload")
class MassCarriedTest {

    @Test
    void passesTheSoiledHead() {
        Finding finding = only(Cases.weeding().build());

        assertThat(finding.outcome()).isEqualTo(Outcome.PASS);
        assertThat(finding.message())
                .isEqualTo("The soiled head weighs 6 kg; arm a1 carries 10 kg, of which 90 % may be used: 9 kg.");
        assertThat(finding.examined()).isEqualTo(12);
    }

    @Test
    void holdsAtTheLimitAndFailsAGramAboveIt() {
        assertThat(only(weighing(9.0)).outcome()).isEqualTo(Outcome.PASS);
        assertThat(only(weighing(9.001)).outcome()).isEqualTo(Outcome.FAIL);
    }

    @Test
    void failsAndSaysHowMuchMustComeOff() {
        Case heavy = weighing(9.5);

        Finding finding = only(heavy);

        // 9.5 - 0.9 x 10 = 0.5 kg.
        assertThat(finding.outcome()).isEqualTo(Outcome.FAIL);
        assertThat(finding.proposals())
                .extracting(Edit::text)
                .containsExactly("take 0.5 kg off head test-head, so that it never weighs more than 9 kg");
        assertThat(only(finding.proposals().get(0).apply(heavy)).outcome()).isEqualTo(Outcome.PASS);
    }

    @Test
    void failsOnTheWeakestArm() {
        Finding finding = only(MountTestCarriage.withOddArm(
                        Cases.weeding(),
                        a -> new Arm(
                                a.id(),
                                a.beam(),
                                a.shift(),
                                a.lift(),
                                a.shiftMotion(),
                                a.liftMotion(),
                                a.tolerance(),
                                new Arm.Payload(6, 20, 20, 20),
                                a.plate(),
                                a.connectors(),
                                a.supply(),
                                a.body()))
                .build());

        assertThat(finding.outcome()).isEqualTo(Outcome.FAIL);
        assertThat(finding.message()).contains("arm a3 carries 6 kg").endsWith("5.4 kg.");
    }

    private static Case weighing(double soiled) {
        return Cases.weeding()
                .sheet(b -> b.mass(
                        Cases.mass(5, 0.2, 0, -0.1), Cases.mass(5, 0.2, 0, -0.1), Cases.mass(soiled, 0.2, 0, -0.1)))
                .build();
    }

    private static Finding only(Case subject) {
        List<Finding> findings = new MassCarried().check(subject);
        assertThat(findings).hasSize(1);
        return findings.get(0);
    }
}
