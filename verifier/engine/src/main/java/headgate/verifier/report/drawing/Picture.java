package headgate.verifier.report.drawing;

import headgate.verifier.report.markup.Markup;

/** What every picture to scale begins with: its size, the room around its plot, and its words for those who do not see it. */
final class Picture {

    /** Room around the plot of a whole carriage, pixels. */
    static final double LEFT = 62;

    static final double RIGHT = 118;
    static final double TOP = 46;
    static final double BELOW = 62;

    private Picture() {}

    /**
     * Opens a picture; whoever draws it closes it.
     *
     * @param svg where to
     * @param id an id of its own in the page
     * @param width pixels
     * @param height pixels
     * @param title what is seen
     * @param description what it shows, in words
     */
    static void open(Markup svg, String id, double width, double height, String title, String description) {
        svg.open(
                        "svg",
                        "xmlns",
                        "http://www.w3.org/2000/svg",
                        "viewBox",
                        "0 0 " + Canvas.px(width) + " " + Canvas.px(height),
                        "role",
                        "img",
                        "aria-labelledby",
                        id + "-title " + id + "-desc",
                        "font-family",
                        "system-ui, sans-serif",
                        "font-size",
                        String.valueOf(Label.SIZE))
                .line();
        svg.leaf("title", title, "id", id + "-title").line();
        svg.leaf("desc", description, "id", id + "-desc").line();
    }
}
