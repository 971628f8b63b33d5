package headgate.verifier.remedy;

import headgate.api.shape.Interval;
import headgate.api.unit.Micrometres;
import headgate.verifier.check.Case;
import headgate.verifier.check.Dimension;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** New tops of lifts, by the arm's id, micrometres over level ground. */
final class LiftTops {

    private LiftTops() {}

    /** A lift whose bottom would lie over its new top has no travel left. */
    static Case applied(Case before, SortedMap<String, Long> tops) {
        return before.withCarriage(c -> c.withArms(c.arms().stream()
                .map(a -> {
                    Long top = tops.get(a.id());
                    return top == null
                            ? a
                            : a.withLift(new Interval(Math.min(a.lift().least(), top), top));
                })
                .toList()));
    }

    /** Every arm with its top, such as "arm a1 up to 1 m". */
    static String text(SortedMap<String, Long> tops, String between) {
        return tops.entrySet().stream()
                .map(e -> "arm " + e.getKey() + between + Dimension.LENGTH.text(Micrometres.toMetres(e.getValue())))
                .collect(Collectors.joining(", "));
    }

    static Map<String, Object> figures(SortedMap<String, Long> tops) {
        SortedMap<String, Object> figures = new TreeMap<>();
        tops.forEach((arm, top) -> figures.put(arm, Micrometres.toMetres(top)));
        return figures;
    }
}
