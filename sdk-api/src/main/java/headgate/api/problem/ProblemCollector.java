package headgate.api.problem;

import headgate.api.annotation.ApiStatus;
import java.util.ArrayList;
import java.util.List;

/** Collects the problems of one value while its builder looks at each field; throws them all at once. */
@ApiStatus(value = ApiStatus.Status.INTERNAL, since = "0.1.0")
public final class ProblemCollector {

    private final String subject;
    private final List<Problem> problems = new ArrayList<>();

    /**
     * Begins with no problem.
     *
     * @param subject what is being built, such as "head sheet"
     */
    public ProblemCollector(String subject) {
        this.subject = subject;
    }

    /**
     * Adds a problem unless a condition holds.
     *
     * @param holds the condition
     * @param field path of the field
     * @param found what stands there
     * @param rule what was expected, beginning with "must"
     * @return the condition
     */
    public boolean demand(boolean holds, String field, Object found, String rule) {
        if (!holds) {
            problems.add(new Problem(field, String.valueOf(found), rule));
        }
        return holds;
    }

    /**
     * Demands a finite figure within closed bounds.
     *
     * @param field path of the field
     * @param value the figure, SI
     * @param least lower bound, inclusive
     * @param most upper bound, inclusive; may be infinite
     * @param unit the unit's symbol, for the message
     */
    public void within(String field, double value, double least, double most, String unit) {
        String suffix = unit.isEmpty() ? "" : " " + unit;
        String rule = Double.isInfinite(most)
                ? "must be finite and at least " + least + suffix
                : "must be from " + least + " to " + most + suffix;
        demand(Double.isFinite(value) && value >= least && value <= most, field, value + suffix, rule);
    }

    /**
     * Demands that a field was given.
     *
     * @param field path of the field
     * @param value the field's value, or null
     * @return true if it was given
     */
    public boolean given(String field, @org.jspecify.annotations.Nullable Object value) {
        return demand(value != null, field, "not given", "must be given");
    }

    /** Throws an {@link InvalidValueException} with all problems, if there is one. */
    public void throwIfAny() {
        if (!problems.isEmpty()) {
            throw new InvalidValueException(subject, problems);
        }
    }
}
