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
 * Give some arms longer side-shift rails.
 *
 * @param rails the new rail of each arm by the arm's id: y of the mount, micrometres; at least one
 */
public record LengthenRails(SortedMap<String, Interval> rails) implements Edit {

    /** Copies the map. */
    public LengthenRails {
        rails = new TreeMap<>(rails);
    }

    @Override
    public Case apply(Case before) {
        return before.withCarriage(c -> c.withArms(c.arms().stream()
                .map(a -> {
                    Interval rail = rails.get(a.id());
                    return rail == null ? a : a.withShift(rail);
                })
                .toList()));
    }

    @Override
    public String text() {
        return "let "
                + rails.entrySet().stream()
                        .map(e -> "arm " + e.getKey() + " shift from "
                                + text(e.getValue().least()) + " to "
                                + text(e.getValue().most()))
                        .collect(Collectors.joining(", "));
    }

    private static String text(long micrometres) {
        return Dimension.LENGTH.text(Micrometres.toMetres(micrometres));
    }

    @Override
    public String kind() {
        return "lengthen-rails";
    }

    @Override
    public Map<String, Object> figures() {
        SortedMap<String, Object> figures = new TreeMap<>();
        rails.forEach((arm, rail) -> {
            figures.put(arm + ".least", Micrometres.toMetres(rail.least()));
            figures.put(arm + ".most", Micrometres.toMetres(rail.most()));
        });
        return figures;
    }
}
