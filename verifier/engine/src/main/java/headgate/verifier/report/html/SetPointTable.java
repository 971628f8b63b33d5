package headgate.verifier.report.html;

import headgate.verifier.check.Dimension;
import headgate.verifier.report.SetPoint;
import headgate.verifier.report.markup.Markup;
import java.util.List;

/** The set-points as a table, from the right to the left. */
final class SetPointTable {

    private static final List<String> TITLES = List.of(
            "Lane", "Arm", "Beam", "Head", "Mount y", "Mount x", "Work heights", "Top of lift", "Ground moves by");

    private SetPointTable() {}

    static void write(Markup page, List<SetPoint> setPoints) {
        page.open("table", "class", "set-points").open("thead").open("tr");
        TITLES.forEach(t -> page.leaf("th", t, "scope", "col"));
        page.close().close().open("tbody").line();
        for (SetPoint at : setPoints) {
            page.open("tr")
                    .leaf("td", at.lanesText())
                    .leaf("th", at.arm(), "scope", "row")
                    .leaf("td", at.beam())
                    .leaf("td", at.head() + (at.turned() ? ", turned" : ""))
                    .leaf("td", Dimension.LENGTH.text(at.y()), "class", "number")
                    .leaf("td", Dimension.LENGTH.text(at.x()), "class", "number")
                    .leaf(
                            "td",
                            at.workHeights()
                                    .map(SetPoint.Span::text)
                                    .orElse(at.lanes().isEmpty() ? "\u2013" : "none"),
                            "class",
                            "number")
                    .leaf("td", Dimension.LENGTH.text(at.liftTop()), "class", "number")
                    .leaf("td", "\u00b1 " + Dimension.LENGTH.text(at.groundMotion()), "class", "number")
                    .close()
                    .line();
        }
        page.close().close().line();
    }
}
