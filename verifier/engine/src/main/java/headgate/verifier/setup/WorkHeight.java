package headgate.verifier.setup;

import headgate.api.shape.Interval;
import headgate.api.shape.Point;
import headgate.api.sheet.HeadSheet;
import headgate.api.sheet.Posture;
import headgate.api.unit.Micrometres;
import headgate.api.vocabulary.PostureName;
import headgate.runtime.carriage.Arm;
import headgate.runtime.carriage.Carriage;
import headgate.runtime.cropplan.CropPlan;
import headgate.verifier.check.Case;
import headgate.verifier.geometry.Occupied;
import java.util.Optional;

/**
 * The heights over level ground at which a mount can be set for work. The tool point must reach the bottom of a hollow (h +
 * G + d <= -z_min of the reach) and still be able to work on a crest (h - G + d >= -z_max); and what the head holds ready
 * must clear the plants on a crest (h - G + z_low >= plant + gap). All that within the lift.
 *
 * @param groundMotion G, how far the ground under the arm may be above or below its mean, micrometres, rounded up
 * @param depth d, how far below the ground the tool point goes, micrometres, rounded up
 * @param lowest z_low, the lowest material of the ready posture, micrometres, head frame
 * @param plants height of the tallest plant that stands under the head, with the gap over it, micrometres, rounded up
 * @param least the least height that serves, lift or no lift, micrometres
 * @param most the greatest height that serves, lift or no lift, micrometres; less than the least if none does
 * @param lift what the lift gives
 */
public record WorkHeight(
        long groundMotion, long depth, long lowest, long plants, long least, long most, Interval lift) {

    /**
     * Works out the heights for one arm.
     *
     * @param subject the case
     * @param arm the arm
     * @param mount where its mount is set, seen from above, carriage frame
     * @param sheet the head's sheet
     * @return the heights
     */
    public static WorkHeight of(Case subject, Arm arm, Point mount, HeadSheet sheet) {
        Carriage.GroundMotion motion = subject.carriage().value().ground();
        CropPlan plan = subject.plan().value();
        double gap = subject.policy().value().canopyGap().value();
        double ground = plan.soil().relief()
                + Math.abs(mount.yMetres()) * StrictMath.tan(motion.roll())
                + farthestAlong(arm, mount) * StrictMath.tan(motion.pitch())
                + motion.wheelSink();
        long g = (long) Math.ceil(ground * Micrometres.PER_METRE);
        long d = (long) Math.ceil(depth(sheet, plan) * Micrometres.PER_METRE);
        long plants = (long) Math.ceil((tallest(plan) + gap) * Micrometres.PER_METRE);
        Posture ready = sheet.posture(PostureName.READY).orElseThrow();
        long lowest = Occupied.of(ready).bounds().orElseThrow().z().least();
        Interval reach = sheet.reach().height();
        return new WorkHeight(
                g,
                d,
                lowest,
                plants,
                Math.max(-reach.most() + g - d, plants + g - lowest),
                -reach.least() - g - d,
                arm.lift());
    }

    /** How far along travel the mount gets from the carriage's origin, m; a lift that swings takes it with it. */
    private static double farthestAlong(Arm arm, Point mount) {
        return arm.liftPath().stream()
                .mapToDouble(p -> Math.abs(Micrometres.toMetres(mount.x() + p.forward())))
                .max()
                .orElse(Math.abs(mount.xMetres()));
    }

    /** {@return the heights that serve, within the lift; empty if there are none} */
    public Optional<Interval> allowed() {
        long low = Math.max(least, lift.least());
        long high = Math.min(most, lift.most());
        return low <= high ? Optional.of(new Interval(low, high)) : Optional.empty();
    }

    /** {@return how wide the choice of heights is, m; how much is missing, as a negative figure, if there is none} */
    public double width() {
        return Micrometres.toMetres(Math.min(most, lift.most()) - Math.max(least, lift.least()));
    }

    /** The tallest plant that stands under a head before or after it has worked, m. */
    private static double tallest(CropPlan plan) {
        double weeds = plan.weeds().map(CropPlan.Weeds::heightMost).orElse(0.0);
        double plugs = plan.plugs().map(CropPlan.Plugs::height).orElse(0.0);
        return Math.max(plan.crop().canopyHeight(), Math.max(weeds, plugs));
    }

    /** A plan that sets plugs says how deep; any other operation goes as deep as the head's sheet says. */
    private static double depth(HeadSheet sheet, CropPlan plan) {
        return plan.plugs()
                .map(CropPlan.Plugs::depth)
                .orElse(sheet.workRange().depth().most());
    }
}
