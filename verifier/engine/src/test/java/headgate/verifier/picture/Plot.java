package headgate.verifier.picture;

import headgate.api.shape.Outline;
import headgate.api.shape.Point;
import headgate.api.unit.Micrometres;
import headgate.verifier.report.markup.Markup;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Collectors;

/** A drawing to scale: millimetres to the right and upward. */
public final class Plot {

    private final Markup svg = new Markup();
    private final double left;
    private final double top;
    private final double scale;

    /**
     * Begins a drawing.
     *
     * @param title what it shows, for who cannot see it
     * @param left least coordinate to the right that is shown, mm
     * @param right greatest coordinate to the right that is shown, mm
     * @param bottom least coordinate upward that is shown, mm
     * @param top greatest coordinate upward that is shown, mm
     */
    public Plot(String title, double left, double right, double bottom, double top) {
        this.left = left;
        this.top = top;
        this.scale = 640 / (right - left);
        svg.open(
                "svg",
                "xmlns",
                "http://www.w3.org/2000/svg",
                "viewBox",
                "0 0 640 " + number((top - bottom) * scale),
                "role",
                "img",
                "font-family",
                "system-ui, sans-serif",
                "font-size",
                "14");
        svg.line().leaf("title", title).line();
        svg.empty("rect", "width", "640", "height", number((top - bottom) * scale), "fill", "#ffffff")
                .line();
    }

    /** Fills areas by the even-odd rule: closed rings, micrometres. */
    public Plot area(List<List<Point>> rings, String fill, String stroke) {
        String path = rings.stream()
                .map(ring -> ring.stream().map(this::at).collect(Collectors.joining("L", "M", "Z")))
                .collect(Collectors.joining());
        svg.empty("path", "d", path, "fill", fill, "fill-rule", "evenodd", "stroke", stroke, "stroke-width", "1.5")
                .line();
        return this;
    }

    /** Fills an outline. */
    public Plot area(Outline outline, String fill, String stroke) {
        return area(List.of(outline.vertices()), fill, stroke);
    }

    /** A dashed outline. */
    public Plot dashed(Outline outline, String stroke) {
        svg.empty(
                        "path",
                        "d",
                        outline.vertices().stream().map(this::at).collect(Collectors.joining("L", "M", "Z")),
                        "fill",
                        "none",
                        "stroke",
                        stroke,
                        "stroke-width",
                        "1.5",
                        "stroke-dasharray",
                        "6 4")
                .line();
        return this;
    }

    /** A line from one place to another, mm. */
    public Plot line(double x0, double y0, double x1, double y1, String stroke, String width, String dashes) {
        svg.empty(
                        "path",
                        "d",
                        "M" + at(x0, y0) + "L" + at(x1, y1),
                        "stroke",
                        stroke,
                        "stroke-width",
                        width,
                        "stroke-dasharray",
                        dashes)
                .line();
        return this;
    }

    /** A word with its left end at a place, mm. */
    public Plot text(double x, double y, String text) {
        String[] at = at(x, y).split(" ", -1);
        svg.leaf("text", text, "x", at[0], "y", at[1], "fill", "#20292f").line();
        return this;
    }

    private String at(Point p) {
        return at(Micrometres.toMetres(p.x()) * 1000, Micrometres.toMetres(p.y()) * 1000);
    }

    private String at(double x, double y) {
        return number((x - left) * scale) + " " + number((top - y) * scale);
    }

    private static String number(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(1, RoundingMode.HALF_EVEN);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    /** {@return the drawing} */
    public String svg() {
        return svg.close().line().toString();
    }
}
