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

    private static final double BETWEEN = 8;

    /** Room for an ellipsis, two letters and what is between labels. */
    private static final double LEAST_PITCH = 44;

    /** A generous width of a text: fonts differ, and no measure of them is at hand. */
    static double width(String text) {
        return text.codePoints().mapToDouble(Label::letter).sum();
    }

    private static double letter(int c) {
        if ("mwMW@%\u2026\u2013".indexOf(c) >= 0 || c >= 0x2E80) {
            return 15;
        }
        if ("iljtfr.,:;'|!()[]- ".indexOf(c) >= 0) {
            return 7;
        }
        return Character.isUpperCase(c) ? 12 : 10;
    }

    /** Cuts a text to a width; empty if not even one letter and an ellipsis fit. */
    static String cut(String text, double width) {
        String kept = text;
        while (!kept.isEmpty() && width(mark(kept, text, true)) > width) {
            kept = kept.substring(0, kept.offsetByCodePoints(kept.length(), -1));
        }
        return kept.isEmpty() ? "" : mark(kept, text, true);
    }

    /** Cuts a name to a width. Its end is kept: names of one kind begin alike and are told apart by their ends. */
    static String cutName(String name, double width) {
        String kept = name;
        while (!kept.isEmpty() && width(mark(kept, name, false)) > width) {
            kept = kept.substring(kept.offsetByCodePoints(0, 1));
        }
        return kept.isEmpty() ? "" : mark(kept, name, false);
    }

    private static String mark(String kept, String whole, boolean atEnd) {
        if (kept.length() == whole.length()) {
            return whole;
        }
        return atEnd ? kept + "\u2026" : "\u2026" + kept;
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
        while (stride < sorted.size() && pitch(sorted, stride) < LEAST_PITCH) {
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
