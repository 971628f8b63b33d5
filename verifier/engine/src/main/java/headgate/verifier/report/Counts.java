package headgate.verifier.report;

import headgate.verifier.check.Outcome;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.StringJoiner;

/**
 * How much was looked at.
 *
 * @param rules different rules with a finding
 * @param findings how many findings there are of each outcome; every outcome is there
 * @param examined things that rules looked at, all rules together
 */
public record Counts(int rules, Map<Outcome, Integer> findings, long examined) {

    /** Copies the map. */
    public Counts {
        findings = Collections.unmodifiableMap(new EnumMap<>(findings));
    }

    static Counts of(List<Entry> entries) {
        Map<Outcome, Integer> found = new EnumMap<>(Outcome.class);
        for (Outcome outcome : Outcome.values()) {
            found.put(outcome, (int)
                    entries.stream().filter(e -> e.outcome() == outcome).count());
        }
        return new Counts(
                (int) entries.stream().map(e -> e.rule().id()).distinct().count(),
                found,
                entries.stream().mapToLong(Entry::examined).sum());
    }

    /** {@return how many findings there are} */
    public int all() {
        return findings.values().stream().mapToInt(Integer::intValue).sum();
    }

    /** {@return the counts as a clause: rules, findings, and each outcome that occurs} */
    public String text() {
        StringJoiner outcomes = new StringJoiner(", ");
        findings.forEach((outcome, n) -> {
            if (n > 0) {
                outcomes.add(n + " " + outcome.label());
            }
        });
        String by = Words.count(rules, "rule") + ", " + Words.count(all(), "finding");
        return all() == 0 ? by : by + ": " + outcomes;
    }
}
