package headgate.verifier.remedy;

import headgate.verifier.check.Case;
import headgate.verifier.check.Edit;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Give some arms lifts that go higher, so that what is parked or waits there is out of the way.
 *
 * @param tops the new top of each arm's lift by the arm's id, micrometres over level ground; at least one
 */
public record RaiseLifts(SortedMap<String, Long> tops) implements Edit {

    /** Copies the map. */
    public RaiseLifts {
        tops = new TreeMap<>(tops);
    }

    @Override
    public Case apply(Case before) {
        return LiftTops.applied(before, tops);
    }

    @Override
    public String text() {
        return "lift " + LiftTops.text(tops, " up to ");
    }

    @Override
    public String kind() {
        return "raise-lifts";
    }

    @Override
    public Map<String, Object> figures() {
        return LiftTops.figures(tops);
    }
}
