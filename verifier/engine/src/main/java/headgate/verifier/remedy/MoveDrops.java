package headgate.verifier.remedy;

import headgate.api.shape.Point;
import headgate.api.sheet.Drop;
import headgate.verifier.check.Case;
import headgate.verifier.check.Edit;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Let heads drop what they drop further to one side.
 *
 * @param changes which drops, to which side and how far; at least one
 */
public record MoveDrops(List<DropChange> changes) implements Edit {

    /** Copies the list. */
    public MoveDrops {
        changes = List.copyOf(changes);
    }

    @Override
    public Case apply(Case before) {
        return DropChange.applied(before, changes, (c, drop) -> {
            Point unit = c.side().unit();
            Point by = new Point(unit.x() * c.amount(), unit.y() * c.amount());
            return List.of(Drop.over(drop.outline().shifted(by), drop.height()));
        });
    }

    @Override
    public String text() {
        return "let "
                + changes.stream()
                        .map(c -> c.drop() + " fall " + c.length() + " further to "
                                + c.side().axis())
                        .collect(Collectors.joining(", "));
    }

    @Override
    public String kind() {
        return "move-drops";
    }

    @Override
    public Map<String, Object> figures() {
        return DropChange.figures(changes);
    }
}
