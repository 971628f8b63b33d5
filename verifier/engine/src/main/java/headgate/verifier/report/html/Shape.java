package headgate.verifier.report.html;

import headgate.verifier.check.Outcome;
import headgate.verifier.judge.Verdict;
import headgate.verifier.report.markup.Markup;

/** The signs that stand beside outcomes: each has a form of its own, so that nobody needs the colours. */
enum Shape {
    /** A disc with a tick. */
    PASS("pass", "M10 1a9 9 0 1 0 .01 0Z", "M5.5 10.5l3 3 6-7"),
    /** A triangle with a stroke and a dot. */
    CAUTION("caution", "M10 1L19.5 18.5H.5Z", "M10 7v6M10 15.2v1.6"),
    /** A square with a cross. */
    FAIL("fail", "M1.5 1.5h17v17h-17Z", "M6 6l8 8M14 6l-8 8"),
    /** A diamond with a question mark. */
    UNDECIDED("undecided", "M10 .2L19.8 10 10 19.8.2 10Z", "M7.4 8.2a2.7 2.7 0 1 1 4 2.3q-1.4.8-1.4 2M10 14.2v1.5"),
    /** A flat bar. */
    NOT_APPLICABLE("none", "M1.5 6h17v8h-17Z", "M6 10h8");

    private final String name;
    private final String outline;
    private final String sign;

    Shape(String name, String outline, String sign) {
        this.name = name;
        this.outline = outline;
        this.sign = sign;
    }

    static Shape of(Outcome outcome) {
        return switch (outcome) {
            case PASS -> PASS;
            case CAUTION -> CAUTION;
            case FAIL -> FAIL;
            case UNDECIDED -> UNDECIDED;
            case NOT_APPLICABLE -> NOT_APPLICABLE;
        };
    }

    static Shape of(Verdict verdict) {
        return switch (verdict) {
            case FITS -> PASS;
            case FITS_WITHIN_LIMITS -> CAUTION;
            case DOES_NOT_FIT -> FAIL;
            case UNDECIDED -> UNDECIDED;
        };
    }

    /** The class that gives its colours in the style sheet. */
    String style() {
        return "is-" + name;
    }

    /** Defines all signs once for a page. */
    static void define(Markup page) {
        page.open("svg", "width", "0", "height", "0", "class", "defs", "aria-hidden", "true");
        for (Shape shape : values()) {
            page.open("symbol", "id", "sign-" + shape.name, "viewBox", "0 0 20 20")
                    .empty("path", "d", shape.outline, "fill", "currentColor")
                    .empty(
                            "path",
                            "d",
                            shape.sign,
                            "fill",
                            "none",
                            "stroke",
                            "#fff",
                            "stroke-width",
                            "2",
                            "stroke-linecap",
                            "round",
                            "stroke-linejoin",
                            "round")
                    .close();
        }
        page.close().line();
    }

    /** Puts the sign into the page. */
    void draw(Markup page) {
        page.open("svg", "class", "sign", "viewBox", "0 0 20 20", "aria-hidden", "true")
                .empty("use", "href", "#sign-" + name)
                .close();
    }
}
