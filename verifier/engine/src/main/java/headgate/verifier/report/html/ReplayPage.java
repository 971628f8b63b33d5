package headgate.verifier.report.html;

import headgate.verifier.check.Dimension;
import headgate.verifier.plot.PlotResult;
import headgate.verifier.plot.PlotSummary;
import headgate.verifier.replay.ArmUse;
import headgate.verifier.replay.Miss;
import headgate.verifier.replay.ReplayOutcome;
import headgate.verifier.report.ReplayReport;
import headgate.verifier.report.Subject;
import headgate.verifier.report.drawing.ReplayCharts;
import headgate.verifier.report.markup.Markup;
import headgate.verifier.trial.Standing;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.ToLongFunction;

/** Writes a replay as one HTML page, with the style of a report: charts inside, no script, nothing fetched. */
public final class ReplayPage {

    /** Stands that are listed one by one; the rest is in the tables. */
    private static final int MOST_LISTED = 40;

    private final ReplayReport report;
    private final Markup page = new Markup();

    private ReplayPage(ReplayReport report) {
        this.report = report;
    }

    /**
     * Writes a replay.
     *
     * @param report the replay
     * @return the page, with a line feed at its end
     */
    public static String of(ReplayReport report) {
        ReplayPage writing = new ReplayPage(report);
        writing.write();
        return "<!DOCTYPE html>\n" + writing.page + "\n";
    }

    private void write() {
        page.open("html", "lang", "en").line();
        HtmlReport.head(page, report.title() + ": " + word());
        page.open("body").line();
        Shape.define(page);
        page.add(ReplayCharts.reasonFillings()).line();
        verdict();
        page.open("main").line();
        cautions();
        remedies();
        coverage();
        density();
        reasons();
        arms();
        stands();
        files();
        page.close().line().close().line().close();
    }

    private String word() {
        return switch (report.standing()) {
            case PASSES -> "keeps pace";
            case FAILS -> "does not keep pace";
            case UNDECIDED -> "undecided";
        };
    }

    private static Shape shape(Standing standing) {
        return switch (standing) {
            case PASSES -> Shape.PASS;
            case FAILS -> Shape.FAIL;
            case UNDECIDED -> Shape.UNDECIDED;
        };
    }

    private void verdict() {
        Shape shape = shape(report.standing());
        page.open("header").line();
        page.leaf("p", "Headgate replay", "class", "kind").line();
        page.leaf("h1", report.title()).line();
        page.open("div", "class", "verdict " + shape.style(), "id", "verdict");
        shape.draw(page);
        page.open("div").leaf("p", word(), "class", "word");
        report.verdicts().forEach(verdict -> page.leaf("p", verdict));
        page.close().close().line().close().line();
    }

    private void cautions() {
        page.open("ul", "class", "cautions");
        report.missing().forEach(missing -> page.leaf("li", "Taken as perfect, because " + missing + "."));
        page.leaf(
                "li",
                "A replay holds in its model: plants that stand where the stand says, arms and heads that do what their"
                        + " files and answers say. It says nothing of safety.");
        page.leaf("li", "A stand is one pass of the carriage; y = 0 is under its middle.");
        page.close().line();
    }

    private void section(String id, String title) {
        page.open("section", "id", id, "aria-labelledby", id + "-title").line();
        page.leaf("h2", title, "id", id + "-title").line();
    }

