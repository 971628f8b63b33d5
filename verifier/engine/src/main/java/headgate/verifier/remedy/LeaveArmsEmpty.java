package headgate.verifier.remedy;

import headgate.verifier.check.Case;
import headgate.verifier.check.Edit;
import java.util.List;
import java.util.Map;

/**
 * Take the heads off some arms.
 *
 * @param arms the arms' ids, in the order in which they are named; at least one
 */
public record LeaveArmsEmpty(List<String> arms) implements Edit {

    /** Copies the list. */
    public LeaveArmsEmpty {
        arms = List.copyOf(arms);
    }

    @Override
    public Case apply(Case before) {
        return before.withMountings(before.mountings().stream()
                .filter(m -> !arms.contains(m.armId()))
                .toList());
    }

    @Override
    public String text() {
        return "leave " + (arms.size() == 1 ? "arm " : "arms ") + String.join(", ", arms) + " empty";
    }

    @Override
    public String kind() {
        return "leave-arms-empty";
    }

    @Override
    public Map<String, Object> figures() {
        return Map.of("arms", arms);
    }
}
