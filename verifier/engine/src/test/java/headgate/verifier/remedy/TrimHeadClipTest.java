package headgate.verifier.remedy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import headgate.api.shape.Interval;
import headgate.api.shape.Outline;
import headgate.api.shape.Point;
import headgate.api.shape.Prism;
import java.util.List;
import org.junit.jupiter.api.Test;

class TrimHeadClipTest {

    private static final Interval HEIGHT = new Interval(0, 1000);

    @Test
    void cutsABoxOnEachSide() {
        Prism box = Prism.of(Outline.rectangle(new Interval(-100, 200), new Interval(-300, 400)), HEIGHT);

        assertThat(Side.FRONT.keep(box, 150)).singleElement().satisfies(p -> assertThat(p.outline())
                .isEqualTo(Outline.rectangle(new Interval(-100, 150), new Interval(-300, 400))));
        assertThat(Side.REAR.keep(box, 50)).singleElement().satisfies(p -> assertThat(p.outline())
                .isEqualTo(Outline.rectangle(new Interval(-50, 200), new Interval(-300, 400))));
        assertThat(Side.LEFT.keep(box, 390)).singleElement().satisfies(p -> assertThat(p.outline())
                .isEqualTo(Outline.rectangle(new Interval(-100, 200), new Interval(-300, 390))));
        assertThat(Side.RIGHT.keep(box, 290)).singleElement().satisfies(p -> assertThat(p.outline())
                .isEqualTo(Outline.rectangle(new Interval(-100, 200), new Interval(-290, 400))));
    }

    @Test
    void keepsAllOrNothing() {
        Prism box = Prism.of(Outline.rectangle(new Interval(0, 10), new Interval(0, 10)), HEIGHT);

        assertThat(Side.LEFT.keep(box, 10)).containsExactly(box);
        assertThat(Side.LEFT.keep(box, 0)).isEmpty();
        assertThat(Side.LEFT.keep(box, -5)).isEmpty();
    }

    @Test
    void cutsATriangleWhereItsSlantedEdgesCross() {
        // Corners (0,0), (12,0), (0,12): at x = 4 the slanted edge is at y = 8.
        Prism triangle = Prism.of(Outline.of(List.of(new Point(0, 0), new Point(12, 0), new Point(0, 12))), HEIGHT);

        assertThat(Side.FRONT.keep(triangle, 4)).singleElement().satisfies(p -> assertThat(p.outline())
                .isEqualTo(Outline.of(List.of(new Point(0, 0), new Point(4, 0), new Point(4, 8), new Point(0, 12)))));
    }

    @Test
    void cutsTheTwoPeaksOfANotchedOutline() {
        // A U, open to +y: above y = 5 only its two legs remain.
        Outline u = Outline.of(List.of(
                new Point(0, 0),
                new Point(30, 0),
                new Point(30, 20),
                new Point(20, 20),
                new Point(20, 5),
                new Point(10, 5),
                new Point(10, 20),
                new Point(0, 20)));

        double kept = Side.LEFT.keep(Prism.of(u, HEIGHT), 10).stream()
                .mapToDouble(p -> p.outline().area())
                .sum();

        // 30 x 5 below the notch, two legs of 10 x 5 above, square micrometres.
        assertThat(kept).isEqualTo(250e-12, within(1e-20));
    }
}
