package headgate.verifier.report.drawing;

import headgate.verifier.report.markup.Markup;

/**
 * How each kind of thing is drawn. Kinds differ in line and filling, not in colour alone. Attributes stand in the
 * picture itself, so that it looks the same outside its page.
 */
enum Ink {
    /** What of a head does not move with its tool point. */
    HEAD("head, the part that does not move", "#6d97b5", "#173f5a", 1.6, ""),
    /** What the moving part of a head sweeps at work. */
    SWEPT("all that its moving part sweeps", "stripes", "#173f5a", 1, ""),
    /** Where the tool point can go. */
    REACH("reach of the tool point", "none", "#173f5a", 1.6, "7 3 1.5 3"),
    /** The head, lifted and stowed. */
    LIFTED("head stowed, at the top of the lift", "none", "#5b3b8c", 3, "6 4"),
    /** The arm's own material. */
    ARM("arm", "#a9b0b4", "#3b454a", 1.2, ""),
    /** The frame. */
    FRAME("frame", "cross", "#4d565b", 1.4, ""),
    /** Where mounts on a beam can be set. */
    RAIL("beam: where mounts can be set", "none", "#2c3336", 4, ""),
    /** Leaves. */
    CANOPY("canopy", "dots", "#45702f", 1, ""),
    /** What no tool may touch. */
    PROTECTED("protected zone", "none", "#45702f", 1.2, "2 2"),
    /** The band to be treated. */
    BAND("band to be treated", "#f1e6cf", "#9a7f4e", 0.8, "1 3"),
    /** How far the ground moves. */
    GROUND("ground, highest and lowest", "#e6d8c3", "#6b4d2c", 1.2, ""),
    /** The mount's heights at work. */
    HEIGHTS("mount, from its lowest to its highest at work", "none", "#1d2528", 2, ""),
    /** What of a head may be where its moving part is not held. */
    LOOSE("head that nothing holds: wherever it can be", "stripes", "#173f5a", 1, ""),
    /** The head as it is carried. */
    CARRIED("head, held as it is carried", "#6d97b5", "#173f5a", 1.6, ""),
    /** What may not be passed. */
    LIMIT("limit of width, of height, or over the ground", "none", "#6b2d00", 2, "12 4 2 4"),
    /** How a mount came to where it is. */
    WAY("way of a mount since the step before", "none", "#1d2528", 1.6, ""),
    /** The tightest place, where it is too tight. */
    GAP("tightest place", "none", "#a3122f", 3, ""),
    /** The tightest place, where it is wide enough. */
    GAP_HOLDS("tightest place", "none", "#1d5a2c", 3, "");

    /** The colour of words. */
    static final String TEXT = "#1d2528";

    private final String words;
    private final String fill;
    private final String stroke;
    private final double width;
    private final String dash;

    Ink(String words, String fill, String stroke, double width, String dash) {
        this.words = words;
        this.fill = fill;
        this.stroke = stroke;
        this.width = width;
        this.dash = dash;
    }

    /** How a tightest place is drawn. */
    static Ink of(Scene.GapMark gap) {
        return of(gap.holds());
    }

    /** How something measured is drawn. */
    static Ink of(boolean holds) {
        return holds ? GAP_HOLDS : GAP;
    }

    /** What it stands for, in a legend. */
    String words() {
        return words;
    }

    String stroke() {
        return stroke;
    }

    /** The width of its line as text, times a factor. */
    String width(double times) {
        return Canvas.px(times * width);
    }

    String width() {
        return width(1);
    }

    String dash() {
        return dash.isEmpty() ? "none" : dash;
    }

    /** The filling; patterns are looked up in the picture of the given id. */
    String fill(String pictureId) {
        return switch (fill) {
            case "stripes", "cross", "dots" -> "url(#" + pictureId + "-" + fill + ")";
            default -> fill;
        };
    }

    /** Defines the patterns of one picture. */
    static void patterns(Markup svg, String pictureId) {
        pattern(svg, pictureId, "stripes", "6", "#d5e3ec", "M0 6L6 0M-1 1L1 -1M5 7L7 5", "#6d97b5");
        pattern(svg, pictureId, "cross", "7", "#e4e6e7", "M0 7L7 0M0 0L7 7", "#8b9499");
        pattern(svg, pictureId, "dots", "6", "#dcebcf", "M1 2L3 2M4 5L6 5", "#6a9850");
    }

    private static void pattern(
            Markup svg, String pictureId, String name, String size, String ground, String path, String stroke) {
        svg.open(
                        "pattern",
                        "id",
                        pictureId + "-" + name,
                        "width",
                        size,
                        "height",
                        size,
                        "patternUnits",
                        "userSpaceOnUse")
                .empty("rect", "width", size, "height", size, "fill", ground)
                .empty("path", "d", path, "stroke", stroke, "stroke-width", "1", "fill", "none")
                .close();
    }
}
