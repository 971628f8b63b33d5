package headgate.verifier.report.drawing;

import headgate.api.shape.Point3;
import headgate.verifier.report.markup.Markup;

/** Draws the tightest place: a line with a bar at each end, or a ring where two things touch. */
final class Mark {

    private static final double BAR = 7;
    private static final double SHORTEST = 3;

    private Mark() {}

    /** Whether a projection shows the gap at half its true length or more; a gap of nothing shows everywhere. */
    static boolean shows(Projection seen, Scene.GapMark gap) {
        return shows(seen, gap.from(), gap.to());
    }

    /** Whether a projection shows what lies between two points at half its true length or more. */
    static boolean shows(Projection seen, Point3 from, Point3 to) {
        double length = length(from, to);
        return length == 0 || seen.of(from).distance(seen.of(to)) >= length / 2;
    }

    /** The true length, micrometres. */
    static double length(Scene.GapMark gap) {
        return length(gap.from(), gap.to());
    }

    private static double length(Point3 a, Point3 b) {
        double dx = (double) b.x() - a.x();
        double dy = (double) b.y() - a.y();
        double dz = (double) b.z() - a.z();
        return Math.sqrt(dx * dx + dy * dy + dz * dz);
    }

    static void draw(Markup svg, Projection seen, Canvas canvas, Scene.GapMark gap) {
        draw(
                svg,
                canvas,
                seen.of(gap.from()),
                seen.of(gap.to()),
                Ink.of(gap),
                Ink.of(gap).width());
    }

    static void draw(Markup svg, Canvas canvas, Flat from, Flat to, Ink ink, String width) {
        double x1 = canvas.x(from.right());
        double y1 = canvas.y(from.up());
        double x2 = canvas.x(to.right());
        double y2 = canvas.y(to.up());
        double length = Math.hypot(x2 - x1, y2 - y1);
        if (length < SHORTEST) {
            ring(svg, (x1 + x2) / 2, (y1 + y2) / 2, ink);
        } else {
            line(svg, x1, y1, x2, y2, "none", width, ink);
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

    /** An upright bar with feet, such as an interval of heights. */
    static void bar(Markup svg, double x, double top, double bottom) {
        String path =
                "M" + at(x - 4, top) + "h8M" + at(x, top) + "V" + Canvas.px(bottom) + "M" + at(x - 4, bottom) + "h8";
        svg.empty("path", "d", path, "stroke", "#fff", "stroke-width", "5", "fill", "none");
        svg.empty(
                        "path",
                        "d",
                        path,
                        "stroke",
                        Ink.HEIGHTS.stroke(),
                        "stroke-width",
                        Ink.HEIGHTS.width(),
                        "fill",
                        "none")
                .line();
    }

    /** A line from where something was, a dot, to where it is, a head; nothing if that can hardly be seen. */
    static void arrow(Markup svg, double x1, double y1, double x2, double y2) {
        double length = Math.hypot(x2 - x1, y2 - y1);
        if (length < 4 * SHORTEST) {
            return;
        }
        double dx = (x2 - x1) / length;
        double dy = (y2 - y1) / length;
        String path = "M" + at(x1, y1) + "L" + at(x2, y2) + "M" + at(x2 - 7 * dx - 4 * dy, y2 - 7 * dy + 4 * dx) + "L"
                + at(x2, y2) + "L" + at(x2 - 7 * dx + 4 * dy, y2 - 7 * dy - 4 * dx);
        svg.empty("path", "d", path, "stroke", "#fff", "stroke-width", "4.5", "fill", "none");
        svg.empty("path", "d", path, "stroke", Ink.WAY.stroke(), "stroke-width", Ink.WAY.width(), "fill", "none");
        svg.empty("circle", "cx", Canvas.px(x1), "cy", Canvas.px(y1), "r", "2.5", "fill", Ink.WAY.stroke())
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
