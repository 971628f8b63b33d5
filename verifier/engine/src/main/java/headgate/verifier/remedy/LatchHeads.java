package headgate.verifier.remedy;

import headgate.verifier.check.Case;
import headgate.verifier.check.Edit;
import java.util.List;
import java.util.Map;

/**
 * Latch the heads of some arms in a stance, and in the steps to it, so that what moves in them is held stowed.
 *
 * @param stance the stance's name
 * @param arms the arms' ids; at least one
 */
public record LatchHeads(String stance, List<String> arms) implements Edit {

    /** Copies the list. */
    public LatchHeads {
        arms = List.copyOf(arms);
    }

    @Override
    public Case apply(Case before) {
        return StancePoses.changed(before, stance, p -> arms.contains(p.arm()) ? p.held() : p);
    }

    @Override
    public String text() {
        return "latch the heads of " + (arms.size() == 1 ? "arm " : "arms ") + String.join(", ", arms)
                + " for stance \"" + stance + "\"";
    }

    @Override
    public String kind() {
        return "latch-heads";
    }

    @Override
    public Map<String, Object> figures() {
        return Map.of("stance", stance, "arms", arms);
    }
}
