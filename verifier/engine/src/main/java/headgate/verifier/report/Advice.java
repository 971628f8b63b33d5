package headgate.verifier.report;

import headgate.verifier.judge.Remedy;
import headgate.verifier.judge.Verdict;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A change that mends something, with what comes of it.
 *
 * @param text what to do
 * @param outcome what comes of it, as a clause
 * @param kind the kind of change
 * @param figures its figures, SI, by name
 * @param verdict what the changed case comes to
 * @param breaks ids of rules that hold now and would fail then
 */
public record Advice(
        String text,
        String outcome,
        String kind,
        SortedMap<String, Object> figures,
        Verdict verdict,
        List<String> breaks) {

    /** Copies map and list. */
    public Advice {
        figures = Collections.unmodifiableSortedMap(new TreeMap<>(figures));
        breaks = List.copyOf(breaks);
    }

    static Advice of(Remedy remedy) {
        return new Advice(
                Plain.line(remedy.edit().text()),
                outcome(remedy),
                Plain.line(remedy.edit().kind()),
                clean(remedy.edit().figures()),
                remedy.verdict(),
                remedy.breaks());
    }

    private static String outcome(Remedy remedy) {
        if (remedy.verdict().isFit()) {
            return "then it " + remedy.verdict().label();
        }
        return remedy.breaks().isEmpty()
                ? "mends this alone; other rules stay as they are"
                : "but this would break " + String.join(", ", remedy.breaks());
    }

    private static SortedMap<String, Object> clean(Map<String, Object> figures) {
        SortedMap<String, Object> clean = new TreeMap<>();
        figures.forEach((name, figure) -> clean.put(
                Plain.line(name), figure instanceof Number number ? number : Plain.line(String.valueOf(figure))));
        return clean;
    }
}
