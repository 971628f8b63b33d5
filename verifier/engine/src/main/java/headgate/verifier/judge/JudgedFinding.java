package headgate.verifier.judge;

import headgate.verifier.check.Finding;
import java.util.List;

/**
 * A finding with the remedies that stood the test.
 *
 * @param finding the finding
 * @param remedies changes that mend it, best first, at most three
 */
public record JudgedFinding(Finding finding, List<Remedy> remedies) {

    /** Copies the list. */
    public JudgedFinding {
        remedies = List.copyOf(remedies);
    }
}
