package headgate.verifier.report.drawing;

import headgate.verifier.check.Dimension;
import headgate.verifier.plot.DensityLadder;
import headgate.verifier.plot.PlotRunner;
import headgate.verifier.plot.PlotSummary;
import headgate.verifier.replay.ActionObserver;
import headgate.verifier.replay.Miss;
import headgate.verifier.report.markup.Markup;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;

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
     * Defines the fillings of reasons; to stand once on a page before they are used.
     *
     * @return the definitions, which show nothing themselves
     */
    public static Markup reasonFillings() {
        Markup svg = new Markup();
        svg.open("svg", "width", "0", "height", "0", "class", "defs", "aria-hidden", "true");
        svg.open("defs");
        for (Filling filling : Filling.values()) {
            svg.open("pattern", "id", filling.id(), "width", "8", "height", "8", "patternUnits", "userSpaceOnUse");
            svg.empty("rect", "width", "8", "height", "8", "fill", filling.ground);
            if (!filling.strokes.isEmpty()) {
                svg.empty("path", "d", filling.strokes, "stroke", filling.ink, "stroke-width", "1.4", "fill", "none");
            }
            svg.close();
        }
        return svg.close().close();
    }

    /**
     * Says how a reason is filled.
     *
     * @param why the reason
     * @return a patch with the reason's letter
     */
    public static Markup reasonSample(Miss why) {
        Markup svg = new Markup();
        svg.open("svg", "width", "34", "height", "22", "aria-hidden", "true");
        rectangle(svg, 0.5, 0.5, 33, 21, Filling.of(why).url());
        letter(svg, 17, 16, why);
        return svg.close();
    }

    /** The letter that stands for a reason in the bars, on white, so that it is read on any filling. */
    private static void letter(Markup svg, double x, double y, Miss why) {
        svg.empty("rect", "x", n(x - 7), "y", n(y - 12), "width", "14", "height", "16", "fill", "#ffffff");
        words(svg, x, y, "middle", Filling.of(why).letter);
    }

    /** Reasons differ in the lines of their filling, so that they are told apart without colour. */
    private enum Filling {
        OUTSIDE_RANGE("a", "#e3e6e8", "", "#4d565b"),
        UNSEEN("b", "#eef1f3", "M1 2h2M5 6h2", "#3b454a"),
        TOO_NEAR("c", "#e4edda", "M0 4h8", "#45702f"),
        NEVER_IN_REACH("d", "#f3ead3", "M4 0v8", "#6b4d2c"),
        SEEN_TOO_LATE("e", "#f6e0c6", "M-2 2l4-4M0 8l8-8M6 10l4-4", "#8f4a12"),
        WINDOW_TOO_SHORT("f", "#ecd9c6", "M-2 6l4 4M0 0l8 8M6-2l4 4", "#5a3410"),
        MAGAZINE_EMPTY("g", "#e9e1f4", "M0 4h8M4 0v8", "#5b3b8c"),
        BLOCKED("h", "#ddd3ee", "M0 0l8 8M0 8l8-8", "#3f2370"),
        ARM_BUSY("i", "#a3122f", "", "#a3122f"),
        IN_VAIN("j", "#dfe9ef", "M4 0v8M0 2h8M0 6h8", "#173f5a");

        private final String letter;
        private final String ground;
        private final String strokes;
        private final String ink;

        Filling(String letter, String ground, String strokes, String ink) {
            this.letter = letter;
            this.ground = ground;
            this.strokes = strokes;
            this.ink = ink;
        }

        static Filling of(Miss why) {
            return valueOf(why.name());
        }

        String id() {
            return "miss-" + name().toLowerCase(Locale.ROOT).replace('_', '-');
        }

        String url() {
            return "url(#" + id() + ")";
        }
    }

    private static String colour(int index) {
        return COLOURS.get(index % COLOURS.size());
    }

    private static String dash(int index) {
        return DASHES.get(index % DASHES.size());
    }

    /**
     * A value of what is varied, and the coverage with it.
     *
     * @param at the value
     * @param cell what came of it
     * @param main true if its bounds are drawn; false for a value that only refines
     */
    private record Point(double at, PlotSummary.Cell cell, boolean main) {}

    /**
     * Coverage over speed, one line for each group, with its bounds.
     *
     * @param summary what is drawn
     * @return the chart
     */
    public static Markup coverage(PlotSummary summary) {
        Frame frame = new Frame(
                "Coverage over speed",
                summary.groups().stream()
                        .flatMap(g -> g.cells().stream())
                        .mapToDouble(PlotSummary.Cell::speed)
                        .max()
                        .orElse(1));
        frame.wanted(summary.wanted().coverage(), summary.wanted().speed());
        for (double speed : summary.grid()) {
            frame.tick(speed, Dimension.SPEED.text(speed));
        }
        frame.axis("speed of the carriage");
        for (int g = 0; g < summary.groups().size(); g++) {
            frame.line(
                    summary.groups().get(g).cells().stream()
                            .map(c -> new Point(c.speed(), c, summary.grid().contains(c.speed())))
                            .toList(),
                    g);
        }
        return frame.svg.close();
    }

    /**
     * Coverage over the density of weeds at one speed, with its bounds.
     *
     * @param ladder what is drawn
     * @param wanted what is wanted
     * @return the chart
     */
    public static Markup density(DensityLadder ladder, PlotSummary.Wanted wanted) {
        List<DensityLadder.Rung> rungs = ladder.rungs();
        double most = rungs.get(rungs.size() - 1).density();
        Frame frame = new Frame("Coverage over density", most);
        frame.wanted(wanted.coverage(), wanted.density().orElse(0));
        for (int fifth = 1; fifth <= 5; fifth++) {
            frame.tick(most * fifth / 5, Dimension.DENSITY.text(most * fifth / 5));
        }
        frame.axis("weeds per square metre of the ground to be treated");
        frame.line(
                rungs.stream().map(r -> new Point(r.density(), r.cell(), true)).toList(), 0);
        return frame.svg.close();
    }

    /** A frame for shares over something that begins at 0. */
    private static final class Frame {
        private static final double TOP = 16;
        private static final double BOTTOM = 300;
        private final double most;
        private final Markup svg;

        Frame(String title, double most) {
            this.most = most;
            this.svg = chart(BOTTOM + 44, title);
            for (int percent = 0; percent <= 100; percent += 20) {
                double y = y(percent / 100.0);
                ReplayCharts.line(svg, LEFT, y, WIDTH - RIGHT, y, "#cfd6d8", 1, "none");
                words(svg, LEFT - 8, y + 5, "end", percent + " %");
            }
        }

        private static double y(double share) {
            return BOTTOM - (BOTTOM - TOP) * share;
        }

        private double x(double value) {
            return LEFT + 30 + (WIDTH - LEFT - RIGHT - 70) * value / most;
        }

        void wanted(double share, double value) {
            ReplayCharts.line(svg, LEFT, y(share), WIDTH - RIGHT, y(share), "#a3122f", 1.6, "6 4");
            // Under the line and at its end: points stand over it at the low values, and the wish is met there or
            // nowhere.
            words(svg, WIDTH - RIGHT, y(share) + 16, "end", "wanted: " + Dimension.SHARE.text(share));
            ReplayCharts.line(svg, x(value), TOP, x(value), BOTTOM, "#a3122f", 1.6, "6 4");
        }

        void tick(double value, String text) {
            words(svg, x(value), BOTTOM + 20, "middle", text);
        }

        void axis(String text) {
            words(svg, (LEFT + WIDTH - RIGHT) / 2, BOTTOM + 40, "middle", text);
        }

        void line(List<Point> points, int number) {
            StringBuilder path = new StringBuilder();
            for (Point point : points) {
                if (point.cell().targets() == 0) {
                    continue;
                }
                double x = x(point.at());
                double y = y(point.cell().coverage().mean());
                if (point.main()) {
                    double low = y(point.cell().coverage().lower());
                    double high = y(point.cell().coverage().upper());
                    ReplayCharts.line(svg, x, low, x, high, colour(number), 1.4, "none");
                    ReplayCharts.line(svg, x - 5, low, x + 5, low, colour(number), 1.4, "none");
                    ReplayCharts.line(svg, x - 5, high, x + 5, high, colour(number), 1.4, "none");
                }
                svg.empty("circle", "cx", n(x), "cy", n(y), "r", point.main() ? "3.5" : "2", "fill", colour(number));
                path.append(n(x)).append(',').append(n(y)).append(' ');
            }
            svg.empty(
                    "polyline",
                    "points",
                    path.toString().strip(),
                    "fill",
                    "none",
                    "stroke",
                    colour(number),
                    "stroke-width",
                    "2.4",
                    "stroke-dasharray",
                    dash(number));
        }
    }

    /**
     * Of all plants to be treated, what was treated and why the others were missed: one bar for each speed. A part that is
     * wide enough shows its reason's letter.
     *
     * @param cells one for each speed
     * @return the chart
     */
    public static Markup reasons(List<PlotSummary.Cell> cells) {
        double bar = 24;
        double step = 34;
        double bottom = 8 + step * cells.size();
        Markup svg = chart(bottom + 26, "Treated plants and reasons for misses");
        double width = WIDTH - LEFT - RIGHT - 20;
        double y = 8;
        for (PlotSummary.Cell cell : cells) {
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
                            "successful " + percent(cell.successful(), cell.targets()));
                }
                x += treated;
                for (Miss why : Miss.values()) {
                    double part = width * cell.missed().getOrDefault(why, 0L) / cell.targets();
                    if (part > 0) {
                        rectangle(svg, x, y, part, bar, Filling.of(why).url());
                        if (part > 20) {
                            letter(svg, x + part / 2, y + 17, why);
                        }
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
