package headgate.verifier.report.drawing;

import headgate.api.shape.Interval;
import headgate.api.shape.Point3;
import headgate.api.shape.Prism;
import headgate.verifier.report.markup.Markup;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** One picture of a folded carriage, to scale, with what bounds it on the road. */
final class FoldView {

    /** Width of a picture of a step: two of them stand side by side. */
    static final double STEP_WIDTH = 510;

    private static final double STEP_RIGHT = 74;
    private static final double MOST_HEIGHT = 560;

    /** Room around what is seen, and below the ground, micrometres. */
    private static final long AROUND = 80_000;

    private final Folding folding;
    private final Folding.Shape shape;
    private final Projection seen;
    private final boolean road;
    private final String id;
    private final double width;
    private final Canvas canvas;
    private final Markup svg = new Markup();
    private final Markup drawn = new Markup();
    private final Solids solids;

    private FoldView(Folding folding, int step, Projection seen, String id) {
        this.folding = folding;
        this.shape = folding.shapes().get(step);
        this.seen = seen;
        this.road = step == folding.shapes().size() - 1;
        this.id = id;
        this.width = road ? View.WIDTH : STEP_WIDTH;
        this.canvas = canvas(width - Picture.LEFT - (road ? Picture.RIGHT : STEP_RIGHT));
        this.solids = new Solids(seen, canvas, id);
    }

    /**
     * Draws a shape of a folding.
     *
     * @param folding the folding
     * @param step the index of the shape
     * @param seen from where it is seen
     * @param id an id for the picture, of its own in the page
     */
    static Markup of(Folding folding, int step, Projection seen, String id) {
        return new FoldView(folding, step, seen, id).make();
    }

    private Canvas canvas(double room) {
        List<Flat> all = new ArrayList<>();
        // All steps are seen in one window with the road, so that they can be compared.
        List<Folding.Shape> shapes = road ? List.of(shape) : folding.shapes();
        for (Folding.Shape each : shapes) {
            each.arms().forEach(a -> add(all, a.space()));
            each.frame().forEach(p -> add(all, p.prisms()));
        }
        shape.spots().forEach(s -> {
            all.add(seen.of(s.from()));
            all.add(seen.of(s.to()));
        });
        if (road && seen != Projection.SIDE) {
            all.add(new Flat(-folding.width().most(), 0));
            all.add(new Flat(-folding.width().least(), 0));
        }
        if (road && seen == Projection.BEHIND) {
            all.add(new Flat(0, folding.height()));
        }
        Interval right = all.stream()
                .map(f -> Interval.at(f.right()))
                .reduce(Interval::hull)
                .orElseThrow();
        Interval up = all.stream()
                .map(f -> Interval.at(f.up()))
                .reduce(Interval::hull)
                .orElseThrow();
        if (seen != Projection.ABOVE) {
            up = up.hull(Interval.at(0));
        }
        Interval wide = new Interval(right.least() - AROUND, right.most() + AROUND);
        Interval high = new Interval(up.least() - AROUND, up.most() + AROUND);
        double scale = Canvas.fit(wide, high, room, MOST_HEIGHT);
        long missing = Math.max(0, (long) (room / scale * 1e6) - wide.length()) / 2;
        return new Canvas(
                new Interval(wide.least() - missing, wide.most() + missing),
                high,
                scale,
                Picture.LEFT,
                Picture.TOP,
                0,
                0);
    }

    private void add(List<Flat> all, List<Prism> prisms) {
        prisms.forEach(p -> all.addAll(seen.ring(p)));
    }

    private Markup make() {
        double height = canvas.bottom() + Picture.BELOW;
        String what = road ? "The carriage on the road" : "The carriage on the way to the road";
        Picture.open(svg, id, width, height, what + ", seen " + seen.words(), description());
        ground();
        structure();
        arms();
        limits();
        svg.open("defs");
        Ink.patterns(svg, id);
        svg.open("clipPath", "id", id + "-plot");
        plot(svg, "none");
        svg.close().line();
        svg.add(solids.definitions()).close().line();
        svg.open("g", "clip-path", "url(#" + id + "-plot)").line();
        svg.add(drawn).close().line();
        plot(svg, "none", "stroke", "#5c666b", "stroke-width", "1");
        svg.line();
        Axes.draw(svg, canvas, seen);
        limitLabels();
        if (!road) {
            ways();
        }
        Numbers.draw(svg, seen, canvas, shape.spots(), 0, 0);
        return svg.close();
    }

    private String description() {
        return shape.name() + ": " + shape.arms().size() + " arms. What is carried may be "
                + Scale.words(folding.width().length()) + " wide and " + Scale.words(folding.height()) + " high.";
    }

    private void plot(Markup into, String fill, String... more) {
        rectangle(into, canvas.top(), canvas.height(), fill, more);
    }

