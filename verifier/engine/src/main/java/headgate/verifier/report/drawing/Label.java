package headgate.verifier.report.drawing;

import headgate.verifier.report.markup.Markup;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A word at a place along a line of words.
 *
 * @param at its middle, pixels
 * @param text the word
 */
record Label(double at, String text) {

    /** Size of letters, pixels. */
    static final int SIZE = 14;

    /** A generous width of one letter: fonts differ, and no measure of them is at hand. */
    private static final double LETTER = 9.2;

    private static final double BETWEEN = 8;

    /** The width that a text may take. */
    static double width(String text) {
        return LETTER * text.codePointCount(0, text.length());
    }

    /** Cuts a text to a width; empty if not even one letter and an ellipsis fit. */
    static String cut(String text, double width) {
        if (width(text) <= width) {
            return text;
        }
        int most = (int) (width / LETTER) - 1;
        if (most < 1) {
            return "";
        }
        return text.substring(0, text.offsetByCodePoints(0, most)) + "\u2026";
    }

    /** Cuts a name to a width. Its end is kept: names of one kind begin alike and are told apart by their ends. */
    private static String cutName(String name, double width) {
        if (width(name) <= width) {
            return name;
        }
        int most = (int) (width / LETTER) - 1;
        if (most < 1) {
            return "";
        }
        return "\u2026" + name.substring(name.offsetByCodePoints(name.length(), -most));
    }

    /**
     * Leaves labels out, or cuts them, until none touches another.
     *
     * @param labels labels on one line, in any order
     * @param from left end of the line, pixels
     * @param to right end of the line, pixels
     * @return labels that have room, from left to right
     */
    static List<Label> apart(List<Label> labels, double from, double to) {
        List<Label> sorted =
                labels.stream().sorted(Comparator.comparingDouble(Label::at)).toList();
        int stride = 1;
        while (stride < sorted.size() && pitch(sorted, stride) < 3 * LETTER + BETWEEN) {
            stride++;
        }
        List<Label> kept = new ArrayList<>();
        double end = from;
        for (int i = 0; i < sorted.size(); i += stride) {
            Label label = sorted.get(i);
            double next = i + stride < sorted.size() ? sorted.get(i + stride).at() : 2 * to - label.at();
            double half = Math.min(Math.min(label.at() - end, (next - label.at() - BETWEEN) / 2), to - label.at());
            String text = cutName(label.text(), 2 * half);
            if (!text.isEmpty()) {
                kept.add(new Label(label.at(), text));
                end = label.at() + width(text) / 2 + BETWEEN;
            }
        }
        return kept;
    }

    private static double pitch(List<Label> sorted, int stride) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = stride; i < sorted.size(); i += stride) {
            least = Math.min(least, sorted.get(i).at() - sorted.get(i - stride).at());
        }
        return least;
    }

    /** Draws a word. */
    static void draw(Markup svg, double x, double y, String anchor, String text, String... more) {
        String[] attributes = new String[8 + more.length];
        attributes[0] = "x";
        attributes[1] = Canvas.px(x);
        attributes[2] = "y";
        attributes[3] = Canvas.px(y);
        attributes[4] = "text-anchor";
        attributes[5] = anchor;
        attributes[6] = "fill";
        attributes[7] = Ink.TEXT;
        System.arraycopy(more, 0, attributes, 8, more.length);
        svg.leaf("text", text, attributes).line();
    }
}
