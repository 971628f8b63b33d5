package headgate.verifier.setup;

import headgate.api.shape.Interval;
import headgate.api.unit.Micrometres;
import headgate.runtime.carriage.Carriage;
import headgate.runtime.cropplan.CropPlan;
import headgate.verifier.check.Case;
import headgate.verifier.geometry.Rounding;
import java.util.Comparator;
import java.util.List;
import java.util.stream.LongStream;

/**
 * Where a wheel runs between two rows. To either side it needs half its tyre, what rows wander, what it runs aside of the
 * steered point on a curve, the policy's gap and half the canopy: with room for all that on both sides, tyre width + 2
 * (wander + L² / 2R + gap) is at most spacing - canopy width. Beyond the outermost row of a pass, and wherever a pass
 * spans several of the planter's, the next row may stand nearer by the guess-row error.
 *
 * @param wheel the wheel
 * @param y where the middle of its tyre is set, of all that it can be set to the one with the most room, micrometres
 * @param right y of the row to its right, micrometres
 * @param left y of the row to its left, micrometres
 * @param offTracking how far it runs aside of the steered point, m: L² / 2R
 * @param wander how far a row wanders to either side, m
 * @param gap the least gap between tyre and canopy, m
 * @param canopy width of the canopy, m
 * @param guessRight how much nearer the row to its right may be, m
 * @param guessLeft how much nearer the row to its left may be, m
 */
public record WheelRun(
        Carriage.Wheel wheel,
        long y,
        long right,
        long left,
        double offTracking,
        double wander,
        double gap,
        double canopy,
        double guessRight,
        double guessLeft) {

    /**
     * Finds where each wheel of a case runs.
     *
     * @param subject the case
     * @return the wheels, in the order of the carriage's file
     */
    public static List<WheelRun> of(Case subject) {
        return subject.carriage().value().wheels().stream()
                .map(w -> best(subject, w, w.y()))
                .toList();
    }

    /**
     * Finds where a wheel would run if it could be set anywhere near.
     *
     * @param subject the case
     * @return the same wheel between the rows where it is now, at the place with the most room
     */
    public WheelRun free(Case subject) {
        return best(subject, wheel, new Interval(y - (left - right), y + (left - right)));
    }

    private static WheelRun best(Case subject, Carriage.Wheel wheel, Interval set) {
        CropPlan.Rows rows = subject.plan().value().rows();
        long first = RowLine.rightOf(rows, set.least()) - 1;
        long last = RowLine.rightOf(rows, set.most()) + 1;
        // Of two places with as much room the outer one, so that the two sides of a carriage are set alike.
        return LongStream.rangeClosed(first, last)
                .mapToObj(row -> between(subject, wheel, set, row))
                .max(Comparator.comparingLong(WheelRun::margin).thenComparing(run -> Math.abs(run.y())))
                .orElseThrow();
    }

    /** The wheel between row number {@code row}, from 0 at the right-hand side of the pass, and the next. */
    private static WheelRun between(Case subject, Carriage.Wheel wheel, Interval set, long row) {
        CropPlan plan = subject.plan().value();
        CropPlan.Rows rows = plan.rows();
        double offTracking = rows.radius()
                .map(r -> wheel.fromSteeredPoint() * wheel.fromSteeredPoint() / (2 * r))
                .orElse(0.0);
        boolean spans = Lane.spansPlanterPasses(rows);
        double guessRight = spans || row < 0 ? rows.guessRowError() : 0;
        double guessLeft = spans || row + 1 >= rows.perPass() ? rows.guessRowError() : 0;
        long right = RowLine.at(rows, row);
        long left = RowLine.at(rows, row + 1);
        long middle = Math.floorDiv(right + left + Micrometres.nearest(guessRight - guessLeft), 2L);
        long y = Math.max(set.least(), Math.min(set.most(), middle));
        return new WheelRun(
                wheel,
                y,
                right,
                left,
                offTracking,
                rows.wander(),
                subject.policy().value().wheelGap().value(),
                plan.crop().canopyWidth(),
                guessRight,
                guessLeft);
    }

    /** {@return tyre width + 2 (wander + L² / 2R + gap), m} */
    public double required() {
        return wheel.tyreWidth() + 2 * (wander + offTracking + gap);
    }

    /** {@return twice the way from the wheel's middle to the nearer row, less the canopy's width, m} */
    public double room() {
        double toRight = Micrometres.toMetres(y - right) - guessRight;
        double toLeft = Micrometres.toMetres(left - y) - guessLeft;
        return 2 * Math.min(toRight, toLeft) - canopy;
    }

    /** {@return the room beyond what is required, whole micrometres rounded down; less than 0 if it lacks some} */
    public long margin() {
        return Rounding.down(room() - required());
    }
}
