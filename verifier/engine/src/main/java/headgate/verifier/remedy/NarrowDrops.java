package headgate.verifier.remedy;

import headgate.api.shape.Interval;
import headgate.api.shape.Prism;
import headgate.api.sheet.Drop;
import headgate.verifier.check.Case;
import headgate.verifier.check.Edit;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Let what heads drop keep to less ground: what fell further out on one side than now less the amount falls there no more.
 *
 * @param changes which drops, on which side and by how much; at least one
 */
public record NarrowDrops(List<DropChange> changes) implements Edit {

    /** Copies the list. */
    public NarrowDrops {
        changes = List.copyOf(changes);
    }

    @Override
    public Case apply(Case before) {
        return DropChange.applied(before, changes, (c, drop) -> {
            long keep = c.side().extent(drop.outline().vertices()) - c.amount();
            Prism whole = Prism.of(drop.outline(), new Interval(0, 1));
            return c.side().keep(whole, keep).stream()
                    .map(p -> Drop.over(p.outline(), drop.height()))
                    .toList();
        });
    }

    @Override
    public String text() {
        return "let "
                + changes.stream()
                        .map(c -> c.drop() + " keep " + c.length() + " more off at "
                                + c.side().axis())
                        .collect(Collectors.joining(", "));
    }

    @Override
    public String kind() {
        return "narrow-drops";
    }

    @Override
    public Map<String, Object> figures() {
        return DropChange.figures(changes);
    }
}
