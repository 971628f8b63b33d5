package headgate.api.problem;

import headgate.api.annotation.ApiStatus;
import java.util.Objects;

/** One thing that is wrong with a value: the field, what was found there, and the rule that it breaks. */
@ApiStatus(value = ApiStatus.Status.EXPERIMENTAL, since = "0.1.0")
public final class Problem {

    private final String field;
    private final String found;
    private final String rule;

    /**
     * Makes a problem.
     *
     * @param field path of the field, such as {@code postures[work].moving}
     * @param found what stands there, with its unit
     * @param rule what was expected, beginning with "must"
     */
    public Problem(String field, String found, String rule) {
        this.field = Objects.requireNonNull(field, "field");
        this.found = Objects.requireNonNull(found, "found");
        this.rule = Objects.requireNonNull(rule, "rule");
    }

    /** {@return the path of the field} */
    public String field() {
        return field;
    }

    /** {@return what stands in the field, with its unit} */
    public String found() {
        return found;
    }

    /** {@return what was expected, beginning with "must"} */
    public String rule() {
        return rule;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Problem that
                && field.equals(that.field)
                && found.equals(that.found)
                && rule.equals(that.rule);
    }

    @Override
    public int hashCode() {
        return Objects.hash(field, found, rule);
    }

    /** {@return one line: field, rule, what was found} */
    @Override
    public String toString() {
        return field + " " + rule + ", but is " + found;
    }
}
