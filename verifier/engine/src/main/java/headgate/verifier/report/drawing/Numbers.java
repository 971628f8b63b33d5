package headgate.verifier.report.drawing;

import headgate.verifier.report.markup.Markup;
import java.util.ArrayList;
import java.util.List;

/** Draws numbered places: what was measured as a line, and its number in a disc beside it, discs apart from each other. */
final class Numbers {

    private static final double RADIUS = 11;
    private static final double BETWEEN = 2 * RADIUS + 3;
    private static final double[] DISTANCES = {28, 54, 80, 106, 132, 158};
    private static final int WAYS = 16;

    /** A place in the picture that is taken, pixels. */
    private record At(double x, double y) {

        double to(double otherX, double otherY) {
            return Math.hypot(otherX - x, otherY - y);
        }
    }

    private final Markup svg;
    private final Canvas canvas;
    private final double keptTop;
    private final double keptBottom;
    private final List<At> taken = new ArrayList<>();

    private Numbers(Markup svg, Canvas canvas, double keptTop, double keptBottom) {
        this.svg = svg;
        this.canvas = canvas;
        this.keptTop = keptTop;
        this.keptBottom = keptBottom;
    }

    /**
     * Draws those places that a projection shows at half their true length or more.
     *
     * @param keptTop pixels below the upper edge of the plot that hold something else
     * @param keptBottom pixels above the lower edge of the plot that hold something else
     */
    static void draw(Markup svg, Projection seen, Canvas canvas, List<Spot> spots, double keptTop, double keptBottom) {
        Numbers numbers = new Numbers(svg, canvas, keptTop, keptBottom);
        List<Spot> shown =
                spots.stream().filter(s -> Mark.shows(seen, s.from(), s.to())).toList();
        for (Spot spot : shown) {
            numbers.taken.add(numbers.middle(seen, spot));
            Ink ink = Ink.of(spot.holds());
            Mark.draw(svg, canvas, seen.of(spot.from()), seen.of(spot.to()), ink, "2");
        }
        shown.forEach(s -> numbers.number(seen, s));
    }

    private At middle(Projection seen, Spot spot) {
        Flat from = seen.of(spot.from());
        Flat to = seen.of(spot.to());
        double x = canvas.x((from.right() + to.right()) / 2.0);
        double y = canvas.y((from.up() + to.up()) / 2.0);
        return new At(
                Math.min(Math.max(x, canvas.left()), canvas.end()),
                Math.min(Math.max(y, canvas.top()), canvas.bottom()));
    }

    private void number(Projection seen, Spot spot) {
        At middle = middle(seen, spot);
        At at = free(middle);
        taken.add(at);
        Ink ink = Ink.of(spot.holds());
        String leader = "M" + Mark.at(middle.x(), middle.y()) + "L" + Mark.at(at.x(), at.y());
        svg.empty("path", "d", leader, "stroke", "#fff", "stroke-width", "4", "fill", "none");
        svg.empty("path", "d", leader, "stroke", ink.stroke(), "stroke-width", "1.2", "fill", "none");
        svg.empty(
                "circle",
                "cx",
                Canvas.px(at.x()),
                "cy",
                Canvas.px(at.y()),
                "r",
                Canvas.px(RADIUS),
                "fill",
                "#fff",
                "stroke",
                ink.stroke(),
                "stroke-width",
                // What fails has a heavier rim, so that it is told apart without colour.
                spot.holds() ? "1.2" : "3");
        Label.draw(svg, at.x(), at.y() + 5, "middle", String.valueOf(spot.number()), "font-weight", "bold");
    }

    /** The nearest place for a disc that is in the plot and on nothing else; the last one if all are taken. */
    private At free(At middle) {
        At last = middle;
        for (double distance : DISTANCES) {
            for (int i = 0; i < WAYS; i++) {
                double turn = 2 * Math.PI * (i + 0.5) / WAYS;
                double x = middle.x() + distance * StrictMath.sin(turn);
                double y = middle.y() - distance * StrictMath.cos(turn);
                boolean inside = x >= canvas.left() + RADIUS + 2
                        && x <= canvas.end() - RADIUS - 2
                        && y >= canvas.top() + keptTop + RADIUS + 2
                        && y <= canvas.bottom() - keptBottom - RADIUS - 2;
                if (inside) {
                    last = new At(x, y);
                    if (taken.stream().allMatch(t -> t.to(x, y) >= BETWEEN)) {
                        return last;
                    }
                }
            }
        }
        return last;
    }
}
