package headgate.verifier.report.text;

import headgate.verifier.check.Dimension;
import headgate.verifier.plot.PlotSummary;
import headgate.verifier.report.ReplayReport;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Writes a replay for a terminal: how it stands, and a table for each group of stands. */
public final class ReplayText {

    private ReplayText() {}

    /**
     * Writes a replay.
     *
     * @param report the replay
     * @param written where its files were written; may be empty
     * @return lines, each ended by a line feed
     */
    public static String of(ReplayReport report, List<String> written) {
        StringBuilder text = new StringBuilder();
        text.append(report.title()).append('\n');
        report.verdicts().forEach(verdict -> text.append(verdict).append('\n'));
        report.missing().forEach(missing -> text.append("Taken as perfect, because ")
                .append(missing)
                .append(".\n"));
        for (PlotSummary.Group group : report.summary().groups()) {
            text.append('\n').append(ReplayReport.name(group)).append('\n');
            text.append(line("speed", "coverage", "at least", "at most", "", "missed most often because"));
            for (double speed : report.summary().grid()) {
                PlotSummary.Cell cell = group.at(speed).orElseThrow();
                text.append(line(
                        Dimension.SPEED.text(cell.speed()),
                        cell.targets() == 0
                                ? "no plants"
                                : Dimension.SHARE.text(cell.coverage().mean()),
                        Dimension.SHARE.text(cell.coverage().lower()),
                        Dimension.SHARE.text(cell.coverage().upper()),
                        cell.standing().name().toLowerCase(Locale.ROOT),
                        mostOften(cell)));
            }
            text.append("Best speed: ").append(ReplayReport.bestSpeed(group)).append(".\n");
        }
        report.densityBorne().ifPresent(said -> text.append('\n').append(said).append('\n'));
        if (!report.remedies().isEmpty()) {
            text.append("\nWhat would do, replayed over these stands and held against no other rule:\n");
            report.remedies().forEach(remedy -> text.append("  ").append(remedy).append('\n'));
        }
        if (!written.isEmpty()) {
            text.append('\n');
            written.forEach(file -> text.append("Written: ").append(file).append('\n'));
        }
        return text.toString();
    }

    private static String mostOften(PlotSummary.Cell cell) {
        String crop = cell.losesTooMuch() ? "; of the crop " + Dimension.SHARE.text(cell.cropLoss()) + " lost" : "";
        return ReplayReport.reasons(cell).stream()
                        .findFirst()
                        .map(ReplayText::reason)
                        .orElse(cell.targets() == 0 ? "" : "none missed")
                + crop;
    }

    private static String reason(Map.Entry<String, Long> reason) {
        return reason.getKey() + " (" + reason.getValue() + ")";
    }

    private static String line(String... cells) {
        return String.format(
                                Locale.ROOT,
                                "  %-12s %-9s %-9s %-9s %-10s %s",
                                cells[0],
                                cells[1],
                                cells[2],
                                cells[3],
                                cells[4],
                                cells[5])
                        .stripTrailing()
                + "\n";
    }
}
