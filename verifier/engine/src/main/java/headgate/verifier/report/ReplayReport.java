package headgate.verifier.report;

import headgate.runtime.origin.Loaded;
import headgate.verifier.check.Case;
import headgate.verifier.check.Dimension;
import headgate.verifier.check.HeadUnderTest;
import headgate.verifier.plot.PlotResult;
import headgate.verifier.plot.PlotSummary;
import headgate.verifier.replay.ArmUse;
import headgate.verifier.trial.Standing;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/**
 * A replay as one value, for people and programs.
 *
 * @param edition which program made it
 * @param title what was replayed
 * @param subjects digests of all files that it follows from
 * @param arms the arms at work, in the order in which actions number them
 * @param summary what may be said
 * @param plots what came of each plot
 * @param missing what the files do not say and was taken as perfect, as clauses
 */
public record ReplayReport(
        Edition edition,
        String title,
        List<Subject> subjects,
        List<String> arms,
        PlotSummary summary,
        List<PlotResult> plots,
        List<String> missing) {

    /** Copies the lists. */
    public ReplayReport {
        subjects = List.copyOf(subjects);
        arms = List.copyOf(arms);
        plots = List.copyOf(plots);
        missing = List.copyOf(missing);
    }

    /**
     * Makes a report.
     *
     * @param edition which program makes it
     * @param subject the case
     * @param plots what came of each plot, at least one
     * @param summary what may be said
     * @param missing what was taken as perfect
     * @param others further files that it follows from
     * @return the report
     */
    public static ReplayReport of(
            Edition edition,
            Case subject,
            List<PlotResult> plots,
            PlotSummary summary,
            List<String> missing,
            List<Subject> others) {
        List<Subject> subjects = new ArrayList<>();
        for (HeadUnderTest head : subject.heads()) {
            subjects.add(new Subject("head", head.label(), head.facts().sha256()));
        }
        subjects.add(file("carriage", subject.carriage()));
        subjects.add(file("crop plan", subject.plan()));
        subjects.add(file("policy", subject.policy()));
        subjects.addAll(others);
        for (PlotResult plot : plots) {
            if (!plot.madeUp()) {
                subjects.add(new Subject("stand", plot.name(), plot.sha256()));
            }
        }
        String heads = subject.heads().stream().map(HeadUnderTest::label).collect(Collectors.joining(" and "));
        return new ReplayReport(
                edition,
                Plain.line(heads + " on " + subject.carriage().value().name() + ": "
                        + subject.plan().value().name()),
                subjects,
                plots.get(0).passes().get(0).outcome().arms().stream()
                        .map(ArmUse::arm)
                        .map(Plain::line)
                        .toList(),
                summary,
                plots.stream()
                        .map(p -> new PlotResult(
                                Plain.line(p.name()), p.sha256(), p.madeUp(), p.density(), p.asked(), p.passes()))
                        .toList(),
                missing);
    }

    private static Subject file(String kind, Loaded<?> loaded) {
        return new Subject(kind, Plain.fileName(loaded.file()), loaded.sha256());
    }

    /** {@return how it stands: the plots that are judged, at the wanted speed} */
    public Standing standing() {
        return summary.standing();
    }

    /** {@return one sentence for each group of plots that is judged} */
    public List<String> verdicts() {
        List<String> verdicts = new ArrayList<>();
        for (PlotSummary.Group group : summary.groups()) {
            for (PlotSummary.Cell cell : group.cells()) {
                if (group.judged() && cell.speed() == summary.wanted().speed()) {
                    verdicts.add(sentence(group, cell));
                }
            }
        }
        return verdicts;
    }

    private String sentence(PlotSummary.Group group, PlotSummary.Cell cell) {
        String where = Words.capital(name(group)) + ": ";
        if (cell.targets() == 0) {
            return where + "nothing stands there that is to be treated, so nothing can be said.";
        }
        String at = "at " + Dimension.SPEED.text(cell.speed()) + " "
                + Dimension.SHARE.text(cell.coverage().mean()) + " of " + cell.targets() + " plants are treated";
        String wanted = Dimension.SHARE.text(summary.wanted().coverage()) + " are wanted";
        String sure = Dimension.SHARE.text(summary.wanted().confidence()) + " sure, from "
                + cell.coverage().of();
        return where
                + switch (cell.standing()) {
                    case PASSES ->
                        at + ", at least "
                                + Dimension.SHARE.text(cell.coverage().lower()) + " (" + sure + "), where " + wanted
                                + ".";
                    case FAILS ->
                        at + ", at most " + Dimension.SHARE.text(cell.coverage().upper()) + " (" + sure + "), where "
                                + wanted + ".";
                    case UNDECIDED ->
                        at + ", which is between "
                                + Dimension.SHARE.text(cell.coverage().lower()) + " and "
                                + Dimension.SHARE.text(cell.coverage().upper()) + " (" + sure
                                + "), so it cannot be told whether "
                                + wanted.replace(" are wanted", "") + " are reached. More stands would tell.";
                };
    }

    /**
     * Names a group of plots.
     *
     * @param group the group
     * @return such as "8 stands made up at 1.5 1/m2"
     */
    public static String name(PlotSummary.Group group) {
        OptionalDouble density = group.density();
        String stands = Words.count(group.plots(), group.madeUp() ? "stand" : "recorded stand");
        if (!group.madeUp()) {
            return stands;
        }
        return stands + " made up"
                + (density.isPresent() ? " at " + Dimension.DENSITY.text(density.getAsDouble()) : "");
    }

    /** {@return how many different tasks the heads were asked} */
    public long asked() {
        return plots.stream().mapToLong(PlotResult::asked).sum();
    }

    /** {@return the counts of a cell by reason, as words, the most frequent first}
     * @param cell the cell
     */
    public static List<Map.Entry<String, Long>> reasons(PlotSummary.Cell cell) {
        return cell.missed().entrySet().stream()
                .sorted((a, b) -> a.getValue().equals(b.getValue())
                        ? a.getKey().compareTo(b.getKey())
                        : Long.compare(b.getValue(), a.getValue()))
                .map(e -> Map.entry(e.getKey().label(), e.getValue()))
                .toList();
    }
}
