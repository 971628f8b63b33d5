package headgate.verifier.replay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class PositionErrorTest {

    /** 6 mm across, 3 mm along, and a clock that is off by 20 ms. */
    private final PositionError error = new PositionError(0.006, 0.003, 0.02);

    @Test
    void growsAlongTravelWithTheSpeed() {
        // At 0.2 m/s the clock is good for 4 mm: 5 mm along, so that 6 mm across count. At 0.8 m/s: root of 9 + 256 mm.
        assertThat(error.at(0.2)).isEqualTo(0.006);
        assertThat(error.at(0.8)).isCloseTo(0.01627882, within(1e-8));
        assertThat(PositionError.NONE.at(10)).isZero();
    }
}
