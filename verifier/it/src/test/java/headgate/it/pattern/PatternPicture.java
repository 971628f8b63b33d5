package headgate.it.pattern;

import headgate.verifier.report.markup.Markup;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/** Maps of patterns, and under them coverage over speed, a line for each pattern. */
final class PatternPicture {

    private static final double MAP = 204;
    private static final double LEFT = 60;
    private static final double RIGHT = 730;
    private static final double TOP = 280;
    private static final double BOTTOM = 560;

    /** Lines differ in colour, in dash and in the shape of their marks, so that they are told apart in grey. */
    private static final List<String> COLOURS = List.of("#8f4a12", "#173f5a", "#5b3b8c", "#45702f");

    private static final List<String> DASHES = List.of("none", "8 4", "none", "2 3");

    /** How far from the speed each line's bounds are drawn, so that they do not lie on one another. */
    private static final double BESIDE = 7;

    private final List<Double> speeds;
    private final Markup svg = new Markup();
    private int maps;
    private int lines;
    private double lastLabel = Double.NEGATIVE_INFINITY;

    PatternPicture(List<Double> speeds) {
        this.speeds = speeds;
        svg.open(
                "svg",
                "xmlns",
                "http://www.w3.org/2000/svg",
                "viewBox",
                "0 0 960 612",
                "role",
                "img",
                "font-family",
                "system-ui, sans-serif",
                "font-size",
                "14",
                "fill",
                "#20292f");
        svg.line()
                .leaf("title", "Four patterns of plants, and how many of them the sample gripper treats over speed")
                .line();
        svg.empty("rect", "width", "960", "height", "612", "fill", "#ffffff").line();
        axes();
    }

    private void axes() {
        for (int percent = 0; percent <= 100; percent += 20) {
            line(LEFT, y(percent / 100.0), RIGHT, y(percent / 100.0), "#cfd6d8", "none");
            text(LEFT - 8, y(percent / 100.0) + 5, "end", percent + " %");
        }
        for (double speed : speeds) {
            text(x(speed), BOTTOM + 22, "middle", speed + " m/s");
        }
        text((LEFT + RIGHT) / 2, BOTTOM + 44, "middle", "speed of the carriage");
    }

    PatternPicture map(String name, Pattern pattern) {
        double left = 18 + maps * (MAP + 36);
        double top = 34;
        text(left, top - 12, "start", name);
        svg.empty(
                        "rect", "x", n(left), "y", n(top), "width", n(MAP), "height", n(MAP), "fill", "#f7f8f6",
                        "stroke", "#8e9aa0")
                .line();
        double scale = MAP / pattern.side();
        for (Pattern.Place place : pattern.places()) {
            svg.empty(
                    "circle",
                    "cx",
                    n(left + place.x() * scale),
                    "cy",
                    n(top + MAP - place.y() * scale),
                    "r",
                    "1.6",
                    "fill",
                    COLOURS.get(maps));
        }
        svg.line();
        text(left + MAP, top + MAP + 17, "end", n(pattern.side()) + " m");
        maps++;
        return this;
    }

    PatternPicture line(String name, Treated treated) {
        String colour = COLOURS.get(lines);
        double beside = (lines - 1.5) * BESIDE;
        StringBuilder path = new StringBuilder();
        for (Treated.Cell cell : treated.cells()) {
            double x = x(cell.speed()) + beside;
            line(x, y(cell.coverage().lower()), x, y(cell.coverage().upper()), colour, "none");
            path.append(path.isEmpty() ? "M" : "L")
                    .append(n(x))
                    .append(' ')
                    .append(n(y(cell.coverage().mean())));
            mark(x, y(cell.coverage().mean()), colour);
        }
        svg.empty(
                        "path",
                        "d",
                        path.toString(),
                        "fill",
                        "none",
                        "stroke",
                        colour,
                        "stroke-width",
                        "2",
                        "stroke-dasharray",
                        DASHES.get(lines))
                .line();
        Treated.Cell last = treated.cells().get(treated.cells().size() - 1);
        double label = y(last.coverage().mean()) + 5;
        // Two lines that end together are labelled one under the other.
        label = Math.abs(label - lastLabel) < 18 ? lastLabel + 18 : label;
        lastLabel = label;
        double key = RIGHT + 14;
        mark(key + 6, label - 5, colour);
        text(key + 18, label, "start", name);
        lines++;
        return this;
    }

    /** A filled or hollow disc, a filled or hollow square. */
    private void mark(double x, double y, String colour) {
        String fill = lines % 2 == 0 ? colour : "#ffffff";
        if (lines < 2) {
            svg.empty(
                    "circle", "cx", n(x), "cy", n(y), "r", "4", "fill", fill, "stroke", colour, "stroke-width", "1.6");
        } else {
            svg.empty(
                    "rect",
                    "x",
                    n(x - 4),
                    "y",
                    n(y - 4),
                    "width",
                    "8",
                    "height",
                    "8",
                    "fill",
                    fill,
                    "stroke",
                    colour,
                    "stroke-width",
                    "1.6");
        }
    }

    private double x(double speed) {
        double first = speeds.get(0);
        double span = speeds.get(speeds.size() - 1) - first;
        return LEFT + 40 + (RIGHT - LEFT - 80) * (speed - first) / span;
    }

    private static double y(double share) {
        return BOTTOM - (BOTTOM - TOP) * share;
    }

    private void line(double x1, double y1, double x2, double y2, String stroke, String dashes) {
        svg.empty(
                "path",
                "d",
                "M" + n(x1) + " " + n(y1) + "L" + n(x2) + " " + n(y2),
                "stroke",
                stroke,
                "stroke-width",
                "1.5",
                "stroke-dasharray",
                dashes);
    }

    private void text(double x, double y, String anchor, String text) {
        svg.leaf("text", text, "x", n(x), "y", n(y), "text-anchor", anchor).line();
    }

    private static String n(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(1, RoundingMode.HALF_EVEN);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    String svg() {
        return svg.close().line().toString();
    }
}
