package headgate.verifier.plot;

import static headgate.verifier.trial.Standing.FAILS;
import static headgate.verifier.trial.Standing.PASSES;
import static headgate.verifier.trial.Standing.UNDECIDED;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class RefinementTest {

    private static double thousandths(double value) {
        return Math.floor(value * 1000 + 1e-6) / 1000;
    }

    @Test
    void liesBetweenTheLastThatPassesAndTheFirstThatDoesNot() {
        assertThat(Refinement.of(
                        List.of(0.1, 0.2, 0.3), List.of(PASSES, UNDECIDED, PASSES), RefinementTest::thousandths))
                .containsExactly(0.11, 0.12, 0.13, 0.14, 0.15, 0.16, 0.17, 0.18, 0.19);
    }

    @Test
    void beginsAtNothingIfTheFirstDoesNotPass() {
        assertThat(Refinement.of(List.of(0.1, 0.2), List.of(FAILS, FAILS), RefinementTest::thousandths))
                .containsExactly(0.01, 0.02, 0.03, 0.04, 0.05, 0.06, 0.07, 0.08, 0.09);
    }

    @Test
    void isEmptyIfAllPass() {
        assertThat(Refinement.of(List.of(0.1, 0.2), List.of(PASSES, PASSES), v -> v))
                .isEmpty();
    }

    /** From 3 to 6 mm/s there are but 4 and 5. */
    @Test
    void givesEachValueOnceWhereStepsAreFine() {
        assertThat(Refinement.of(List.of(0.003, 0.006), List.of(PASSES, FAILS), RefinementTest::thousandths))
                .containsExactly(0.004, 0.005);
        assertThat(Refinement.of(List.of(0.001), List.of(FAILS), RefinementTest::thousandths))
                .isEmpty();
    }
}
