package headgate.verifier.report;

import headgate.verifier.check.Family;
import headgate.verifier.check.Outcome;
import java.util.List;

/**
 * What one family of rules found.
 *
 * @param family the family
 * @param entries its findings, the most urgent first
 * @param topics what this family should look at and does not, in words
 */
public record Section(Family family, List<Entry> entries, List<String> topics) {

    /** Copies the lists. */
    public Section {
        entries = List.copyOf(entries);
        topics = List.copyOf(topics);
    }

    /**
     * Counts findings.
     *
     * @param outcome an outcome
     * @return how many findings have it
     */
    public long count(Outcome outcome) {
        return entries.stream().filter(e -> e.outcome() == outcome).count();
    }
}
