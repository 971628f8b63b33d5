package headgate.app.check;

import headgate.verifier.fitting.ServedSpacing;
import java.util.List;

/**
 * What came of checking a fitting.
 *
 * @param checked the judgement and its report
 * @param spacings what is found of the other row spacings that the fitting names, in their order
 */
public record Fitted(Checked checked, List<ServedSpacing> spacings) {

    /** Copies the list. */
    public Fitted {
        spacings = List.copyOf(spacings);
    }
}
