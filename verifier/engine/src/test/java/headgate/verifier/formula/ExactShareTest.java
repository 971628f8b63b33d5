package headgate.verifier.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ExactShareTest {

    /**
     * NIST/SEMATECH e-Handbook of Statistical Methods, 7.2.4.1: 4 of 20, 90 % to both sides, so 95 % to each (from memory).
     */
    @Test
    void agreesWithTheHandbook() {
        assertThat(ExactShare.atLeast(4, 20, 0.95)).isCloseTo(0.071354, within(1e-6));
        assertThat(ExactShare.atMost(4, 20, 0.95)).isCloseTo(0.401029, within(1e-6));
    }

    /** None of n, and all of n: the law is a single power, p^n = 1 - confidence. */
    @ParameterizedTest
    @CsvSource({"1", "2", "10", "59", "1000", "1000000"})
    void isAPowerAtTheEnds(long n) {
        assertThat(ExactShare.atLeast(n, n, 0.95)).isCloseTo(StrictMath.pow(0.05, 1.0 / n), within(1e-10));
        assertThat(ExactShare.atMost(0, n, 0.95)).isCloseTo(1 - StrictMath.pow(0.05, 1.0 / n), within(1e-10));
        assertThat(ExactShare.atLeast(0, n, 0.95)).isZero();
        assertThat(ExactShare.atMost(n, n, 0.95)).isEqualTo(1);
    }

    /** At the bound the binomial law, summed term by term, leaves just the chance that is allowed. */
    @ParameterizedTest
    @CsvSource({"1, 3, 0.95", "17, 30, 0.9", "29, 30, 0.95", "250, 300, 0.99", "5, 300, 0.95"})
    void leavesTheChanceThatIsAllowed(int hits, int of, double confidence) {
        double share = ExactShare.atLeast(hits, of, confidence);
        double tail = 0;
        for (int k = hits; k <= of; k++) {
            tail += chance(k, of, share);
        }
        assertThat(tail).isCloseTo(1 - confidence, within(1e-9));
    }

    private static double chance(int k, int of, double share) {
        BigDecimal ways = BigDecimal.ONE;
        for (int i = 1; i <= k; i++) {
            ways = ways.multiply(BigDecimal.valueOf(of - k + i))
                    .divide(BigDecimal.valueOf(i), 60, java.math.RoundingMode.HALF_EVEN);
        }
        return ways.multiply(new BigDecimal(share).pow(k, java.math.MathContext.DECIMAL128))
                .multiply(new BigDecimal(1 - share).pow(of - k, java.math.MathContext.DECIMAL128))
                .doubleValue();
    }

    /** With many, the bound goes over into that of the normal law: 1.645 standard deviations (from memory). */
    @Test
    void isNormalWithMany() {
        double sigma = Math.sqrt(0.75 * 0.25 / 4e6);
        assertThat(ExactShare.atLeast(3_000_000, 4_000_000, 0.95)).isCloseTo(0.75 - 1.645 * sigma, within(2e-6));
    }

    @Test
    void refusesWhatIsNoCount() {
        assertThatIllegalArgumentException().isThrownBy(() -> ExactShare.atLeast(3, 2, 0.95));
        assertThatIllegalArgumentException().isThrownBy(() -> ExactShare.atLeast(0, 0, 0.95));
        assertThatIllegalArgumentException().isThrownBy(() -> ExactShare.atMost(1, 2, 1));
    }
}
