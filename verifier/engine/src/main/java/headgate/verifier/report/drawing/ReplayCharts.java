package headgate.verifier.report.drawing;

import headgate.verifier.check.Dimension;
import headgate.verifier.plot.PlotRunner;
import headgate.verifier.plot.PlotSummary;
import headgate.verifier.replay.ActionObserver;
import headgate.verifier.replay.Miss;
import headgate.verifier.report.markup.Markup;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/** Charts of a replay: coverage over speed, reasons for misses, what each arm does. */
public final class ReplayCharts {

    private static final double WIDTH = 1040;
    private static final double LEFT = 70;
    private static final double RIGHT = 24;

    /** Lines of groups differ in colour and in dash. */
    private static final List<String> COLOURS =
            List.of("#173f5a", "#8f4a12", "#45702f", "#5b3b8c", "#a3122f", "#4d565b");

    private static final List<String> DASHES = List.of("none", "8 4", "2 3", "10 3 2 3", "5 2", "1 5");

    private ReplayCharts() {}

    /**
     * Says how a group's line is drawn.
     *
     * @param index number of the group
     * @return a short piece of the line
     */
    public static Markup lineSample(int index) {
        Markup svg = new Markup();
        svg.open("svg", "width", "40", "height", "12", "aria-hidden", "true");
        line(svg, 0, 6, 40, 6, colour(index), 2.4, dash(index));
        return svg.close();
    }

    /**
     * Says how a reason is filled.
     *
     * @param why the reason
     * @return a patch
     */
    public static Markup reasonSample(Miss why) {
        Markup svg = new Markup();
        svg.open("svg", "width", "24", "height", "14", "aria-hidden", "true");
        rectangle(svg, 0, 0, 24, 14, reason(why));
        return svg.close();
    }

    private static String colour(int index) {
        return COLOURS.get(index % COLOURS.size());
    }

    private static String dash(int index) {
        return DASHES.get(index % DASHES.size());
    }

    private static String reason(Miss why) {
        return switch (why) {
            case OUTSIDE_RANGE -> "#c9ced1";
            case UNSEEN -> "#8e9aa0";
            case TOO_NEAR -> "#9fb98c";
            case NEVER_IN_REACH -> "#d8c9a8";
            case SEEN_TOO_LATE -> "#c08c4e";
            case WINDOW_TOO_SHORT -> "#7d4e1c";
            case MAGAZINE_EMPTY -> "#b9a3d6";
            case BLOCKED -> "#6a4a9c";
            case ARM_BUSY -> "#a3122f";
        };
    }

    /**
     * Coverage over speed, one line for each group, with its bounds.
     *
     * @param summary what is drawn
     * @return the chart
     */
    public static Markup coverage(PlotSummary summary) {
        double top = 16;
        double bottom = 300;
        double most = summary.groups().stream()
                .flatMap(g -> g.cells().stream())
                .mapToDouble(PlotSummary.Cell::speed)
                .max()
                .orElse(1);
        Markup svg = chart(bottom + 44, "Coverage over speed");
        for (int percent = 0; percent <= 100; percent += 20) {
            double y = bottom - (bottom - top) * percent / 100;
            line(svg, LEFT, y, WIDTH - RIGHT, y, "#cfd6d8", 1, "none");
            words(svg, LEFT - 8, y + 5, "end", percent + " %");
        }
        double wanted = bottom - (bottom - top) * summary.wanted().coverage();
        line(svg, LEFT, wanted, WIDTH - RIGHT, wanted, "#a3122f", 1.6, "6 4");
        words(
                svg,
                LEFT + 4,
                wanted - 5,
                "start",
                "wanted: " + Dimension.SHARE.text(summary.wanted().coverage()));
        double wantedSpeed = x(summary.wanted().speed(), most);
        line(svg, wantedSpeed, top, wantedSpeed, bottom, "#a3122f", 1.6, "6 4");
        List<PlotSummary.Cell> ticks = summary.groups().get(0).cells();
        for (PlotSummary.Cell cell : ticks) {
            words(svg, x(cell.speed(), most), bottom + 20, "middle", Dimension.SPEED.text(cell.speed()));
        }
        words(svg, (LEFT + WIDTH - RIGHT) / 2, bottom + 40, "middle", "speed of the carriage");
        for (int g = 0; g < summary.groups().size(); g++) {
            List<PlotSummary.Cell> cells = summary.groups().get(g).cells();
            StringBuilder points = new StringBuilder();
            for (PlotSummary.Cell cell : cells) {
                double x = x(cell.speed(), most);
                double y = bottom - (bottom - top) * cell.coverage().mean();
                double low = bottom - (bottom - top) * cell.coverage().lower();
                double high = bottom - (bottom - top) * cell.coverage().upper();
                line(svg, x, low, x, high, colour(g), 1.4, "none");
                line(svg, x - 5, low, x + 5, low, colour(g), 1.4, "none");
                line(svg, x - 5, high, x + 5, high, colour(g), 1.4, "none");
                svg.empty("circle", "cx", n(x), "cy", n(y), "r", "3.5", "fill", colour(g));
                points.append(n(x)).append(',').append(n(y)).append(' ');
            }
            svg.empty(
                    "polyline",
                    "points",
                    points.toString().strip(),
                    "fill",
                    "none",
                    "stroke",
                    colour(g),
                    "stroke-width",
                    "2.4",
                    "stroke-dasharray",
                    dash(g));
        }
        return svg.close();
    }

    private static double x(double speed, double most) {
        return LEFT + 30 + (WIDTH - LEFT - RIGHT - 70) * speed / most;
    }

