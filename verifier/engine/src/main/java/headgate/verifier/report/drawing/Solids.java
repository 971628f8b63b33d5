package headgate.verifier.report.drawing;

import headgate.api.shape.Point3;
import headgate.api.shape.Prism;
import headgate.verifier.report.markup.Markup;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Draws what is solid. A shape is defined once and placed as often as it occurs. Parts of one shape overlap: their lines
 * are drawn first and their fillings over them, so that only the silhouette keeps a line.
 */
final class Solids {

    /** A shape put somewhere. */
    record Placed(String shape, String x, String y) {}

    private final Projection seen;
    private final Canvas canvas;
    private final String id;
    private final Map<List<Prism>, String> shapes = new HashMap<>();
    private final Markup definitions = new Markup();

    Solids(Projection seen, Canvas canvas, String id) {
        this.seen = seen;
        this.canvas = canvas;
        this.id = id;
    }

    /** Definitions of all shapes that were asked for, and of whatever else was added. */
    Markup definitions() {
        return definitions;
    }

    /** A shape at a place, defined when it is first asked for. */
    Placed place(List<Prism> prisms, Point3 at) {
        Flat flat = seen.of(at);
        return new Placed(shape(prisms), Canvas.px(canvas.x(flat.right())), Canvas.px(canvas.y(flat.up())));
    }

    void draw(Markup into, List<Prism> prisms, Point3 at, Ink ink) {
        draw(into, place(prisms, at), ink);
    }

    void draw(Markup into, Placed placed, Ink ink) {
        // The line is centred on the edge: twice the width, of which the filling hides the inner half.
        use(into, placed, "fill", "none", "stroke", ink.stroke(), "stroke-width", ink.width(2));
        use(into, placed, "fill", ink.fill(id));
        into.line();
    }

    static void use(Markup into, Placed placed, String... look) {
        if (placed.shape().isEmpty()) {
            return;
        }
        String[] all = new String[6 + look.length];
        String[] place = {"href", "#" + placed.shape(), "x", placed.x(), "y", placed.y()};
        System.arraycopy(place, 0, all, 0, 6);
        System.arraycopy(look, 0, all, 6, look.length);
        into.empty("use", all);
    }

    /** The id of a shape; empty if there is nothing to see. */
    private String shape(List<Prism> prisms) {
        if (prisms.isEmpty()) {
            return "";
        }
        String known = shapes.get(prisms);
        if (known != null) {
            return known;
        }
        String name = id + "-s" + shapes.size();
        List<String> parts = new ArrayList<>();
        for (Prism prism : prisms) {
            parts.add(canvas.path(seen.ring(prism)));
        }
        definitions
                .empty("path", "id", name, "d", parts.stream().distinct().collect(Collectors.joining()))
                .line();
        shapes.put(prisms, name);
        return name;
    }
}
