package headgate.verifier.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StudentTTest {

    /** NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.2, critical values of Student's t (from memory). */
    @ParameterizedTest
    @CsvSource({
        "0.95, 1, 6.314",
        "0.95, 2, 2.920",
        "0.95, 5, 2.015",
        "0.95, 7, 1.895",
        "0.95, 10, 1.812",
        "0.95, 30, 1.697",
        "0.95, 100, 1.660",
        "0.975, 4, 2.776",
        "0.975, 9, 2.262",
        "0.99, 3, 4.541",
        "0.99, 20, 2.528"
    })
    void agreesWithThePrintedTable(double probability, int freedom, double printed) {
        assertThat(StudentT.quantile(probability, freedom)).isCloseTo(printed, within(0.0005));
    }

    @Test
    void isZeroInTheMiddleAndRefusesWhatIsNoProbability() {
        assertThat(StudentT.quantile(0.5, 3)).isCloseTo(0, within(1e-12));
        assertThatIllegalArgumentException().isThrownBy(() -> StudentT.quantile(1, 3));
        assertThatIllegalArgumentException().isThrownBy(() -> StudentT.quantile(0.9, 0));
    }
}
