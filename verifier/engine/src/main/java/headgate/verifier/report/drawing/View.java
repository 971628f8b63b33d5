package headgate.verifier.report.drawing;

import headgate.api.shape.Interval;
import headgate.verifier.report.markup.Markup;
import java.util.ArrayList;
import java.util.List;

/** One picture of the whole scene, to scale, with axes, names and a scale bar around the plot. */
final class View {

    /** Width of every picture, pixels. */
    static final double WIDTH = 1040;

    /** Room inside the plot, over or under everything else, for the label of the gap. */
    private static final double ROOM = 36;

    private static final double MOST_HEIGHT = 520;

    /** From above a carriage is often as long as it is wide; seen smaller, its heads could not be told apart. */
    private static final double MOST_HEIGHT_ABOVE = 760;

    private static final long AROUND = 60_000;

    private final Scene scene;
    private final Projection seen;
    private final Canvas canvas;
    private final Markup svg = new Markup();

    private View(Scene scene, Projection seen) {
        this.scene = scene;
        this.seen = seen;
        this.canvas = canvas(scene, seen);
    }

    /** The plot that a whole scene fits into. */
    static Canvas canvas(Scene scene, Projection seen) {
        Flat[] corners = Layers.corners(scene, seen);
        Interval right = new Interval(corners[0].right() - AROUND, corners[1].right() + AROUND);
        long lowest = seen == Projection.ABOVE ? corners[0].up() - AROUND : Math.min(0, corners[0].up());
        Interval up = new Interval(lowest, corners[1].up() + AROUND);
        double room = WIDTH - Picture.LEFT - Picture.RIGHT;
        double scale = Canvas.fit(right, up, room, seen == Projection.ABOVE ? MOST_HEIGHT_ABOVE : MOST_HEIGHT);
        // A narrow scene is seen with more ground on either side rather than in a narrow plot.
        long missing = Math.max(0, (long) (room / scale * 1e6) - right.length()) / 2;
        boolean over = labelOver(scene, seen, up);
        return new Canvas(
                new Interval(right.least() - missing, right.most() + missing),
                up,
                scale,
                Picture.LEFT,
                Picture.TOP,
                over ? ROOM : 0,
                over ? 0 : ROOM);
    }

    /** Seen from above, the label stands at the nearer edge, so that its line crosses as little as can be. */
    private static boolean labelOver(Scene scene, Projection seen, Interval up) {
        return seen == Projection.ABOVE
                && scene.gap()
                        .filter(g -> seen.of(g.from()).up() + seen.of(g.to()).up() > up.least() + up.most())
                        .isPresent();
    }

    static Markup of(Scene scene, Projection seen) {
        return new View(scene, seen).make();
    }

    private Markup make() {
        String id = seen.id();
        double height = canvas.bottom() + Picture.BELOW;
        Picture.open(svg, id, WIDTH, height, "The carriage with its heads, seen " + seen.words(), description());
        Layers.draw(svg, scene, seen, canvas, id);
        topLabels();
        Axes.draw(svg, canvas, seen);
        if (seen == Projection.ABOVE) {
            beamLabels();
        }
        boolean over = canvas.headroom() > 0;
        Numbers.draw(svg, seen, canvas, scene.spots(), over ? ROOM : 0, over ? 0 : ROOM);
        scene.gap().filter(g -> Mark.shows(seen, g)).ifPresent(this::gap);
        return svg.close();
    }

    private String description() {
        StringBuilder words = new StringBuilder();
        words.append(
                        scene.workers().isEmpty()
                                ? "No arm is set"
                                : scene.workers().size() + " arms at work")
                .append(" over ")
                .append(scene.rows().size())
                .append(" rows.");
        scene.gap().filter(g -> Mark.shows(seen, g)).ifPresent(g -> words.append(" The tightest place is marked: ")
                .append(g.subject())
                .append(", ")
                .append(g.measured())
                .append(", must be ")
                .append(g.limit())
                .append('.'));
        return words.toString();
    }

    private void topLabels() {
        List<Label> upper = new ArrayList<>();
        List<Label> lower = new ArrayList<>();
        if (seen == Projection.SIDE) {
            scene.beams().forEach(b -> lower.add(new Label(canvas.x(b.x()), "beam " + b.id())));
        } else {
            boolean roomy = canvas.length(scene.crop().rowSpacing()) > Label.width("lane 88") + 8;
            for (Scene.Row row : scene.rows()) {
                double x = canvas.x(-row.y());
                upper.add(new Label(x, row.arm().orElse("\u2013")));
                lower.add(new Label(x, roomy ? "lane " + row.number() : String.valueOf(row.number())));
            }
        }
        strip(upper, canvas.top() - 24, "bold");
        strip(lower, canvas.top() - 8, "normal");
    }

    private void strip(List<Label> labels, double y, String weight) {
        for (Label label : Label.apart(labels, canvas.left(), canvas.end())) {
            Label.draw(svg, label.at(), y, "middle", label.text(), "font-weight", weight);
        }
    }

    private void beamLabels() {
        double last = Double.NEGATIVE_INFINITY;
        List<Scene.Beam> frontToRear = scene.beams().stream()
                .sorted((a, b) -> Long.compare(b.x(), a.x()))
                .toList();
        for (Scene.Beam beam : frontToRear) {
            double y = canvas.y(beam.x()) + 5;
            if (y - last >= 18) {
                Label.draw(svg, canvas.end() + 8, y, "start", Label.cut("beam " + beam.id(), Picture.RIGHT - 12));
                last = y;
            }
        }
    }

    private void gap(Scene.GapMark gap) {
        Flat from = seen.of(gap.from());
        Flat to = seen.of(gap.to());
        double x = canvas.x((from.right() + to.right()) / 2.0);
        double y = canvas.y((from.up() + to.up()) / 2.0);
        String text = Label.cut("1: gap " + gap.measured() + ", must be " + gap.limit(), canvas.width() - 20);
        double half = Label.width(text) / 2 + 6;
        double middle = Math.min(Math.max(x, canvas.left() + half + 2), canvas.end() - half - 2);
        double top = canvas.headroom() > 0 ? canvas.top() + 6 : canvas.bottom() - ROOM + 6;
        double end = canvas.headroom() > 0 ? top + 24 : top;
        svg.empty(
                "path",
                "d",
                "M" + Mark.at(x, y) + "V" + Canvas.px(end),
                "stroke",
                Ink.of(gap).stroke(),
                "stroke-width",
                "1.2",
                "fill",
                "none");
        Mark.draw(svg, seen, canvas, gap);
        svg.empty(
                "rect",
                "x",
                Canvas.px(middle - half),
                "y",
                Canvas.px(top),
                "width",
                Canvas.px(2 * half),
                "height",
                "24",
                "rx",
                "3",
                "fill",
                "#fff",
                "stroke",
                Ink.of(gap).stroke(),
                "stroke-width",
                "1.2");
        Label.draw(svg, middle, top + 17, "middle", text, "font-weight", "bold");
    }
}
