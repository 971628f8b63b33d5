package headgate.verifier.setup;

import headgate.api.shape.Interval;
import headgate.api.sheet.HeadSheet;
import headgate.api.unit.Micrometres;
import headgate.runtime.carriage.Arm;
import headgate.runtime.carriage.Carriage;
import headgate.runtime.cropplan.CropPlan;
import java.util.Optional;

/**
 * The heights over level ground at which a mount can be set for work: the tool point must reach the bottom of a hollow
 * (h + G + d <= -z_min of the reach) and still be able to work on a crest (h - G + d >= -z_max), within the lift.
 *
 * @param groundMotion G, how far the ground under the arm may be above or below its mean, micrometres, rounded up
 * @param depth d, how far below the ground the tool point goes, micrometres
 * @param byReach what the reach allows, lift or no lift; empty if even the reach allows none
 * @param allowed what reach and lift allow together; empty if nothing
 */
public record WorkHeight(long groundMotion, long depth, Optional<Interval> byReach, Optional<Interval> allowed) {

    /**
     * Works out the heights for one arm.
     *
     * @param carriage the carriage
     * @param arm the arm
     * @param x where its mount is along travel, micrometres, carriage frame
     * @param y where its mount is set across travel, micrometres, carriage frame
     * @param sheet the head's sheet
     * @param plan the crop plan
     * @return the heights
     */
    public static WorkHeight of(Carriage carriage, Arm arm, long x, long y, HeadSheet sheet, CropPlan plan) {
        double ground = plan.soil().relief()
                + Math.abs(Micrometres.toMetres(y))
                        * StrictMath.tan(carriage.ground().roll())
                + Math.abs(Micrometres.toMetres(x))
                        * StrictMath.tan(carriage.ground().pitch())
                + carriage.ground().wheelSink();
        long g = (long) Math.ceil(ground * Micrometres.PER_METRE);
        long d = (long) Math.ceil(depth(sheet, plan) * Micrometres.PER_METRE);
        long most = -sheet.reach().height().least() - g - d;
        long least = -sheet.reach().height().most() + g - d;
        Optional<Interval> byReach = least <= most ? Optional.of(new Interval(least, most)) : Optional.empty();
        long low = Math.max(least, arm.lift().least());
        long high = Math.min(most, arm.lift().most());
        return new WorkHeight(g, d, byReach, low <= high ? Optional.of(new Interval(low, high)) : Optional.empty());
    }

    /** A plan that sets plugs says how deep; any other operation goes as deep as the head's sheet says. */
    private static double depth(HeadSheet sheet, CropPlan plan) {
        return plan.plugs()
                .map(CropPlan.Plugs::depth)
                .orElse(sheet.workRange().depth().most());
    }
}
