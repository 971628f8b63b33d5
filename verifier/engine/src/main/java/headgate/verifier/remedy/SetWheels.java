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
 * Let some wheels be set somewhere else.
 *
 * @param places y of the middle of each wheel's tyre by the wheel's name, micrometres; at least one
 */
public record SetWheels(SortedMap<String, Long> places) implements Edit {

    /** Copies the map. */
    public SetWheels {
        places = new TreeMap<>(places);
    }

    @Override
    public Case apply(Case before) {
        return before.withCarriage(c -> c.withWheels(c.wheels().stream()
                .map(w -> {
                    Long y = places.get(w.name());
                    return y == null ? w : w.withY(w.y().hull(Interval.at(y)));
                })
                .toList()));
    }

    @Override
    public String text() {
        return "set "
                + places.entrySet().stream()
                        .map(e -> "wheel " + e.getKey() + " to y = "
                                + Dimension.LENGTH.text(Micrometres.toMetres(e.getValue())))
                        .collect(Collectors.joining(", "));
    }

    @Override
    public String kind() {
        return "set-wheels";
    }

    @Override
    public Map<String, Object> figures() {
        SortedMap<String, Object> figures = new TreeMap<>();
        places.forEach((name, y) -> figures.put(name, Micrometres.toMetres(y)));
        return figures;
    }
}
