package headgate.verifier.report.drawing;

import headgate.api.shape.Interval;
import headgate.api.shape.Point3;
import headgate.api.shape.Prism;
import headgate.verifier.report.markup.Markup;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** What is drawn inside a plot, from the ground up. */
final class Layers {

    /** More plants than this in a row are drawn as a strip. */
    private static final int MOST_PLANTS = 80;

    private final Scene scene;
    private final Projection seen;
    private final Canvas canvas;
    private final String id;
    private final Solids solids;
    private final Markup drawn = new Markup();

    private Layers(Scene scene, Projection seen, Canvas canvas, String id) {
        this.scene = scene;
        this.seen = seen;
        this.canvas = canvas;
        this.id = id;
        this.solids = new Solids(seen, canvas, id);
    }

    /** Draws the scene into an SVG whose definitions are still to be written. */
    static void draw(Markup svg, Scene scene, Projection seen, Canvas canvas, String id) {
        Layers layers = new Layers(scene, seen, canvas, id);
        layers.ground();
        layers.crop();
        layers.frame();
        layers.beams();
        layers.heads();
        layers.groundLine();
        svg.open("defs");
        Ink.patterns(svg, id);
        svg.open("clipPath", "id", id + "-plot");
        layers.plot(svg, "fill", "none");
        svg.close().line();
        svg.add(layers.solids.definitions()).close().line();
        svg.open("g", "clip-path", "url(#" + id + "-plot)").line();
        svg.add(layers.drawn).close().line();
        layers.plot(svg, "fill", "none", "stroke", "#5c666b", "stroke-width", "1");
        svg.line();
    }

    private void plot(Markup svg, String... more) {
        rectangle(svg, canvas.left(), canvas.top(), canvas.width(), canvas.height(), more);
    }

    private static void rectangle(Markup svg, double x, double y, double width, double height, String... more) {
        String[] all = new String[8 + more.length];
        String[] place = {
            "x",
            Canvas.px(x),
            "y",
            Canvas.px(y),
            "width",
            Canvas.px(Math.max(0, width)),
            "height",
            Canvas.px(Math.max(0, height))
        };
        System.arraycopy(place, 0, all, 0, 8);
        System.arraycopy(more, 0, all, 8, more.length);
        svg.empty("rect", all);
    }

    private String[] look(Ink ink) {
        return new String[] {
            "fill", ink.fill(id), "stroke", ink.stroke(), "stroke-width", ink.width(), "stroke-dasharray", ink.dash()
        };
    }

    private void ground() {
        if (seen == Projection.ABOVE) {
            rectangle(drawn, canvas.left(), canvas.top(), canvas.width(), canvas.height(), "fill", "#faf7f0");
            drawn.line();
            return;
        }
        plot(drawn, "fill", "#fcfdfd");
        double level = canvas.y(0);
        rectangle(drawn, canvas.left(), level, canvas.width(), canvas.bottom() - level, "fill", Ink.GROUND.fill(id));
        groundLine();
        double motion = canvas.length(scene.crop().groundMotion());
        if (motion >= 1.5) {
            level(level - motion, "4 4");
            level(level + motion, "4 4");
        }
        drawn.line();
    }

    /** Drawn again over the heads, so that it shows how deep they work. */
    private void groundLine() {
        if (seen != Projection.ABOVE) {
            level(canvas.y(0), "none");
        }
    }

    private void level(double y, String dash) {
        drawn.empty(
                "path",
                "d",
                "M" + Canvas.px(canvas.left()) + " " + Canvas.px(y) + "H" + Canvas.px(canvas.end()),
                "stroke",
                Ink.GROUND.stroke(),
                "stroke-width",
                Ink.GROUND.width(),
                "stroke-dasharray",
                dash,
                "fill",
                "none");
    }

    private void crop() {
        switch (seen) {
            case ABOVE -> scene.rows().forEach(this::rowFromAbove);
            case BEHIND -> scene.rows().forEach(this::rowFromBehind);
            case SIDE -> canopyFromTheSide();
        }
    }

    private void rowFromAbove(Scene.Row row) {
        Scene.Crop crop = scene.crop();
        double x = canvas.x(-row.y());
        if (crop.bandWidth() > 0) {
            double width = canvas.length(crop.bandWidth());
            rectangle(drawn, x - width / 2, canvas.top() - 2, width, canvas.height() + 4, look(Ink.BAND));
        }
        drawn.empty(
                "path",
                "d",
                "M" + Canvas.px(x) + " " + Canvas.px(canvas.top()) + "V" + Canvas.px(canvas.bottom()),
                "stroke",
                "#8a7d66",
                "stroke-width",
                "1");
        double lowest = canvas.up().least() - canvas.foot() / canvas.scale() * 1e6;
        double highest = canvas.up().most() + canvas.headroom() / canvas.scale() * 1e6;
        long spacing = Math.max(1, crop.plantSpacing());
        if (canvas.up().length() / spacing > MOST_PLANTS) {
            double width = canvas.length(crop.canopyWidth());
            rectangle(drawn, x - width / 2, canvas.top() - 2, width, canvas.height() + 4, look(Ink.CANOPY));
        } else {
            long first = Math.floorDiv((long) lowest, spacing) * spacing;
            for (long at = first; at <= highest + spacing; at += spacing) {
                plant(x, canvas.y(at), crop);
            }
        }
        drawn.line();
    }

