package headgate.verifier.report;

import headgate.runtime.origin.Place;
import headgate.verifier.check.Comparison;
import headgate.verifier.check.Finding;
import headgate.verifier.check.Outcome;
import headgate.verifier.check.RuleInfo;
import headgate.verifier.check.Severity;
import headgate.verifier.check.Term;
import headgate.verifier.check.Witness;
import headgate.verifier.judge.JudgedFinding;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * A finding as a report shows it.
 *
 * @param rule the rule
 * @param outcome what it found
 * @param subject what was looked at
 * @param message one sentence with the numbers that decided it
 * @param comparison the measured value against its limit, where the rule measures
 * @param terms the formula's terms with their numbers
 * @param witness two points that show what was measured, where there is such a place
 * @param field the field that the finding is about, as {@code carriage:arms[2].payload.mass}
 * @param place where that field stands, if it stands in a file
 * @param examined how many things were looked at
 * @param remedies changes that mend it, best first
 */
public record Entry(
        RuleInfo rule,
        Outcome outcome,
        String subject,
        String message,
        Optional<Comparison> comparison,
        List<Term> terms,
        Optional<Witness> witness,
        Optional<String> field,
        Optional<Place> place,
        long examined,
        List<Advice> remedies) {

    /** Copies the lists. */
    public Entry {
        terms = List.copyOf(terms);
        remedies = List.copyOf(remedies);
    }

    static Entry of(JudgedFinding judged, Function<String, Optional<Place>> places) {
        Finding f = judged.finding();
        return new Entry(
                f.rule(),
                f.outcome(),
                Plain.line(f.subject()),
                Plain.line(f.message()),
                f.comparison(),
                f.terms().stream()
                        .map(t -> new Term(Plain.line(t.name()), t.measure()))
                        .toList(),
                f.witness().map(Entry::clean),
                f.field().map(Plain::line),
                f.field().flatMap(places),
                f.examined(),
                judged.remedies().stream().map(Advice::of).toList());
    }

    private static Witness clean(Witness witness) {
        return new Witness(
                witness.from(),
                witness.to(),
                Plain.line(witness.label()),
                witness.fold().map(f -> new Witness.Fold(Plain.line(f.stance()), f.step())));
    }

    /** {@return true if this alone makes the case not fit} */
    public boolean breaksFit() {
        return outcome == Outcome.FAIL && rule.severity() == Severity.ERROR;
    }

    /** {@return how urgent it is: 0 comes first in its section} */
    int rank() {
        return switch (outcome) {
            case FAIL -> breaksFit() ? 0 : 1;
            case UNDECIDED -> 2;
            case CAUTION -> 3;
            case PASS -> 4;
            case NOT_APPLICABLE -> 5;
        };
    }

    /**
     * The outcome in words. A failure that does not decide the verdict says so.
     *
     * @return the words
     */
    public String outcomeLabel() {
        return outcome == Outcome.FAIL && !breaksFit() ? "fail (caution only)" : outcome.label();
    }

    /** {@return measured value, limit and margin in words, or empty if nothing was measured} */
    public Optional<String> figures() {
        return comparison.map(c ->
                c.measured() + ", must be " + c.relation().label() + " " + c.limit() + " (" + Margin.text(c) + ")");
    }
}
