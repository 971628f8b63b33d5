package headgate.verifier.report.drawing;

import headgate.verifier.report.markup.Markup;

/** Draws the tightest place: a line with a bar at each end, or a ring where two things touch. */
final class Mark {

    private static final double BAR = 7;
    private static final double SHORTEST = 3;

    private Mark() {}

    /** Whether a projection shows the gap at half its true length or more; a gap of nothing shows everywhere. */
    static boolean shows(Projection seen, Scene.GapMark gap) {
        double length = length(gap);
        return length == 0 || seen.of(gap.from()).distance(seen.of(gap.to())) >= length / 2;
    }

    /** The true length, micrometres. */
    static double length(Scene.GapMark gap) {
        double dx = (double) gap.to().x() - gap.from().x();
        double dy = (double) gap.to().y() - gap.from().y();
        double dz = (double) gap.to().z() - gap.from().z();
        return Math.sqrt(dx * dx + dy * dy + dz * dz);
    }

    static void draw(Markup svg, Projection seen, Canvas canvas, Scene.GapMark gap) {
        Ink ink = Ink.of(gap);
        Flat from = seen.of(gap.from());
        Flat to = seen.of(gap.to());
        double x1 = canvas.x(from.right());
        double y1 = canvas.y(from.up());
        double x2 = canvas.x(to.right());
        double y2 = canvas.y(to.up());
        double length = Math.hypot(x2 - x1, y2 - y1);
        if (length < SHORTEST) {
            ring(svg, (x1 + x2) / 2, (y1 + y2) / 2, ink);
        } else {
            line(svg, x1, y1, x2, y2, "none", ink.width(), ink);
            if (length < 4 * SHORTEST) {
                ring(svg, (x1 + x2) / 2, (y1 + y2) / 2, ink);
            }
        }
    }

    /** A line with bars at its ends, with a light edge so that it stands out on any ground. */
    static void line(Markup svg, double x1, double y1, double x2, double y2, String dash, String width, Ink ink) {
        double length = Math.hypot(x2 - x1, y2 - y1);
        double nx = -(y2 - y1) / length * BAR;
        double ny = (x2 - x1) / length * BAR;
        String bars = "M" + at(x1 - nx, y1 - ny) + "L" + at(x1 + nx, y1 + ny) + "M" + at(x2 - nx, y2 - ny) + "L"
                + at(x2 + nx, y2 + ny);
        String line = "M" + at(x1, y1) + "L" + at(x2, y2);
        svg.empty("path", "d", line + bars, "stroke", "#fff", "stroke-width", "6", "fill", "none");
        svg.empty(
                "path",
                "d",
                line,
                "stroke",
                ink.stroke(),
                "stroke-width",
                width,
                "stroke-dasharray",
                dash,
                "fill",
                "none");
        svg.empty("path", "d", bars, "stroke", ink.stroke(), "stroke-width", width, "fill", "none")
                .line();
    }

    private static void ring(Markup svg, double x, double y, Ink ink) {
        for (String[] look : new String[][] {{"#fff", "6"}, {ink.stroke(), ink.width()}}) {
            svg.empty(
                    "circle",
                    "cx",
                    Canvas.px(x),
                    "cy",
                    Canvas.px(y),
                    "r",
                    "11",
                    "fill",
                    "none",
                    "stroke",
                    look[0],
                    "stroke-width",
                    look[1]);
        }
        svg.line();
    }

    static String at(double x, double y) {
        return Canvas.px(x) + " " + Canvas.px(y);
    }
}