    private void coverage() {
        section("coverage", "Coverage over speed and density");
        page.open("figure")
                .add(ReplayCharts.coverage(report.summary()))
                .leaf(
                        "figcaption",
                        "Strokes are the bounds at a confidence of "
                                + Dimension.SHARE.text(report.summary().wanted().confidence())
                                + " to each side. Broken lines are what is wanted.")
                .close()
                .line();
        page.open("ul", "class", "legend");
        List<PlotSummary.Group> groups = report.summary().groups();
        for (int i = 0; i < groups.size(); i++) {
            page.open("li")
                    .add(ReplayCharts.lineSample(i))
                    .leaf(
                            "span",
                            ReplayReport.name(groups.get(i)) + (groups.get(i).judged() ? ", judged" : ""))
                    .close();
        }
        page.close().line();
        page.open("table").open("thead").open("tr");
        page.leaf("th", "Stands", "scope", "col");
        for (double speed : report.summary().grid()) {
            page.leaf("th", Dimension.SPEED.text(speed), "scope", "col");
        }
        page.leaf("th", "Best speed", "scope", "col").close().close().open("tbody");
        for (PlotSummary.Group group : groups) {
            page.open("tr").leaf("th", ReplayReport.name(group), "scope", "row");
            for (PlotSummary.Cell cell : onGrid(group)) {
                page.open("td", "class", "number " + shape(cell.standing()).style());
                shape(cell.standing()).draw(page);
                page.text(
                                cell.targets() == 0
                                        ? " no plants"
                                        : " "
                                                + Dimension.SHARE.text(
                                                        cell.coverage().mean()))
                        .close();
            }
            page.leaf("td", ReplayReport.bestSpeed(group), "class", "number").close();
        }
        page.close().close().line();
        boolean refined = report.summary().groups().stream()
                .anyMatch(group -> group.cells().size() > onGrid(group).size());
        page.leaf(
                        "p",
                        "The best speed is the largest up to which every speed that was tried passes"
                                + (refined
                                        ? "; between the last of the table that does and the next, more were tried (small"
                                                + " dots)."
                                        : "."))
                .close()
                .line();
    }

    private List<PlotSummary.Cell> onGrid(PlotSummary.Group group) {
        return report.summary().grid().stream()
                .map(group::at)
                .flatMap(Optional::stream)
                .toList();
    }

    private void remedies() {
        if (report.remedies().isEmpty()) {
            return;
        }
        section("remedies", "What would do");
        page.leaf("p", "Replayed over the stands that are judged, and held against no other rule:");
        page.open("ul");
        report.remedies().forEach(remedy -> page.leaf("li", remedy));
        page.close().line().close().line();
    }

    private void density() {
        Optional<String> said = report.densityBorne();
        if (said.isEmpty()) {
            return;
        }
        section("density", "Density that can be borne");
        page.leaf("p", said.get());
        report.study().density().ifPresent(ladder -> page.open("figure")
                .add(ReplayCharts.density(ladder, report.summary().wanted()))
                .leaf(
                        "figcaption",
                        "At the wanted speed. Broken lines are what is wanted, and what the crop plan expects.")
                .close()
                .line());
        page.close().line();
    }

    private void reasons() {
        section("reasons", "Why plants were missed");
        page.leaf(
                "p",
                "Each plant that was missed has one reason: of those in this order, the first that kept it from every arm.");
        TreeSet<Miss> seen = new TreeSet<>();
        for (PlotSummary.Group group : report.summary().groups()) {
            List<PlotSummary.Cell> cells = onGrid(group);
            TreeSet<Miss> here = new TreeSet<>();
            cells.forEach(cell -> here.addAll(cell.missed().keySet()));
            seen.addAll(here);
            page.leaf("h3", ReplayReport.name(group)).line();
            page.open("figure").add(ReplayCharts.reasons(cells)).close().line();
            counts(cells, here);
        }
        page.open("ul", "class", "legend");
        for (Miss why : seen) {
            page.open("li")
                    .add(ReplayCharts.reasonSample(why))
                    .leaf("span", why.label())
                    .close();
        }
        page.close().line().close().line();
    }

    /** What the bars show, as numbers. */
    private void counts(List<PlotSummary.Cell> cells, SortedSet<Miss> reasons) {
        page.open("table").open("thead").open("tr");
        page.leaf("th", "Plants", "scope", "col");
        cells.forEach(cell -> page.leaf("th", Dimension.SPEED.text(cell.speed()), "scope", "col"));
        page.close().close().open("tbody");
        row("to be treated", cells, PlotSummary.Cell::targets);
        row("treated with success", cells, PlotSummary.Cell::successful);
        for (Miss why : reasons) {
            row("missed: " + why.label(), cells, cell -> cell.missed().getOrDefault(why, 0L));
        }
        page.close().close().line();
    }

    private void row(String name, List<PlotSummary.Cell> cells, ToLongFunction<PlotSummary.Cell> count) {
        page.open("tr").leaf("th", name, "scope", "row");
        cells.forEach(cell -> page.leaf("td", Long.toString(count.applyAsLong(cell)), "class", "number"));
        page.close();
    }

