package headgate.api.vocabulary;

import headgate.api.annotation.ApiStatus;
import headgate.api.problem.ProblemCollector;
import java.util.regex.Pattern;

/**
 * A word of an open vocabulary: lower-case words joined by hyphens. Later versions of this library may name more words,
 * and a word not known here is carried as it is. Two terms are equal if they are of one vocabulary and have one name.
 */
@ApiStatus(value = ApiStatus.Status.EXPERIMENTAL, since = "0.1.0")
public abstract class Term implements Comparable<Term> {

    private static final Pattern FORM = Pattern.compile("[a-z][a-z0-9]*(-[a-z0-9]+)*");

    private static final int LONGEST = 60;

    private final String name;

    Term(String vocabulary, String name) {
        ProblemCollector problems = new ProblemCollector(vocabulary);
        problems.demand(
                name.length() <= LONGEST && FORM.matcher(name).matches(),
                "name",
                '"' + name + '"',
                "must be lower-case words joined by hyphens, at most " + LONGEST + " characters");
        problems.throwIfAny();
        this.name = name;
    }

    /** {@return the name} */
    public final String name() {
        return name;
    }

    /** Orders by name. */
    @Override
    public final int compareTo(Term other) {
        return name.compareTo(other.name);
    }

    @Override
    public final boolean equals(Object other) {
        return other instanceof Term that && getClass() == that.getClass() && name.equals(that.name);
    }

    @Override
    public final int hashCode() {
        return name.hashCode();
    }

    /** {@return the name} */
    @Override
    public final String toString() {
        return name;
    }
}
