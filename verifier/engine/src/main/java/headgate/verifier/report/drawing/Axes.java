package headgate.verifier.report.drawing;

import headgate.api.shape.Interval;
import headgate.verifier.report.markup.Markup;

/** What stands around a plot: ticks with metres, the names of the axes, where travel goes, and a scale bar. */
final class Axes {

    private Axes() {}

    static void draw(Markup svg, Canvas canvas, Projection seen) {
        ticks(svg, canvas, seen);
        travel(svg, canvas, seen);
        scaleBar(svg, canvas, canvas.left(), canvas.bottom() + 48);
    }

    private static void ticks(Markup svg, Canvas canvas, Projection seen) {
        StringBuilder marks = new StringBuilder();
        long step = Scale.round(canvas.scale(), 64);
        Interval across = canvas.right();
        for (long at = -Math.floorDiv(-across.least(), step) * step; at <= across.most(); at += step) {
            double x = canvas.x(at);
            marks.append('M').append(Mark.at(x, canvas.bottom())).append("v5");
            Label.draw(svg, x, canvas.bottom() + 19, "middle", Scale.metres(seen.carriageAcross(at)));
        }
        long rise = Scale.round(canvas.scale(), 34);
        Interval up = canvas.up();
        for (long at = -Math.floorDiv(-up.least(), rise) * rise; at <= up.most(); at += rise) {
            double y = canvas.y(at);
            marks.append('M').append(Mark.at(canvas.left(), y)).append("h-5");
            Label.draw(svg, canvas.left() - 8, y + 5, "end", Scale.metres(at));
        }
        svg.empty("path", "d", marks.toString(), "stroke", "#5c666b", "fill", "none")
                .line();
        Label.draw(svg, canvas.left() - 8, canvas.top() - 24, "end", seen.upwards() + ", m");
        String sense = seen == Projection.SIDE ? "forward" : "left is positive";
        Label.draw(svg, canvas.end(), canvas.bottom() + 48, "end", seen.across() + ", m (" + sense + ")");
    }

    private static void travel(Markup svg, Canvas canvas, Projection seen) {
        double x = canvas.end() + 8;
        double y = canvas.top() - 24;
        Label.draw(svg, x + 18, y, "start", seen == Projection.BEHIND ? "travel, away" : "travel");
        String arrow =
                switch (seen) {
                    case ABOVE -> "M" + Mark.at(x + 6, y + 2) + "v-13m-5 5l5 -5l5 5";
                    case SIDE -> "M" + Mark.at(x, y - 5) + "h13m-5 -5l5 5l-5 5";
                    case BEHIND -> "M" + Mark.at(x, y - 5) + "a6 6 0 1 0 12 0a6 6 0 1 0 -12 0m2 -4l8 8m0 -8l-8 8";
                };
        svg.empty("path", "d", arrow, "stroke", Ink.TEXT, "stroke-width", "1.6", "fill", "none")
                .line();
    }

    static void scaleBar(Markup svg, Canvas canvas, double x, double y) {
        long length = Scale.round(canvas.scale(), 70);
        double width = canvas.length(length);
        svg.empty(
                "path",
                "d",
                "M" + Mark.at(x, y - 10) + "v10h" + Canvas.px(width) + "v-10",
                "stroke",
                Ink.TEXT,
                "stroke-width",
                "2",
                "fill",
                "none");
        Label.draw(svg, x + width + 8, y, "start", Scale.words(length));
    }
}
