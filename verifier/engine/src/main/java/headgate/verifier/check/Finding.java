package headgate.verifier.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * One rule's answer about one subject.
 *
 * @param rule the rule
 * @param outcome what it found
 * @param subject what was looked at, in words: a head, a pair of arms, a lane
 * @param message one sentence with the numbers that decided it
 * @param comparison the measured value against its limit, where the rule measures
 * @param terms the formula's terms with their numbers
 * @param witness two points that show what was measured, where there is such a place
 * @param field the field of a file that the finding is about, as {@code carriage:arms[2].payload.mass}, where there is
 *     one
 * @param examined how many things were looked at (pairs, tasks, lanes); 0 only if undecided or not applicable
 * @param proposals changes that would mend it, best first; not yet judged
 */
public record Finding(
        RuleInfo rule,
        Outcome outcome,
        String subject,
        String message,
        Optional<Comparison> comparison,
        List<Term> terms,
        Optional<Witness> witness,
        Optional<String> field,
        long examined,
        List<Edit> proposals) {

    /**
     * Copies the lists.
     *
     * @throws IllegalArgumentException if the rule passed, failed or cautioned without having looked at anything
     */
    public Finding {
        terms = List.copyOf(terms);
        proposals = List.copyOf(proposals);
        boolean decided = outcome != Outcome.UNDECIDED && outcome != Outcome.NOT_APPLICABLE;
        if (decided && examined <= 0) {
            throw new IllegalArgumentException(rule.id() + " decided without having looked at anything");
        }
        if (message.isBlank()) {
            throw new IllegalArgumentException(rule.id() + " must say what it found");
        }
    }

    /**
     * Begins a finding.
     *
     * @param rule the rule
     * @param subject what was looked at, in words
     * @return a builder
     */
    public static Builder of(RuleInfo rule, String subject) {
        return new Builder(rule, subject);
    }

    /**
     * A finding that nobody can decide.
     *
     * @param rule the rule
     * @param subject what was looked at
     * @param missing what is missing and where to give it, as a sentence
     * @return the finding
     */
    public static Finding undecided(RuleInfo rule, String subject, String missing) {
        return of(rule, subject).end(Outcome.UNDECIDED, missing);
    }

    /**
     * A finding where there is nothing to look at.
     *
     * @param rule the rule
     * @param subject what was looked at
     * @param because why, as a sentence
     * @return the finding
     */
    public static Finding notApplicable(RuleInfo rule, String subject, String because) {
        return of(rule, subject).end(Outcome.NOT_APPLICABLE, because);
    }

    /** {@return true if this alone makes the case not fit} */
    public boolean breaksFit() {
        return outcome == Outcome.FAIL && rule.severity() == Severity.ERROR;
    }

    /** Collects a finding's parts. */
    public static final class Builder {

        private final RuleInfo rule;
        private final String subject;
        private @Nullable Comparison comparison;
        private final List<Term> terms = new ArrayList<>();
        private @Nullable Witness witness;
        private @Nullable String field;
        private long examined;
        private final List<Edit> proposals = new ArrayList<>();

        private Builder(RuleInfo rule, String subject) {
            this.rule = Objects.requireNonNull(rule);
            this.subject = Objects.requireNonNull(subject);
        }

        /**
         * Sets the measured value against its limit.
         *
         * @param value the comparison
         * @return this builder
         */
        public Builder comparison(Comparison value) {
            this.comparison = value;
            return this;
        }

        /**
         * Adds a term of the formula.
         *
         * @param name what it is
         * @param value its figure, SI
         * @param dimension the figure's kind
         * @return this builder
         */
        public Builder term(String name, double value, Dimension dimension) {
            terms.add(Term.of(name, value, dimension));
            return this;
        }

        /**
         * Adds terms of the formula.
         *
         * @param more the terms
         * @return this builder
         */
        public Builder terms(List<Term> more) {
            terms.addAll(more);
            return this;
        }

        /**
         * Sets the place.
         *
         * @param value two points in the carriage frame
         * @return this builder
         */
        public Builder witness(Witness value) {
            this.witness = value;
            return this;
        }

        /**
         * Sets the field that the finding is about.
         *
         * @param path file kind and field path, as {@code carriage:arms[2].payload.mass}
         * @return this builder
         */
        public Builder field(String path) {
            this.field = path;
            return this;
        }

        /**
         * Sets how many things were looked at.
         *
         * @param count the count
         * @return this builder
         */
        public Builder examined(long count) {
            this.examined = count;
            return this;
        }

        /**
         * Adds a change that would mend it.
         *
         * @param edit the change
         * @return this builder
         */
        public Builder propose(Edit edit) {
            proposals.add(edit);
            return this;
        }

        /**
         * Ends with pass or fail as the comparison says.
         *
         * @param message one sentence with the numbers
         * @return the finding; proposals are dropped if it passes
         */
        public Finding decide(String message) {
            return end(Objects.requireNonNull(comparison).holds() ? Outcome.PASS : Outcome.FAIL, message);
        }

        /**
         * Ends with an outcome.
         *
         * @param outcome what the rule found
         * @param message one sentence with the numbers
         * @return the finding; proposals are kept only if it fails
         */
        public Finding end(Outcome outcome, String message) {
            return new Finding(
                    rule,
                    outcome,
                    subject,
                    message,
                    Optional.ofNullable(comparison),
                    terms,
                    Optional.ofNullable(witness),
                    Optional.ofNullable(field),
                    examined,
                    outcome == Outcome.FAIL ? proposals : List.of());
        }
    }
}