    private void rectangle(Markup into, double top, double height, String fill, String... more) {
        String[] all = new String[10 + more.length];
        String[] place = {
            "x",
            Canvas.px(canvas.left()),
            "y",
            Canvas.px(top),
            "width",
            Canvas.px(canvas.width()),
            "height",
            Canvas.px(Math.max(0, height)),
            "fill",
            fill
        };
        System.arraycopy(place, 0, all, 0, 10);
        System.arraycopy(more, 0, all, 10, more.length);
        into.empty("rect", all);
    }

    private void ground() {
        plot(drawn, "#fcfdfd");
        if (seen != Projection.ABOVE) {
            double level = canvas.y(0);
            rectangle(drawn, level, canvas.bottom() - level, Ink.GROUND.fill(id));
            across(0, Ink.GROUND);
        }
        drawn.line();
    }

    private void structure() {
        for (Scene.Part part : shape.frame()) {
            // From the side a frame stands before everything: only a shade of it is shown.
            drawn.open("g", "opacity", seen == Projection.SIDE ? "0.3" : "1").leaf("title", part.name());
            solids.draw(drawn, part.prisms(), Point3.ORIGIN, Ink.FRAME);
            drawn.close().line();
        }
    }

    /** What is nearer to the viewer is drawn later. */
    private void arms() {
        List<Folding.Carried> farthestFirst = shape.arms().stream()
                .sorted(Comparator.comparingLong(a -> nearness(a.mount())))
                .toList();
        for (Folding.Carried arm : farthestFirst) {
            drawn.open("g").leaf("title", arm.name());
            solids.draw(drawn, arm.space(), Point3.ORIGIN, Ink.ARM);
            solids.draw(drawn, arm.head(), Point3.ORIGIN, arm.loose() ? Ink.LOOSE : Ink.CARRIED);
            drawn.close().line();
        }
    }

    private long nearness(Point3 at) {
        return switch (seen) {
            case ABOVE -> at.z();
            case BEHIND -> -at.x();
            case SIDE -> -at.y();
        };
    }

    /** Only on the road: on the way to it the carriage stands. */
    private void limits() {
        if (!road) {
            return;
        }
        if (seen != Projection.SIDE) {
            for (long y : new long[] {folding.width().least(), folding.width().most()}) {
                double foot = seen == Projection.BEHIND ? canvas.y(0) : canvas.bottom();
                double top = seen == Projection.BEHIND ? canvas.y(folding.height()) : canvas.top();
                line("M" + Mark.at(canvas.x(-y), foot) + "V" + Canvas.px(top), Ink.LIMIT);
            }
        }
        if (seen == Projection.BEHIND) {
            line(
                    "M" + Mark.at(canvas.x(-folding.width().most()), canvas.y(folding.height())) + "H"
                            + Canvas.px(canvas.x(-folding.width().least())),
                    Ink.LIMIT);
        }
        if (seen != Projection.ABOVE) {
            across(folding.ground(), Ink.LIMIT);
        }
    }

    private void across(long height, Ink ink) {
        line("M" + Mark.at(canvas.left(), canvas.y(height)) + "H" + Canvas.px(canvas.end()), ink);
    }

    private void line(String path, Ink ink) {
        drawn.empty(
                        "path",
                        "d",
                        path,
                        "stroke",
                        ink.stroke(),
                        "stroke-width",
                        ink.width(),
                        "stroke-dasharray",
                        ink.dash(),
                        "fill",
                        "none")
                .line();
    }

    private void limitLabels() {
        if (!road) {
            return;
        }
        if (seen != Projection.SIDE) {
            double middle = canvas.x(-(folding.width().least() + folding.width().length() / 2));
            Label.draw(
                    svg,
                    middle,
                    canvas.top() - 8,
                    "middle",
                    "at most " + Scale.words(folding.width().length()) + " wide");
        }
        if (seen == Projection.BEHIND) {
            beside(folding.height(), "at most", Scale.words(folding.height()) + " high");
        }
        if (seen != Projection.ABOVE) {
            long wholeMillimetres = -Math.floorDiv(-folding.ground(), 1_000L) * 1_000;
            beside(folding.ground(), "at least", Scale.words(wholeMillimetres) + " up");
        }
    }

    private void beside(long height, String first, String second) {
        double y = canvas.y(height);
        Label.draw(svg, canvas.end() + 8, y - 3, "start", first);
        Label.draw(svg, canvas.end() + 8, y + 14, "start", second);
    }

    private void ways() {
        for (Folding.Carried arm : shape.arms()) {
            Flat from = seen.of(arm.before());
            Flat to = seen.of(arm.mount());
            Mark.arrow(svg, canvas.x(from.right()), canvas.y(from.up()), canvas.x(to.right()), canvas.y(to.up()));
        }
    }
}
