package headgate.verifier.setup;

import headgate.api.shape.Interval;
import headgate.runtime.cropplan.CropPlan;
import headgate.verifier.check.Case;
import headgate.verifier.geometry.Rounding;
import java.util.ArrayList;
import java.util.List;

/**
 * The ground between rows that no crop plant takes up: what hangs there need not clear the canopy. Rows go on beside those
 * of the pass.
 *
 * @param rows the rows
 * @param kept how far to either side of a row nothing is free: half of what a plant is wide, the policy's gap to the canopy,
 *     and how far an arm may be from its set-point; m. How far the row may be off comes to that
 */
public record FreeStrips(CropPlan.Rows rows, double kept) {

    /**
     * The free strips as one arm can use them.
     *
     * @param subject the case
     * @param allowance how far the arm may be from where it is set
     * @return the strips
     */
    public static FreeStrips of(Case subject, ArmAllowance allowance) {
        CropPlan plan = subject.plan().value();
        double plug = plan.plugs().map(CropPlan.Plugs::diameter).orElse(0.0);
        double half = Math.max(
                Math.max(plan.crop().canopyWidth(), plug) / 2, plan.crop().protectedRadius());
        double gap = subject.policy().value().canopyGap().value();
        return new FreeStrips(plan.rows(), half + gap + allowance.total());
    }

    /**
     * Says whether something lies wholly in one free strip.
     *
     * @param y its extent across travel, micrometres, carriage frame
     * @return true if it does
     */
    public boolean hold(Interval y) {
        RowLine right = RowLine.of(rows, RowLine.rightOf(rows, y.least()));
        RowLine left = RowLine.of(rows, right.number() + 1);
        return y.least() >= right.y() + kept(right) && y.most() <= left.y() - kept(left);
    }

    /**
     * The shifts that bring something into a free strip.
     *
     * @param y its extent across travel before it is shifted, micrometres
     * @param within the shifts that are asked for
     * @return those of them with which it lies wholly in one strip, from the right to the left; the ends belong to them
     */
    List<Interval> shifts(Interval y, Interval within) {
        List<Interval> shifts = new ArrayList<>();
        RowLine right = RowLine.of(rows, RowLine.rightOf(rows, y.least() + within.least()));
        while (right.y() + kept(right) - y.least() <= within.most()) {
            RowLine left = RowLine.of(rows, right.number() + 1);
            long least = Math.max(right.y() + kept(right) - y.least(), within.least());
            long most = Math.min(left.y() - kept(left) - y.most(), within.most());
            if (least <= most) {
                shifts.add(new Interval(least, most));
            }
            right = left;
        }
        return shifts;
    }

    private long kept(RowLine row) {
        return Rounding.up(kept + row.mayBeOff());
    }
}
