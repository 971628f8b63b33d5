package headgate.verifier.remedy;

import headgate.api.sheet.Figure;
import headgate.api.sheet.MassPoint;
import headgate.verifier.check.Case;
import headgate.verifier.check.Dimension;
import headgate.verifier.check.Edit;
import java.math.RoundingMode;
import java.util.Map;

/**
 * Take mass off a head, so that in its heaviest state it weighs no more than the arm carries.
 *
 * @param headId the head
 * @param mass the largest mass in any state, kg; shown and applied rounded down to a hundredth of a kilogram
 * @param excess how much must come off the heaviest state, kg
 */
public record LightenHead(String headId, double mass, double excess) implements Edit {

    /** Rounds down, so that whoever builds to the mass that is shown is safe. */
    public LightenHead {
        mass = Dimension.MASS.rounded(mass, RoundingMode.FLOOR);
    }

    @Override
    public Case apply(Case before) {
        return before.withHead(
                headId,
                head -> head.withSheet(sheet -> sheet.toBuilder()
                        .mass(capped(sheet.empty()), capped(sheet.full()), capped(sheet.soiled()))
                        .build()));
    }

    private MassPoint capped(MassPoint point) {
        Figure now = point.mass();
        return MassPoint.of(Figure.of(Math.min(now.value(), mass), now.basis()), point.centre());
    }

    @Override
    public String text() {
        return "take " + Dimension.MASS.text(excess, RoundingMode.CEILING) + " off head " + headId
                + ", so that it never weighs more than " + Dimension.MASS.text(mass);
    }

    @Override
    public String kind() {
        return "lighten-head";
    }

    @Override
    public Map<String, Object> figures() {
        return Map.of("excess", excess, "headId", headId, "mass", mass);
    }
}
