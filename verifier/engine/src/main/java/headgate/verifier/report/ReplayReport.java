package headgate.verifier.report;

import headgate.runtime.origin.Loaded;
import headgate.verifier.check.Case;
import headgate.verifier.check.Dimension;
import headgate.verifier.check.HeadUnderTest;
import headgate.verifier.plot.PlotResult;
import headgate.verifier.plot.PlotStudy;
import headgate.verifier.plot.PlotSummary;
import headgate.verifier.replay.ArmUse;
import headgate.verifier.trial.Standing;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/**
 * A replay as one value, for people and programs.
 *
 * @param edition which program made it
 * @param title what was replayed
 * @param subjects digests of all files that it follows from
 * @param arms the arms at work, in the order in which actions number them
 * @param study what came of the plots
 * @param missing what the files do not say and was taken as perfect, as clauses
 */
public record ReplayReport(
        Edition edition,
        String title,
        List<Subject> subjects,
        List<String> arms,
        PlotStudy study,
        List<String> missing) {

    /** Copies the lists. */
    public ReplayReport {
        subjects = List.copyOf(subjects);
        arms = List.copyOf(arms);
        missing = List.copyOf(missing);
    }

    /**
     * Makes a report.
     *
     * @param edition which program makes it
     * @param subject the case
     * @param study what came of the plots, at least one
     * @param missing what was taken as perfect
     * @param others further files that it follows from
     * @return the report
     */
    public static ReplayReport of(
            Edition edition, Case subject, PlotStudy study, List<String> missing, List<Subject> others) {
        List<Subject> subjects = new ArrayList<>();
        for (HeadUnderTest head : subject.heads()) {
            subjects.add(new Subject("head", head.label(), head.facts().sha256()));
        }
        subjects.add(file("carriage", subject.carriage()));
        subjects.add(file("crop plan", subject.plan()));
        subjects.add(file("policy", subject.policy()));
        subjects.addAll(others);
        for (PlotResult plot : study.plots()) {
            if (!plot.madeUp()) {
                subjects.add(new Subject("stand", plot.name(), plot.sha256()));
            }
        }
        String heads = subject.heads().stream().map(HeadUnderTest::label).collect(Collectors.joining(" and "));
        return new ReplayReport(
                edition,
                Plain.line(Words.capital(heads) + " on "
                        + subject.carriage().value().name() + ": "
                        + subject.plan().value().name()),
                subjects,
                study.plots().get(0).passes().get(0).outcome().arms().stream()
                        .map(ArmUse::arm)
                        .map(Plain::line)
                        .toList(),
                new PlotStudy(
                        study.plots().stream()
                                .map(p -> new PlotResult(
                                        Plain.line(p.name()),
                                        p.sha256(),
                                        p.madeUp(),
                                        p.density(),
                                        p.asked(),
                                        p.passes()))
                                .toList(),
                        study.summary(),
                        study.density(),
                        study.proposals(),
                        study.asked()),
                missing);
    }

    private static Subject file(String kind, Loaded<?> loaded) {
        return new Subject(kind, Plain.fileName(loaded.file()), loaded.sha256());
    }

    /** {@return what came of each plot} */
    public List<PlotResult> plots() {
        return study.plots();
    }

    /** {@return what may be said of groups of plots} */
    public PlotSummary summary() {
        return study.summary();
    }

    /**
     * A pass whose first actions were kept.
     *
     * @param plot the plot
     * @param pass the pass
     */
    public record Shown(PlotResult plot, PlotResult.Pass pass) {}

    /** {@return the first pass at the wanted speed in which an arm did anything; empty if there is none} */
    public Optional<Shown> shown() {
        return plots().stream()
                .flatMap(plot -> plot.passes().stream().map(pass -> new Shown(plot, pass)))
                .filter(shown -> !shown.pass().timeline().isEmpty())
                .findFirst();
    }

    /** {@return how it stands: the plots that are judged, at the wanted speed} */
    public Standing standing() {
        return summary().standing();
    }

    /** {@return one sentence for each group of plots that is judged} */
    public List<String> verdicts() {
        List<String> verdicts = new ArrayList<>();
        for (PlotSummary.Group group : summary().groups()) {
            for (PlotSummary.Cell cell : group.cells()) {
                if (group.judged() && cell.speed() == summary().wanted().speed()) {
                    verdicts.add(sentence(group, cell) + cropLoss(cell));
                }
            }
        }
        return verdicts;
    }

    private String cropLoss(PlotSummary.Cell cell) {
        return cell.losesTooMuch()
                ? " Of the crop's plants " + Dimension.SHARE.text(cell.cropLoss()) + " are lost, where "
                        + Dimension.SHARE.text(summary().wanted().cropLoss()) + " may be."
                : "";
    }

    private String sentence(PlotSummary.Group group, PlotSummary.Cell cell) {
        String where = Words.capital(name(group)) + ": ";
        if (cell.targets() == 0) {
            return where + "nothing stands there that is to be treated, so nothing can be said.";
        }
        String at = "at " + Dimension.SPEED.text(cell.speed()) + " "
                + Dimension.SHARE.text(cell.coverage().mean()) + " of " + cell.targets() + " plants are treated";
        String wanted = Dimension.SHARE.text(summary().wanted().coverage()) + " are wanted";
        String sure = Dimension.SHARE.text(summary().wanted().confidence()) + " sure, from "
                + cell.coverage().of();
        return where
                + switch (cell.coverage().against(summary().wanted().coverage())) {
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

    /**
     * Says the best speed of a group.
     *
     * @param group the group
     * @return such as "0.134 m/s", "at least 0.3 m/s", "none" or "cannot be told"
     */
    public static String bestSpeed(PlotSummary.Group group) {
        return group.best()
                .map(speed -> (group.toTheTop() ? "at least " : "") + Dimension.SPEED.text(speed))
                .orElse(group.cells().get(0).standing() == Standing.FAILS ? "none" : "cannot be told");
    }

    /** {@return what density of weeds the wanted speed can bear, as a sentence; empty if that was not tried} */
    public Optional<String> densityBorne() {
        return study.density().map(ladder -> {
            String at = "At " + Dimension.SPEED.text(ladder.speed()) + " ";
            return ladder.borne()
                    .map(density -> at + "a density of up to " + Dimension.DENSITY.text(density) + " can be borne"
                            + (ladder.toTheTop() ? ", and perhaps more: no higher one was tried." : "."))
                    .orElseGet(() -> ladder.openBelow()
                            ? at
                                    + "it cannot be told which density can be borne: more stands, or longer ones, would tell."
                            : ladder.rungs().get(0).cell().losesTooMuch()
                                    ? at + "too much of the crop is lost at any density that was tried."
                                    : at + "not even "
                                            + Dimension.DENSITY.text(
                                                    ladder.rungs().get(0).density()) + " can be borne.");
        });
    }

    /** {@return what would do where the wanted speed fails, one sentence each} */
    public List<String> remedies() {
        return study.proposals().stream()
                .map(p -> Words.capital(p.edit().text()) + ": "
                        + Dimension.SHARE.text(p.coverage().mean()) + " are treated, at least "
                        + Dimension.SHARE.text(p.coverage().lower()) + ".")
                .toList();
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
