package headgate.verifier.rules.mount;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.api.sheet.Figure;
import headgate.api.sheet.PowerDraw;
import headgate.verifier.check.Cases;
import headgate.verifier.check.Finding;
import headgate.verifier.check.NeverFinds;
import headgate.verifier.check.Outcome;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Every arm gives 100 W without pause and 250 W for a moment. */
@NeverFinds(value = Outcome.UNDECIDED, because = "every sheet gives its power, every arm its supply")
class PowerSufficesTest {

    @Test
    void passesBoth() {
        assertThat(check(95, 240)).extracting(Finding::outcome).containsExactly(Outcome.PASS, Outcome.PASS);
    }

    @Test
    void holdsAtTheLimit() {
        assertThat(check(100, 250)).extracting(Finding::outcome).containsExactly(Outcome.PASS, Outcome.PASS);
    }

    @Test
    void failsThePeakAloneAndNamesItFirst() {
        List<Finding> findings = check(100, 251);

        assertThat(findings).extracting(Finding::outcome).containsExactly(Outcome.FAIL, Outcome.PASS);
        assertThat(findings.get(0).message()).isEqualTo("The head takes 251 W of peak power; arm a1 gives 250 W.");
    }

    @Test
    void failsTheContinuousPowerAlone() {
        assertThat(check(100.1, 200).get(0).message())
                .isEqualTo("The head takes 100.1 W of continuous power; arm a1 gives 100 W.");
    }

    private static List<Finding> check(double working, double peak) {
        return new PowerSuffices()
                .check(Cases.weeding()
                        .sheet(b -> b.power(
                                PowerDraw.of(Figure.measured(10), Figure.measured(working), Figure.measured(peak))))
                        .build());
    }
}
