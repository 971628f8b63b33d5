package headgate.verifier.remedy;

import headgate.api.sheet.Drop;
import headgate.api.sheet.HeadSheet;
import headgate.api.unit.Micrometres;
import headgate.verifier.check.Case;
import headgate.verifier.check.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.BiFunction;

/**
 * A change of where a head lets something fall.
 *
 * @param headId the head
 * @param number which of its drops, from 0 in the order of the sheet
 * @param side a side of the head, head frame
 * @param amount by how much, micrometres, more than 0
 */
public record DropChange(String headId, int number, Side side, long amount) {

    static Case applied(Case before, List<DropChange> changes, BiFunction<DropChange, Drop, List<Drop>> change) {
        Case changed = before;
        for (String head : changes.stream().map(DropChange::headId).distinct().toList()) {
            List<DropChange> own =
                    changes.stream().filter(c -> c.headId().equals(head)).toList();
            changed = changed.withHead(head, h -> h.withSheet(sheet -> changed(sheet, own, change)));
        }
        return changed;
    }

    private static HeadSheet changed(
            HeadSheet sheet, List<DropChange> changes, BiFunction<DropChange, Drop, List<Drop>> change) {
        List<Drop> before = sheet.drops().orElse(List.of());
        List<Drop> drops = new ArrayList<>();
        for (int i = 0; i < before.size(); i++) {
            List<Drop> now = List.of(before.get(i));
            for (DropChange c : changes) {
                if (c.number() == i) {
                    now = now.stream().flatMap(d -> change.apply(c, d).stream()).toList();
                }
            }
            drops.addAll(now);
        }
        return sheet.toBuilder().drops(drops).build();
    }

    String length() {
        return Dimension.LENGTH.text(Micrometres.toMetres(amount));
    }

    String drop() {
        return "drop " + (number + 1) + " of head " + headId;
    }

    static SortedMap<String, Object> figures(List<DropChange> changes) {
        SortedMap<String, Object> figures = new TreeMap<>();
        changes.forEach(c -> figures.put(
                c.headId() + "." + (c.number() + 1) + "." + c.side().axis(), Micrometres.toMetres(c.amount())));
        return figures;
    }
}
