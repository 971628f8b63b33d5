package headgate.runtime.origin;

import java.util.List;
import java.util.stream.Collectors;

/**
 * Thrown when a file cannot be used: the only exception that the readers of files throw because of what is in a file,
 * or because it cannot be read. It holds every problem, in order of place.
 */
public final class InvalidFileException extends Exception {

    private static final long serialVersionUID = 1L;

    /** Transient: problems are for the same process, or for a report; nobody serializes them. */
    private final transient List<FileProblem> problems;

    /**
     * Makes the exception.
     *
     * @param problems what is wrong; at least one
     */
    public InvalidFileException(List<FileProblem> problems) {
        super(problems.stream().sorted().map(FileProblem::toString).collect(Collectors.joining("\n")));
        if (problems.isEmpty()) {
            throw new IllegalArgumentException("a file without a problem is not invalid");
        }
        this.problems = problems.stream().sorted().toList();
    }

    /** {@return every problem, in order of place; at least one} */
    public List<FileProblem> problems() {
        return problems;
    }
}
