package headgate.verifier.report.text;

import headgate.verifier.check.Outcome;
import headgate.verifier.judge.Limit;
import headgate.verifier.report.Advice;
import headgate.verifier.report.Entry;
import headgate.verifier.report.Report;
import headgate.verifier.report.Section;
import java.util.List;
import java.util.Locale;

/**
 * Writes a report for a terminal: the verdict, what fails and what would mend it, what needs a look, counts, and where
 * the whole report is.
 */
public final class TextReport {

    /** Findings of one outcome that are told in full; the rest is in the report's files. */
    private static final int MOST_TOLD = 10;

    private final Report report;
    private final TextStyle style;
    private final StringBuilder text = new StringBuilder();

    private TextReport(Report report, TextStyle style) {
        this.report = report;
        this.style = style;
    }

    /**
     * Writes a report.
     *
     * @param report the report
     * @param written where its files were written, as the reader should be told; may be empty
     * @param style how words are set off
     * @return lines, each ended by a line feed
     */
    public static String of(Report report, List<String> written, TextStyle style) {
        TextReport writing = new TextReport(report, style);
        writing.write(written);
        return writing.text.toString();
    }

    private void write(List<String> written) {
        line(report.title());
        line(style.verdict(report.verdict(), report.headline()));
        for (Limit limit : report.limits()) {
            line("  keep  " + limit.text());
        }
        told(Outcome.FAIL);
        told(Outcome.UNDECIDED);
        told(Outcome.CAUTION);
        line("");
        report.tightest().ifPresent(t -> line("tightest place  " + t.text()));
        line("checked         " + report.counts().text());
        long topics = report.sections().stream()
                .map(Section::topics)
                .mapToLong(List::size)
                .sum();
        line("not checked     " + (topics + report.notes().size()) + " topics, listed in the report");
        for (String note : report.notes()) {
            line("                " + note);
        }
        for (String file : written) {
            line("written         " + file);
        }
    }

    private void told(Outcome outcome) {
        List<Entry> all = report.entries().filter(e -> e.outcome() == outcome).toList();
        for (Entry entry : all.subList(0, Math.min(MOST_TOLD, all.size()))) {
            line("");
            entry(entry);
        }
        if (all.size() > MOST_TOLD) {
            line("");
            line(style.outcome(outcome, outcome.label().toUpperCase(Locale.ROOT)) + "  " + (all.size() - MOST_TOLD)
                    + " more, listed in the report");
        }
    }

    private void entry(Entry entry) {
        String word = entry.outcomeLabel().toUpperCase(Locale.ROOT);
        line(style.outcome(entry.outcome(), word) + "  " + entry.rule().id() + "  " + entry.subject());
        line("  " + entry.message());
        entry.figures().ifPresent(f -> line("  found  " + f));
        entry.place()
                .ifPresentOrElse(
                        p -> line("  at     " + p + "  " + entry.field().orElse("")),
                        () -> entry.field().ifPresent(f -> line("  at     " + f)));
        for (Advice advice : entry.remedies()) {
            line("  mend   " + advice.text() + " (" + advice.outcome() + ")");
        }
    }

    private void line(String line) {
        text.append(line.stripTrailing()).append('\n');
    }
}