    private void plant(double x, double y, Scene.Crop crop) {
        if (crop.canopyWidth() > 0) {
            disc(x, y, canvas.length(crop.canopyWidth()) / 2, Ink.CANOPY);
        }
        if (crop.protectedRadius() > 0) {
            disc(x, y, canvas.length(crop.protectedRadius()), Ink.PROTECTED);
        }
        if (crop.canopyWidth() == 0) {
            drawn.empty(
                    "path",
                    "d",
                    "M" + Canvas.px(x - 3) + " " + Canvas.px(y) + "h6M" + Canvas.px(x) + " " + Canvas.px(y - 3) + "v6",
                    "stroke",
                    Ink.CANOPY.stroke(),
                    "stroke-width",
                    "1.4");
        }
    }

    private void disc(double x, double y, double radius, Ink ink) {
        String[] look = look(ink);
        String[] all = new String[6 + look.length];
        String[] place = {"cx", Canvas.px(x), "cy", Canvas.px(y), "r", Canvas.px(radius)};
        System.arraycopy(place, 0, all, 0, 6);
        System.arraycopy(look, 0, all, 6, look.length);
        drawn.empty("circle", all);
    }

    private void rowFromBehind(Scene.Row row) {
        Scene.Crop crop = scene.crop();
        double width = canvas.length(crop.canopyWidth());
        double height = canvas.length(crop.canopyHeight());
        if (width > 0 && height > 0) {
            rectangle(drawn, canvas.x(-row.y()) - width / 2, canvas.y(0) - height, width, height, look(Ink.CANOPY));
        }
    }

    private void canopyFromTheSide() {
        double height = canvas.length(scene.crop().canopyHeight());
        if (height > 0) {
            rectangle(drawn, canvas.left() - 2, canvas.y(0) - height, canvas.width() + 4, height, look(Ink.CANOPY));
        }
    }

    private void frame() {
        for (Scene.Part part : scene.frame()) {
            // From the side a frame stands before everything: only a shade of it is shown.
            drawn.open("g", "opacity", seen == Projection.SIDE ? "0.3" : "1").leaf("title", part.name());
            solids.draw(drawn, part.prisms(), Point3.ORIGIN, Ink.FRAME);
            drawn.close().line();
        }
    }

    private void beams() {
        if (seen == Projection.BEHIND) {
            return;
        }
        for (Scene.Beam beam : scene.beams()) {
            String path = seen == Projection.ABOVE
                    ? "M" + Canvas.px(canvas.x(-beam.y().most())) + " " + Canvas.px(canvas.y(beam.x())) + "H"
                            + Canvas.px(canvas.x(-beam.y().least()))
                    : "M" + Canvas.px(canvas.x(beam.x())) + " " + Canvas.px(canvas.top()) + "V"
                            + Canvas.px(canvas.y(0));
            drawn.empty(
                    "path",
                    "d",
                    path,
                    "stroke",
                    Ink.RAIL.stroke(),
                    "stroke-width",
                    seen == Projection.ABOVE ? Ink.RAIL.width() : "1",
                    "stroke-dasharray",
                    seen == Projection.ABOVE ? "none" : "10 4",
                    "fill",
                    "none");
        }
        drawn.line();
    }

    private void heads() {
        lifted();
        Set<Solids.Placed> swept = new LinkedHashSet<>();
        Set<Solids.Placed> fixed = new LinkedHashSet<>();
        Set<Solids.Placed> arms = new LinkedHashSet<>();
        for (Scene.Worker worker : scene.workers()) {
            swept.add(solids.place(worker.shape().moving(), worker.work()));
            fixed.add(solids.place(worker.shape().fixed(), worker.work()));
            arms.add(solids.place(worker.arm(), worker.work()));
            arms.add(solids.place(worker.column(), besideRail(worker)));
        }
        swept.forEach(p -> solids.draw(drawn, p, Ink.SWEPT));
        arms.forEach(p -> solids.draw(drawn, p, Ink.ARM));
        fixed.forEach(p -> solids.draw(drawn, p, Ink.HEAD));
        Set<String> reaches = new LinkedHashSet<>();
        for (Scene.Worker worker : scene.workers()) {
            reaches.add(reach(worker));
        }
        for (String path : reaches) {
            String[] look = look(Ink.REACH);
            drawn.open("g", look).empty("path", "d", path).close().line();
        }
        if (seen != Projection.ABOVE) {
            scene.workers().stream()
                    .map(this::heights)
                    .distinct()
                    .forEach(bar -> Mark.bar(drawn, bar.x, bar.top, bar.bottom));
        }
    }

