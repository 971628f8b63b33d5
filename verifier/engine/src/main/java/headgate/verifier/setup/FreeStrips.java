package headgate.verifier.setup;

import headgate.api.shape.Interval;
import headgate.api.unit.Micrometres;
import headgate.runtime.cropplan.CropPlan;
import headgate.verifier.check.Case;
import headgate.verifier.geometry.Rounding;

/**
 * The ground between rows that no crop plant takes up: what hangs there need not clear the canopy. Rows go on beside those
 * of the pass.
 *
 * @param rows the rows
 * @param kept how far to either side of a row's line nothing is free: half of what a plant is wide, how far the row may
 *     wander, the policy's gap to the canopy, and how far an arm may be from its set-point; micrometres, rounded up
 * @param guess what comes to that beside a row whose place is a guess, micrometres, rounded up
 */
public record FreeStrips(CropPlan.Rows rows, long kept, long guess) {

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
        return new FreeStrips(
                plan.rows(),
                Rounding.up(half + plan.rows().wander() + gap + allowance.total()),
                Rounding.up(plan.rows().guessRowError()));
    }

    /**
     * Says whether something lies wholly in one free strip.
     *
     * @param y its extent across travel, micrometres, carriage frame
     * @return true if it does
     */
    public boolean hold(Interval y) {
        long spacing = Micrometres.nearest(rows.spacing());
        long right = Math.floorDiv(2 * y.least() + (rows.perPass() - 1) * spacing, 2 * spacing);
        return y.least() >= line(right) + kept(right) && y.most() <= line(right + 1) - kept(right + 1);
    }

    private long line(long row) {
        return Math.round((2 * row - (rows.perPass() - 1)) * rows.spacing() * Micrometres.PER_METRE / 2.0);
    }

    private long kept(long row) {
        boolean guessed = Lane.spansPlanterPasses(rows) || row < 0 || row >= rows.perPass();
        return kept + (guessed ? guess : 0);
    }
}
