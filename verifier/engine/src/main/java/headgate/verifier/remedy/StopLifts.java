package headgate.verifier.remedy;

import headgate.api.shape.Interval;
import headgate.api.unit.Micrometres;
import headgate.verifier.check.Case;
import headgate.verifier.check.Dimension;
import headgate.verifier.check.Edit;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

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
        return before.withCarriage(c -> c.withArms(c.arms().stream()
                .map(a -> {
                    Long top = tops.get(a.id());
                    return top == null
                            ? a
                            : a.withLift(new Interval(Math.min(a.lift().least(), top), top));
                })
                .toList()));
    }

    @Override
    public String text() {
        return "stop the lift of "
                + tops.entrySet().stream()
                        .map(e -> "arm " + e.getKey() + " at "
                                + Dimension.LENGTH.text(Micrometres.toMetres(e.getValue())))
                        .collect(Collectors.joining(", "));
    }

    @Override
    public String kind() {
        return "stop-lifts";
    }

    @Override
    public Map<String, Object> figures() {
        SortedMap<String, Object> figures = new TreeMap<>();
        tops.forEach((arm, top) -> figures.put(arm, Micrometres.toMetres(top)));
        return figures;
    }
}
