package headgate.verifier.rules.mount;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.api.sheet.PlateDesignation;
import headgate.runtime.carriage.Arm;
import headgate.verifier.check.Cases;
import headgate.verifier.check.Finding;
import headgate.verifier.check.NeverFinds;
import headgate.verifier.check.Outcome;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

@NeverFinds(value = Outcome.UNDECIDED, because = "every sheet and every arm names a plate")
class PlateFitsTest {

    @Test
    void passesTheSamePlateOnEveryArm() {
        List<Finding> findings = new PlateFits().check(Cases.weeding().build());

        assertThat(findings).extracting(Finding::outcome).containsExactly(Outcome.PASS);
        assertThat(findings.get(0).examined()).isEqualTo(4);
        assertThat(findings.get(0).message()).isEqualTo("The head and arms a1, a2, a3, a4 have plate 9409-1-50-4-M6.");
    }

    @Test
    void failsForTheArmsThatHaveAnotherPlate() {
        Cases cases = MountTestCarriage.withOddArm(Cases.weeding(), PlateFitsTest::withSixHoles);

        List<Finding> findings = new PlateFits().check(cases.build());

        assertThat(findings).extracting(Finding::outcome).containsExactly(Outcome.FAIL);
        assertThat(findings.get(0).message())
                .isEqualTo("The head has plate 9409-1-50-4-M6, but arm a3 has plate 9409-1-50-6-M6.");
        assertThat(findings.get(0).field()).isEqualTo(Optional.of("carriage:arms[2].plate"));
    }

    private static Arm withSixHoles(Arm a) {
        return new Arm(
                a.id(),
                a.beam(),
                a.shift(),
                a.lift(),
                a.shiftMotion(),
                a.liftMotion(),
                a.tolerance(),
                a.payload(),
                PlateDesignation.of("9409-1-50-6-M6"),
                a.connectors(),
                a.supply(),
                a.body());
    }
}
