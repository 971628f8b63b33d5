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
        return before.withCarriage(c -> c.withArms(c.arms().stream()
                .map(a -> {
                    Long top = tops.get(a.id());
                    return top == null ? a : a.withLift(new Interval(a.lift().least(), top));
                })
                .toList()));
    }

    @Override
    public String text() {
        return "lift "
                + tops.entrySet().stream()
                        .map(e -> "arm " + e.getKey() + " up to "
                                + Dimension.LENGTH.text(Micrometres.toMetres(e.getValue())))
                        .collect(Collectors.joining(", "));
    }

    @Override
    public String kind() {
        return "raise-lifts";
    }

    @Override
    public Map<String, Object> figures() {
        SortedMap<String, Object> figures = new TreeMap<>();
        tops.forEach((arm, top) -> figures.put(arm, Micrometres.toMetres(top)));
        return figures;
    }
}
