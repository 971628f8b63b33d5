package headgate.verifier.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Rest-to-rest moves and stopping: all values derived from constant acceleration or constant jerk. */
class MotionTest {

    @ParameterizedTest
    @CsvSource({
        "1.0, 1.0, 2, 2, 1.500000, 1.0",
        "0.5, 1.0, 2, 2, 1.000000, 1.0",
        "0.3, 1.0, 2, 2, 0.774597, 0.774597",
        "0.5, 0.5, 1, 2, 1.375000, 0.5",
        "0.1, 1.0, 4, 2, 0.387298, 0.516398"
    })
    void restToRest(double length, double speed, double up, double down, double duration, double peak) {
        RestToRest move = RestToRest.of(length, speed, up, down);

        assertThat(move.duration()).isCloseTo(duration, within(5e-7));
        assertThat(move.peakSpeed()).isCloseTo(peak, within(5e-7));
    }

    @ParameterizedTest
    @CsvSource({"1.0, 0.2, 2, 0.45", "0.5, 0.15, 1, 0.20", "1.5, 0.3, 2.5, 0.90"})
    void stoppingDistance(double speed, double reaction, double deceleration, double way) {
        assertThat(StoppingDistance.metres(speed, reaction, deceleration)).isCloseTo(way, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({
        "1.0, 1.0, 2, 10, 1.700000, 1.0",
        "0.3, 1.0, 2, 10, 1.000000, 0.6",
        "0.02, 1.0, 2, 10, 0.400000, 0.1",
        "0.5, 0.5, 1, 4, 1.750000, 0.5"
    })
    void smoothMove(double length, double speed, double acceleration, double jerk, double duration, double peak) {
        SmoothMove move = SmoothMove.of(length, speed, acceleration, jerk);

        assertThat(move.duration()).isCloseTo(duration, within(1e-9));
        assertThat(move.peakSpeed()).isCloseTo(peak, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void aLimitedJerkNeverSavesTimeAndCostsNothingInTheLimit(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 200; i++) {
            double length = random.nextDouble() * 2;
            double speed = 0.05 + random.nextDouble() * 2;
            double acceleration = 0.2 + random.nextDouble() * 5;
            double jerk = 0.5 + random.nextDouble() * 50;
            double plain =
                    RestToRest.of(length, speed, acceleration, acceleration).duration();

            assertThat(SmoothMove.of(length, speed, acceleration, jerk).duration())
                    .isGreaterThanOrEqualTo(plain - 1e-12);
            assertThat(SmoothMove.of(length, speed, acceleration, 1e9).duration())
                    .isCloseTo(plain, within(1e-6 + 1e-4 * plain));
        }
    }

    @Test
    void noWayTakesNoTime() {
        assertThat(RestToRest.of(0, 1, 1, 1).duration()).isZero();
        assertThat(SmoothMove.of(0, 1, 1, 1).duration()).isZero();
    }

    @Test
    void refusesFiguresOutOfBoundsByName() {
        assertThatThrownBy(() -> RestToRest.of(1, 0, 1, 1))
                .hasMessageContaining("speed")
                .hasMessageContaining("0.0");
        assertThatThrownBy(() -> RestToRest.of(Double.NaN, 1, 1, 1)).hasMessageContaining("distance");
        assertThatThrownBy(() -> SmoothMove.of(1, 1, 1, -1)).hasMessageContaining("jerk");
        assertThatThrownBy(() -> StoppingDistance.metres(1, -0.1, 1)).hasMessageContaining("reaction");
    }
}
