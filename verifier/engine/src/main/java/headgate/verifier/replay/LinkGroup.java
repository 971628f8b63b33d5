package headgate.verifier.replay;

import java.util.List;

/**
 * Arms that shift as one. They shift only while none of them acts, and none acts while they shift.
 *
 * @param arms their indices in the setting
 */
public record LinkGroup(List<Integer> arms) {

    /** Copies the list. */
    public LinkGroup {
        arms = List.copyOf(arms);
    }
}