    /**
     * Of all plants to be treated, what was treated and why the others were missed: one bar for each speed.
     *
     * @param group the group
     * @return the chart
     */
    public static Markup reasons(PlotSummary.Group group) {
        double bar = 24;
        double step = 34;
        double bottom = 8 + step * group.cells().size();
        Markup svg = chart(bottom + 26, "Treated plants and reasons for misses");
        double width = WIDTH - LEFT - RIGHT - 20;
        double y = 8;
        for (PlotSummary.Cell cell : group.cells()) {
            words(svg, LEFT + 12, y + 17, "end", Dimension.SPEED.text(cell.speed()));
            double x = LEFT + 20;
            if (cell.targets() > 0) {
                double treated = width * cell.successful() / cell.targets();
                svg.empty(
                        "rect",
                        "x",
                        n(x),
                        "y",
                        n(y),
                        "width",
                        n(treated),
                        "height",
                        n(bar),
                        "fill",
                        "#fff",
                        "stroke",
                        "#3b454a");
                if (treated > 120) {
                    words(
                            svg,
                            x + treated / 2,
                            y + 17,
                            "middle",
                            "treated " + percent(cell.successful(), cell.targets()));
                }
                x += treated;
                for (Miss why : Miss.values()) {
                    double part = width * cell.missed().getOrDefault(why, 0L) / cell.targets();
                    if (part > 0) {
                        rectangle(svg, x, y, part, bar, reason(why));
                        x += part;
                    }
                }
            }
            y += step;
        }
        for (int share = 0; share <= 100; share += 20) {
            double at = LEFT + 20 + width * share / 100;
            line(svg, at, bottom - 2, at, bottom + 4, "#4a565b", 1, "none");
            words(svg, at, bottom + 18, "middle", share + " %");
        }
        return svg.close();
    }

    private static String percent(long part, long all) {
        return Dimension.SHARE.text((double) part / all);
    }

    /**
     * What each arm does, from the first action on.
     *
     * @param arms the arms' names
     * @param actions the actions, in the order in which they began; at least one
     * @return the chart
     */
    public static Markup timeline(List<String> arms, List<ActionObserver.Done> actions) {
        double left = 110;
        double row = 26;
        double bottom = 8 + row * arms.size();
        double begin = actions.get(0).shiftFrom();
        Markup svg = chart(bottom + 44, "What each arm does in the first " + (int) PlotRunner.TIMELINE + " seconds");
        double perSecond = (WIDTH - left - RIGHT) / PlotRunner.TIMELINE;
        for (int arm = 0; arm < arms.size(); arm++) {
            double y = 8 + row * arm;
            words(svg, left - 8, y + 16, "end", arms.get(arm));
            line(svg, left, y + row / 2, WIDTH - RIGHT, y + row / 2, "#cfd6d8", 1, "none");
        }
        for (ActionObserver.Done action : actions) {
            double y = 11 + row * action.arm();
            span(svg, left, perSecond, begin, action.shiftFrom(), action.start(), y + 6, 8, "#b9a3d6");
            span(svg, left, perSecond, begin, action.start(), action.end(), y + 3, 14, "#c9dcea");
            span(svg, left, perSecond, begin, action.contactStart(), action.contactEnd(), y, 20, "#173f5a");
        }
        for (int second = 0; second <= PlotRunner.TIMELINE; second += 10) {
            double x = left + perSecond * second;
            line(svg, x, 4, x, bottom + 4, "#8e9aa0", 0.6, "2 4");
            words(svg, x, bottom + 20, "middle", second + " s");
        }
        words(svg, (left + WIDTH - RIGHT) / 2, bottom + 40, "middle", "time since the first action");
        return svg.close();
    }

    private static void span(
            Markup svg,
            double left,
            double perSecond,
            double begin,
            double from,
            double to,
            double y,
            double height,
            String fill) {
        double start = Math.min(PlotRunner.TIMELINE, from - begin);
        double end = Math.min(PlotRunner.TIMELINE, to - begin);
        if (end > start) {
            rectangle(svg, left + perSecond * start, y, perSecond * (end - start), height, fill);
        }
    }

    private static Markup chart(double height, String title) {
        Markup svg = new Markup();
        svg.open("svg", "viewBox", "0 0 " + n(WIDTH) + " " + n(height), "role", "img", "aria-label", title);
        return svg;
    }

    private static void line(
            Markup svg, double x1, double y1, double x2, double y2, String stroke, double width, String dash) {
        svg.empty(
                "line",
                "x1",
                n(x1),
                "y1",
                n(y1),
                "x2",
                n(x2),
                "y2",
                n(y2),
                "stroke",
                stroke,
                "stroke-width",
                n(width),
                "stroke-dasharray",
                dash);
    }

    private static void rectangle(Markup svg, double x, double y, double width, double height, String fill) {
        svg.empty(
                "rect",
                "x",
                n(x),
                "y",
                n(y),
                "width",
                n(width),
                "height",
                n(height),
                "fill",
                fill,
                "stroke",
                "#fff",
                "stroke-width",
                "0.5");
    }

    private static void words(Markup svg, double x, double y, String anchor, String words) {
        svg.leaf(
                "text",
                words,
                "x",
                n(x),
                "y",
                n(y),
                "text-anchor",
                anchor,
                "font-size",
                "14",
                "font-family",
                "system-ui, sans-serif",
                "fill",
                Ink.TEXT);
    }

    private static String n(double value) {
        BigDecimal rounded = new BigDecimal(value).setScale(1, RoundingMode.HALF_EVEN);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
