package headgate.verifier.rules.throughput;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class CropDiscsTest {

    private static final double TIGHT = 1e-12;

    @Test
    void discsThatLieWithinTheBandTakeTheirArea() {
        // pi x 0.05² = 0.007853982 m² of 0.4 x 0.2 = 0.08 m².
        assertThat(CropDiscs.shareOutside(0.05, 0.4, 0.2)).isEqualTo(1 - Math.PI * 0.0025 / 0.08, within(TIGHT));
        assertThat(CropDiscs.shareOutside(0.0, 0.4, 0.2)).isEqualTo(1.0);
    }

    @Test
    void discsWiderThanTheBandTakeOnlyWhatLiesInIt() {
        // A strip of half width 0.05 from a disc of radius 0.1: 2 (0.05 sqrt(0.0075) + 0.01 asin(0.5)) = 0.0191322 m².
        double strip = 2 * (0.05 * Math.sqrt(0.0075) + 0.01 * Math.PI / 6);

        assertThat(CropDiscs.shareOutside(0.1, 0.4, 0.1)).isEqualTo(1 - strip / 0.04, within(TIGHT));
    }

    @Test
    void discsThatOverlapCountOnce() {
        // Radius 0.1 every 0.1 m in a wide band: two discs share a lens of r² (2 pi / 3 - sqrt(3) / 2).
        double lens = 0.01 * (2 * Math.PI / 3 - Math.sqrt(3) / 2);

        assertThat(CropDiscs.shareOutside(0.1, 0.1, 0.4)).isEqualTo(1 - (Math.PI * 0.01 - lens) / 0.04, within(TIGHT));
    }

    @Test
    void nothingIsLeftOfABandThatIsAllProtected() {
        assertThat(CropDiscs.shareOutside(0.3, 0.1, 0.2)).isEqualTo(0.0, within(TIGHT));
    }
}
