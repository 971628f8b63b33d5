package headgate.verifier.report;

import headgate.verifier.check.Comparison;
import headgate.verifier.check.Dimension;
import headgate.verifier.check.Outcome;
import headgate.verifier.check.Witness;
import headgate.verifier.report.drawing.Scene;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The place where least is left, of all places that can be shown in a picture.
 *
 * @param ruleId the rule that measured it
 * @param outcome what the rule found there
 * @param subject what meets or nearly meets
 * @param comparison the measured length against its limit
 * @param witness where, carriage frame
 */
public record Tightest(String ruleId, Outcome outcome, String subject, Comparison comparison, Witness witness) {

    /**
     * The first of those with the least margin, on a carriage that is set for work: the order of the rule book decides
     * between equals. A folded carriage has pictures of its own.
     */
    static Optional<Entry> among(List<Entry> entries) {
        return entries.stream()
                .filter(e -> e.witness().filter(w -> w.fold().isEmpty()).isPresent())
                .filter(e -> e.comparison()
                        .filter(c -> c.measured().dimension() == Dimension.LENGTH && !Double.isNaN(c.margin()))
                        .isPresent())
                .min(Comparator.comparingDouble(
                        e -> e.comparison().orElseThrow().margin()));
    }

    static Tightest of(Entry entry) {
        return new Tightest(
                entry.rule().id(),
                entry.outcome(),
                entry.subject(),
                entry.comparison().orElseThrow(),
                entry.witness().orElseThrow());
    }

    /** {@return where and how tight, as a sentence without full stop} */
    public String text() {
        return subject + ": " + comparison.measured() + ", must be "
                + comparison.relation().label() + " " + comparison.limit() + " (" + Margin.text(comparison) + ")";
    }

    /** The place as a picture marks it. */
    Scene.GapMark mark() {
        return new Scene.GapMark(
                witness.from(),
                witness.to(),
                subject,
                comparison.measured().toString(),
                comparison.relation().label() + " " + comparison.limit(),
                comparison.limit().value(),
                comparison.holds());
    }
}
