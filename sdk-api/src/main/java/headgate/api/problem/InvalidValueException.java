package headgate.api.problem;

import headgate.api.annotation.ApiStatus;
import java.util.List;
import java.util.stream.Collectors;

/** Thrown by the {@code build()} of a value that cannot be: it holds every problem found, not only the first. */
@ApiStatus(value = ApiStatus.Status.EXPERIMENTAL, since = "0.1.0")
public final class InvalidValueException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    /** Transient: an exception crosses a process border as text, never by serialization. */
    private final transient List<Problem> problems;

    /**
     * Makes the exception.
     *
     * @param subject what was being built, such as "head sheet"
     * @param problems what is wrong with it; at least one
     */
    public InvalidValueException(String subject, List<Problem> problems) {
        super(problems.stream().map(Problem::toString).collect(Collectors.joining("; ", subject + ": ", "")));
        this.problems = List.copyOf(problems);
    }

    /** {@return every problem, in the order of the fields} */
    public List<Problem> problems() {
        return problems;
    }
}
