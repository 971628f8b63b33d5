package headgate.verifier.remedy;

import headgate.verifier.check.Case;
import headgate.verifier.check.Edit;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Let the lifts of some arms stop lower, so that what they carry stays away from what is above it.
 *
 * @param tops the new top of each arm's lift by the arm's id, micrometres over level ground; at least one
 */
public record StopLifts(SortedMap<String, Long> tops) implements Edit {

    /** Copies the map. */
    public StopLifts {
        tops = new TreeMap<>(tops);
    }

    @Override
    public Case apply(Case before) {
        return LiftTops.applied(before, tops);
    }

    @Override
    public String text() {
        return "stop the lift of " + LiftTops.text(tops, " at ");
    }

    @Override
    public String kind() {
        return "stop-lifts";
    }

    @Override
    public Map<String, Object> figures() {
        return LiftTops.figures(tops);
    }
}
