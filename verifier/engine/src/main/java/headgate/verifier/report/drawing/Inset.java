package headgate.verifier.report.drawing;

import headgate.api.shape.Interval;
import headgate.verifier.report.markup.Markup;
import java.util.Comparator;
import java.util.stream.Stream;

/** The tightest place, enlarged: what is free, and beside it what must be free. */
final class Inset {

    private static final double WIDTH = 700;
    private static final double LEFT = 10;
    private static final double TOP = 56;
    private static final double PLOT = 340;
    private static final double BELOW = 34;
    private static final String ID = "inset";

    /** Half of the least length that is shown across, micrometres. */
    private static final double LEAST = 120_000;

    private Inset() {}

    static Markup of(Scene scene, Scene.GapMark gap) {
        Projection seen = bestFor(gap);
        Canvas canvas = canvas(seen, gap);
        double height = canvas.bottom() + BELOW;
        Markup svg = new Markup();
        Picture.open(
                svg,
                ID,
                WIDTH,
                height,
                "The tightest place, enlarged",
                gap.subject() + ": " + gap.measured() + ", must be " + gap.limit() + ", seen " + seen.words() + ".");
        Layers.draw(svg, scene, seen, canvas, ID);
        lines(svg, seen, canvas, gap);
        key(svg, 20, Ink.of(gap), "none", "gap " + gap.measured());
        key(svg, 44, Ink.of(gap), "5 4", "must be " + gap.limit());
        Axes.scaleBar(svg, canvas, LEFT + 2, canvas.bottom() + 24);
        double times = canvas.scale() / View.canvas(scene, seen).scale();
        Label.draw(
                svg,
                canvas.end(),
                canvas.bottom() + 24,
                "end",
                "seen " + seen.words() + ", " + Canvas.px(Math.round(times * 10) / 10.0) + " times as large");
        return svg.close();
    }

    /** The projection that shows most of the gap's length. */
    private static Projection bestFor(Scene.GapMark gap) {
        return Stream.of(Projection.values())
                .max(Comparator.comparingDouble(
                                (Projection p) -> p.of(gap.from()).distance(p.of(gap.to())))
                        .thenComparing(Comparator.reverseOrder()))
                .orElseThrow();
    }

    private static Canvas canvas(Projection seen, Scene.GapMark gap) {
        Flat from = seen.of(gap.from());
        Flat to = seen.of(gap.to());
        double half = Math.max(LEAST, Math.max(1.3 * Mark.length(gap), 0.8 * gap.limitLength() * 1e6));
        double width = WIDTH - 2 * LEFT;
        long across = (long) half;
        long upwards = (long) (half * PLOT / width);
        long right = (from.right() + to.right()) / 2;
        long up = (from.up() + to.up()) / 2;
        // A steep gap must fit into the height, a flat one into the width.
        double steep = Math.abs((double) to.up() - from.up()) / Math.max(1, from.distance(to));
        double grown = 1 + steep * (width / PLOT - 1);
        return new Canvas(
                new Interval(right - (long) (across * grown), right + (long) (across * grown)),
                new Interval(up - (long) (upwards * grown), up + (long) (upwards * grown)),
                width / (2 * across * grown) * 1e6,
                LEFT,
                TOP,
                0,
                0);
    }

    private static void lines(Markup svg, Projection seen, Canvas canvas, Scene.GapMark gap) {
        Flat from = seen.of(gap.from());
        Flat to = seen.of(gap.to());
        double x1 = canvas.x(from.right());
        double y1 = canvas.y(from.up());
        double length = Math.hypot(canvas.x(to.right()) - x1, canvas.y(to.up()) - y1);
        double needed = canvas.length(gap.limitLength() * 1e6);
        svg.open("g", "clip-path", "url(#" + ID + "-plot)");
        if (length >= 1 && needed >= 1) {
            double dx = (canvas.x(to.right()) - x1) / length;
            double dy = (canvas.y(to.up()) - y1) / length;
            double middleX = (x1 + canvas.x(to.right())) / 2 - dy * 34;
            double middleY = (y1 + canvas.y(to.up())) / 2 + dx * 34;
            Mark.line(
                    svg,
                    middleX - dx * needed / 2,
                    middleY - dy * needed / 2,
                    middleX + dx * needed / 2,
                    middleY + dy * needed / 2,
                    "5 4",
                    "2",
                    Ink.of(gap));
        }
        Mark.draw(svg, seen, canvas, gap);
        svg.close().line();
    }

    private static void key(Markup svg, double y, Ink ink, String dash, String text) {
        Mark.line(svg, LEFT + 2, y - 5, LEFT + 52, y - 5, dash, "none".equals(dash) ? ink.width() : "2", ink);
        Label.draw(svg, LEFT + 64, y, "start", Label.cut(text, WIDTH - LEFT - 70), "font-weight", "bold");
    }
}