    /** An upright bar, pixels. */
    private record Bar(double x, double top, double bottom) {}

    private Bar heights(Scene.Worker worker) {
        return new Bar(
                canvas.x(seen.of(worker.work()).right()),
                canvas.y(worker.heights().most()),
                canvas.y(worker.heights().least()));
    }

    /** Where the frame of a column lies: it goes along with the side shift only. */
    private static Point3 besideRail(Scene.Worker worker) {
        return new Point3(0, worker.work().y(), 0);
    }

    private String reach(Scene.Worker worker) {
        Scene.HeadShape head = worker.shape();
        Flat at = seen.of(worker.work());
        List<Flat> ring = seen.ring(head.reach(), head.reachHeight()).stream()
                .map(p -> new Flat(p.right() + at.right(), p.up() + at.up()))
                .toList();
        return canvas.placed(ring);
    }

    /** Only the outer half of the line is let through, so that stowed heads show as silhouettes over what is behind. */
    private void lifted() {
        Set<Solids.Placed> all = scene.workers().stream()
                .map(w -> solids.place(w.shape().stowed(), w.lifted()))
                .collect(Collectors.toCollection(LinkedHashSet::new));
        if (all.isEmpty()) {
            return;
        }
        Markup definitions = solids.definitions();
        definitions.open(
                "mask",
                "id",
                id + "-outside",
                "maskUnits",
                "userSpaceOnUse",
                "x",
                Canvas.px(canvas.left()),
                "y",
                Canvas.px(canvas.top()),
                "width",
                Canvas.px(canvas.width()),
                "height",
                Canvas.px(canvas.height()));
        plot(definitions, "fill", "#fff");
        all.forEach(p -> Solids.use(definitions, p, "fill", "#000"));
        definitions.close().line();
        drawn.open(
                "g",
                "mask",
                "url(#" + id + "-outside)",
                "fill",
                "none",
                "stroke",
                Ink.LIFTED.stroke(),
                "stroke-width",
                Ink.LIFTED.width(),
                "stroke-dasharray",
                Ink.LIFTED.dash());
        all.forEach(p -> Solids.use(drawn, p));
        drawn.close().line();
    }

    /** What of the scene is seen, as intervals across and upwards. */
    static Flat[] corners(Scene scene, Projection seen) {
        List<Flat> all = new ArrayList<>();
        long half = scene.crop().rowSpacing() / 2;
        for (Scene.Row row : scene.rows()) {
            all.add(seen.of(new Point3(0, row.y() - half, 0)));
            all.add(seen.of(new Point3(0, row.y() + half, scene.crop().canopyHeight())));
        }
        for (Scene.Part part : scene.frame()) {
            part.prisms().forEach(p -> all.addAll(seen.ring(p)));
        }
        for (Scene.Beam beam : scene.beams()) {
            all.add(seen.of(new Point3(beam.x(), beam.y().least(), 0)));
            all.add(seen.of(new Point3(beam.x(), beam.y().most(), 0)));
        }
        for (Scene.Worker worker : scene.workers()) {
            shifted(all, seen, worker.shape().fixed(), worker.work());
            shifted(all, seen, worker.shape().moving(), worker.work());
            shifted(all, seen, worker.arm(), worker.work());
            shifted(all, seen, worker.column(), besideRail(worker));
            shifted(all, seen, worker.shape().stowed(), worker.lifted());
        }
        for (Spot spot : scene.spots()) {
            all.add(seen.of(spot.from()));
            all.add(seen.of(spot.to()));
        }
        scene.gap().ifPresent(g -> {
            all.add(seen.of(g.from()));
            all.add(seen.of(g.to()));
        });
        Interval right = all.stream()
                .map(f -> Interval.at(f.right()))
                .reduce(Interval::hull)
                .orElse(Interval.at(0));
        Interval up = all.stream()
                .map(f -> Interval.at(f.up()))
                .reduce(Interval::hull)
                .orElse(Interval.at(0));
        return new Flat[] {new Flat(right.least(), up.least()), new Flat(right.most(), up.most())};
    }

    private static void shifted(List<Flat> all, Projection seen, List<Prism> prisms, Point3 at) {
        Flat by = seen.of(at);
        for (Prism prism : prisms) {
            for (Flat p : seen.ring(prism)) {
                all.add(new Flat(p.right() + by.right(), p.up() + by.up()));
            }
        }
    }
}
