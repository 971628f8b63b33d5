package headgate.verifier.remedy;

import headgate.verifier.check.Case;
import headgate.verifier.check.Dimension;
import headgate.verifier.check.Edit;
import java.math.RoundingMode;
import java.util.Map;

/**
 * Grow the crop at another row spacing, for instance so that neighbouring arms on one beam stand further apart.
 *
 * @param spacing distance from row to row, m; shown and applied rounded up to a tenth of a millimetre
 * @param pitch the distance between neighbouring mounts on one beam that this gives, m; 0 if it is not about that
 */
public record SetRowSpacing(double spacing, double pitch) implements Edit {

    /** Rounds up, so that whoever sets the spacing that is shown is safe. */
    public SetRowSpacing {
        spacing = Dimension.LENGTH.rounded(spacing, RoundingMode.CEILING);
    }

    /**
     * A spacing that the arms can be set to.
     *
     * @param spacing distance from row to row, m
     * @return the change
     */
    public static SetRowSpacing to(double spacing) {
        return new SetRowSpacing(spacing, 0);
    }

    @Override
    public Case apply(Case before) {
        return before.withPlan(plan -> plan.withRows(plan.rows().withSpacing(spacing)));
    }

    @Override
    public String text() {
        if (pitch == 0) {
            return "work rows that are " + Dimension.LENGTH.text(spacing, RoundingMode.CEILING) + " apart";
        }
        return "set rows at least " + Dimension.LENGTH.text(spacing, RoundingMode.CEILING)
                + " apart, so that neighbouring arms on a beam stand at least "
                + Dimension.LENGTH.text(pitch, RoundingMode.CEILING) + " apart";
    }

    @Override
    public String kind() {
        return "set-row-spacing";
    }

    @Override
    public Map<String, Object> figures() {
        return pitch == 0 ? Map.of("spacing", spacing) : Map.of("spacing", spacing, "pitch", pitch);
    }
}
