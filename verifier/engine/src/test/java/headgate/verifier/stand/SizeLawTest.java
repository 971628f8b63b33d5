package headgate.verifier.stand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SizeLawTest {

    /** 10 to 20 mm: one in four; 20 to 20 mm: one in four; 20 to 60 mm: half. */
    private static final SizeLaw LAW =
            new SizeLaw(0.01, List.of(new SizeLaw.Part(0.02, 1), new SizeLaw.Part(0.02, 1), new SizeLaw.Part(0.06, 2)));

    @Test
    void sharesBelowALengthAddUpOverTheClasses() {
        assertThat(LAW.below(0.005)).isEqualTo(0.0);
        assertThat(LAW.below(0.01)).isEqualTo(0.0);
        assertThat(LAW.below(0.015)).isEqualTo(0.125, within(1e-12));
        assertThat(LAW.below(0.04)).isEqualTo(0.75, within(1e-12));
        assertThat(LAW.below(0.06)).isEqualTo(1.0);
        assertThat(LAW.below(1.0)).isEqualTo(1.0);
    }

    @Test
    void plantsThatAreAllAlikeAreNotShorterThanThemselves() {
        assertThat(SizeLaw.always(0.1).below(0.1)).isEqualTo(0.0);
        assertThat(SizeLaw.always(0.1).below(0.1001)).isEqualTo(1.0);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.0, 0.1, 0.249, 0.5, 0.73, 0.99})
    void aDrawnLengthHasAsManyBelowItAsWasDrawn(double share) {
        double length = LAW.at(share);

        assertThat(LAW.below(length)).isLessThanOrEqualTo(share + 1e-4);
        assertThat(LAW.below(length + 1e-6)).isGreaterThanOrEqualTo(share - 1e-4);
    }
}
