package headgate.verifier.report.html;

import headgate.verifier.check.Dimension;
import headgate.verifier.report.ArmGaps;
import headgate.verifier.report.markup.Markup;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The gaps between arms: a matrix of the least gap of every two, and below it every pair of stances. */
final class GapTables {

    /** With more arms a matrix is wider than the page; the list of pairs says the same. */
    private static final int MOST_COLUMNS = 10;

    private GapTables() {}

    static void write(Markup page, List<ArmGaps> pairs) {
        Set<String> arms = new LinkedHashSet<>();
        pairs.forEach(p -> {
            arms.add(p.right());
            arms.add(p.left());
        });
        page.leaf(
                        "p",
                        "In millimetres, rounded down; beside each gap what must be free. An arm is at work, lifting between"
                                + " work and lifted, or lifted.")
                .line();
        if (arms.size() <= MOST_COLUMNS) {
            matrix(page, pairs, new ArrayList<>(arms));
        }
        page.open("details").leaf("summary", "Every pair of stances");
        stances(page, pairs);
        page.close().line();
    }

    private static void matrix(Markup page, List<ArmGaps> pairs, List<String> arms) {
        page.open("table", "class", "gaps").leaf("caption", "The least gap of every two arms");
        page.open("thead").open("tr").leaf("th", "Arm", "scope", "col");
        arms.subList(1, arms.size()).forEach(a -> page.leaf("th", a, "scope", "col"));
        page.close().close().open("tbody").line();
        for (String right : arms.subList(0, arms.size() - 1)) {
            page.open("tr").leaf("th", right, "scope", "row");
            for (String left : arms.subList(1, arms.size())) {
                Optional<ArmGaps> pair = pairs.stream()
                        .filter(p -> p.right().equals(right) && p.left().equals(left))
                        .findFirst();
                if (pair.isPresent()) {
                    cell(page, pair.get(), pair.get().least());
                } else {
                    page.leaf("td", "");
                }
            }
            page.close().line();
        }
        page.close().close().line();
    }

    private static void cell(Markup page, ArmGaps pair, Optional<Double> gap) {
        if (gap.isEmpty()) {
            page.leaf("td", "none", "class", "number");
            return;
        }
        boolean near = pair.isTooNear(gap.get());
        page.open("td", "class", near ? (pair.inTurn() ? "number is-caution" : "number is-fail") : "number");
        page.leaf(near ? "strong" : "span", down(gap.get())).leaf("small", " / " + up(pair.required()));
        if (near) {
            page.leaf("small", pair.inTurn() ? " in turn" : " too near");
        }
        page.close();
    }

    private static void stances(Markup page, List<ArmGaps> pairs) {
        page.open("table", "class", "gaps").open("thead").open("tr");
        page.leaf("th", "Arms", "scope", "col").leaf("th", "Needs", "scope", "col");
        for (ArmGaps.Level right : ArmGaps.Level.values()) {
            for (ArmGaps.Level left : ArmGaps.Level.values()) {
                page.leaf("th", right.label() + ", " + left.label(), "scope", "col");
            }
        }
        page.close().close().open("tbody").line();
        for (ArmGaps pair : pairs) {
            page.open("tr").leaf("th", pair.right() + ", " + pair.left(), "scope", "row");
            page.leaf("td", up(pair.required()), "class", "number");
            for (ArmGaps.Level right : ArmGaps.Level.values()) {
                for (ArmGaps.Level left : ArmGaps.Level.values()) {
                    Optional<Double> gap = pair.gap(right, left);
                    boolean near = gap.filter(pair::isTooNear).isPresent();
                    page.open("td", "class", near ? "number is-fail" : "number");
                    page.leaf(near ? "strong" : "span", gap.map(GapTables::down).orElse("\u2013"));
                    page.close();
                }
            }
            page.close().line();
        }
        page.close().close().line();
    }

    private static String down(double gap) {
        return bare(Dimension.LENGTH.text(gap, RoundingMode.FLOOR));
    }

    private static String up(double gap) {
        return bare(Dimension.LENGTH.text(gap, RoundingMode.CEILING));
    }

    private static String bare(String text) {
        return text.substring(0, text.indexOf(' '));
    }
}