    private void arms() {
        section("arms", "What each arm does");
        report.shown().ifPresent(shown -> page.open("figure")
                .add(ReplayCharts.timeline(report.arms(), shown.pass().timeline()))
                .leaf(
                        "figcaption",
                        shown.plot().name() + " at "
                                + Dimension.SPEED.text(shown.pass().outcome().speed())
                                + ": side shift (low), the head's action (pale), contact with the ground (dark, high).")
                .close()
                .line());
        page.open("table").open("thead").open("tr");
        for (String title : List.of("Arm", "Actions", "Time in actions", "Time shifting", "Busy", "Refills")) {
            page.leaf("th", title, "scope", "col");
        }
        page.close().close().open("tbody");
        for (int i = 0; i < report.arms().size(); i++) {
            arm(i);
        }
        page.close().close().line();
        page.leaf("p", "Over all stands at the wanted speed.").close().line();
    }

    private void arm(int index) {
        long actions = 0;
        double acting = 0;
        double shifting = 0;
        double time = 0;
        long refills = 0;
        for (PlotResult plot : report.plots()) {
            for (PlotResult.Pass pass : plot.passes()) {
                ReplayOutcome outcome = pass.outcome();
                if (outcome.speed() == report.summary().wanted().speed()) {
                    ArmUse use = outcome.arms().get(index);
                    actions += use.actions();
                    acting += use.acting();
                    shifting += use.shifting();
                    refills += use.refills();
                    time += outcome.time();
                }
            }
        }
        page.open("tr").leaf("th", report.arms().get(index), "scope", "row");
        page.leaf("td", Long.toString(actions), "class", "number");
        page.leaf("td", Dimension.TIME.text(acting), "class", "number");
        page.leaf("td", Dimension.TIME.text(shifting), "class", "number");
        page.leaf("td", time > 0 ? Dimension.SHARE.text((acting + shifting) / time) : "", "class", "number");
        page.leaf("td", Long.toString(refills), "class", "number").close();
    }

    private void stands() {
        section("stands", "Stands");
        page.open("table").open("thead").open("tr");
        for (String title : List.of(
                "Stand", "Density", "To be treated", "Outside of the ground", "Crop plants", "Coverage", "Crop lost")) {
            page.leaf("th", title, "scope", "col");
        }
        page.close().close().open("tbody");
        for (PlotResult plot :
                report.plots().subList(0, Math.min(MOST_LISTED, report.plots().size()))) {
            plot.passes().stream()
                    .map(PlotResult.Pass::outcome)
                    .filter(o -> o.speed() == report.summary().wanted().speed())
                    .forEach(o -> stand(plot, o));
        }
        page.close().close().line();
        int rest = report.plots().size() - MOST_LISTED;
        page.leaf("p", "At the wanted speed." + (rest > 0 ? " " + rest + " more are in replay.csv." : ""))
                .close()
                .line();
    }

    private void stand(PlotResult plot, ReplayOutcome outcome) {
        page.open("tr").leaf("th", plot.name(), "scope", "row");
        page.leaf(
                "td",
                plot.density().isPresent()
                        ? Dimension.DENSITY.text(plot.density().getAsDouble())
                        : "as recorded",
                "class",
                "number");
        page.leaf("td", Long.toString(outcome.targets()), "class", "number");
        page.leaf("td", Long.toString(outcome.beside()), "class", "number");
        page.leaf("td", Long.toString(outcome.crop().plants()), "class", "number");
        page.leaf("td", outcome.targets() == 0 ? "" : Dimension.SHARE.text(outcome.coverage()), "class", "number");
        page.leaf("td", Long.toString(outcome.crop().lost()), "class", "number").close();
    }

    private void files() {
        section("files", "Files");
        page.open("table", "class", "files").open("tbody");
        for (Subject subject : report.subjects()) {
            page.open("tr")
                    .leaf("td", subject.kind())
                    .leaf("td", subject.name())
                    .leaf("td", subject.sha256(), "class", "digest")
                    .close();
        }
        page.close().close().line();
        page.leaf(
                        "p",
                        "Made by headgate " + report.edition().program() + ". The heads were asked "
                                + report.study().asked() + " different tasks.")
                .close()
                .line();
    }
}
