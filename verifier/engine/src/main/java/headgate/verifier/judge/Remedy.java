package headgate.verifier.judge;

import headgate.verifier.check.Edit;
import java.util.List;

/**
 * A change that mends a finding, judged by all rules.
 *
 * @param edit the change
 * @param verdict what the changed case comes to
 * @param breaks ids of error-level rules that hold now and would fail then, sorted
 */
public record Remedy(Edit edit, Verdict verdict, List<String> breaks) {

    /** Copies the list. */
    public Remedy {
        breaks = List.copyOf(breaks);
    }

    /** {@return what to do and what comes of it, as a sentence without full stop} */
    public String text() {
        if (verdict.isFit()) {
            return edit.text() + " (then it " + verdict.label() + ")";
        }
        String after = breaks.isEmpty() ? "mends this alone" : "but this would break " + String.join(", ", breaks);
        return edit.text() + " (" + after + ")";
    }
}
