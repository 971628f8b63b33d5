package headgate.verifier.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.api.shape.Interval;
import headgate.api.shape.Prism;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Turns by quarters about level axes. By the right-hand rule a quarter about x takes y to z and z to -y, a quarter about y takes
 * z to x and x to -z.
 */
class TurnsTest {

    private static final Occupied BOX = Occupied.of(List.of(Prism.box(1, 2, 3, 5, 7, 10)));

    @Test
    void aQuarterAboutX() {
        assertThat(BOX.tippedAboutX(1).bounds()).contains(box(1, 2, -10, -7, 3, 5));
        assertThat(BOX.tippedAboutX(2).bounds()).contains(box(1, 2, -5, -3, -10, -7));
        assertThat(BOX.tippedAboutX(3).bounds()).contains(box(1, 2, 7, 10, -5, -3));
        assertThat(BOX.tippedAboutX(4)).isEqualTo(BOX);
    }

    @Test
    void aQuarterAboutY() {
        assertThat(BOX.tippedAboutY(1).bounds()).contains(box(7, 10, 3, 5, -2, -1));
        assertThat(BOX.tippedAboutY(2).bounds()).contains(box(-2, -1, 3, 5, -10, -7));
        assertThat(BOX.tippedAboutY(3).bounds()).contains(box(-10, -7, 3, 5, 1, 2));
    }

    @Test
    void aRoundBodyBecomesTheBoxAboutIt() {
        Occupied round = Occupied.of(List.of(Prism.aroundCylinder(0, 0, 0.5, 0, 2)));
        Box about = round.bounds().orElseThrow();

        assertThat(round.tippedAboutX(1).prisms()).hasSize(1);
        assertThat(round.tippedAboutX(1).bounds().orElseThrow().x()).isEqualTo(about.x());
        assertThat(round.tippedAboutX(1).bounds().orElseThrow().z()).isEqualTo(about.y());
    }

    private static Box box(double x0, double x1, double y0, double y1, double z0, double z1) {
        return new Box(Interval.ofMetres(x0, x1), Interval.ofMetres(y0, y1), Interval.ofMetres(z0, z1));
    }
}
