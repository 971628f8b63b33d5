package headgate.verifier.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import headgate.api.shape.Outline;
import headgate.api.shape.Point3;
import headgate.api.shape.Prism;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Shadows within a band on the ground. */
class ShadowTest {

    private static final Point3 SENSOR = Point3.ofMetres(0, 0, 1);

    @Test
    void isTheWholeShadowOfWhatIsLow() {
        Occupied low = box(0.2, 0.4, -0.1, 0.1, 0, 0.5);
        Outline band = Outline.rectangle(0, 0.6, -0.15, 0.3);

        assertThat(hidden(low, band))
                .isEqualTo(PlanArea.of(Shadow.onGround(low, SENSOR).orElseThrow())
                        .common(PlanArea.of(List.of(band)))
                        .squareMetres());
    }

    /**
     * A post as high as the sky, from x = 1 on, 0.1 wide: the lines from under the sensor past its two near corners bound its
     * shadow, so that at x it is 0.1 x wide. From x = 1 to 3 that makes 0.05 (9 - 1) = 0.4. Derived from similar triangles.
     */
    @Test
    void ofWhatIsHigherThanTheSensorIsBoundedByTheBand() {
        Occupied post = box(1, 1.1, -0.05, 0.05, 0, 5);

        assertThat(hidden(post, Outline.rectangle(0, 3, -1, 1))).isCloseTo(0.4, within(1e-5));
    }

    @Test
    void whatIsAboveTheSensorHidesNothing() {
        assertThat(Shadow.within(Outline.rectangle(-1, 1, -1, 1), box(-1, 1, -1, 1, 1, 2), SENSOR))
                .contains(List.of());
    }

    @Test
    void whatIsUnderTheGroundHidesNothing() {
        assertThat(Shadow.within(Outline.rectangle(-1, 1, -1, 1), box(-1, 1, -1, 1, -1, 0), SENSOR))
                .contains(List.of());
    }

    @Test
    void isNotKnownWhereMaterialHoldsTheSensor() {
        assertThat(Shadow.within(Outline.rectangle(-1, 1, -1, 1), box(-0.1, 0.1, -0.1, 0.1, 0, 2), SENSOR))
                .isEmpty();
    }

    private static double hidden(Occupied volume, Outline band) {
        return PlanArea.of(Shadow.within(band, volume, SENSOR).orElseThrow())
                .common(PlanArea.of(List.of(band)))
                .squareMetres();
    }

    private static Occupied box(double x0, double x1, double y0, double y1, double z0, double z1) {
        return Occupied.of(List.of(Prism.box(x0, x1, y0, y1, z0, z1)));
    }
}
