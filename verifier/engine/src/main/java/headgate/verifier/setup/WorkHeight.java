package headgate.verifier.setup;

import headgate.api.shape.Interval;
import headgate.api.shape.Point;
import headgate.api.sheet.HeadSheet;
import headgate.api.unit.Micrometres;
import headgate.api.vocabulary.PostureName;
import headgate.runtime.carriage.Arm;
import headgate.runtime.carriage.Carriage;
import headgate.runtime.cropplan.CropPlan;
import headgate.verifier.check.Case;
import headgate.verifier.check.Comparison;
import headgate.verifier.check.Dimension;
import headgate.verifier.geometry.Box;
import headgate.verifier.geometry.Occupied;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * The heights over level ground at which a mount can be set for work. The tool point must reach the bottom of a hollow (h +
 * G + d <= -z_min of the reach) and still be able to work on a crest (h - G + d >= -z_max); and what the head holds ready
 * must clear the plants on a crest (h - G + z_low >= plant + gap). What lies in a free strip between rows need only stay
 * over the ground on a crest (h - G + z_strip >= 0). All that within the lift.
 *
 * @param groundMotion G, how far the ground under the arm may be above or below its mean, micrometres, rounded up
 * @param depth d, how far below the ground the tool point goes, micrometres, rounded up
 * @param lowest z_low, the lowest material of the ready posture that stands over plants, micrometres, head frame; if none
 *     does, the lowest of all
 * @param lowestInStrip z_strip, the lowest material of the ready posture that lies in a free strip between rows,
 *     micrometres, head frame; empty if none does
 * @param plants height of the tallest plant that stands under the head, with the gap over it, micrometres, rounded up
 * @param least the least height that serves, lift or no lift, micrometres
 * @param most the greatest height that serves, lift or no lift, micrometres; less than the least if none does
 * @param lift what the lift gives
 */
public record WorkHeight(
        long groundMotion,
        long depth,
        long lowest,
        Optional<Long> lowestInStrip,
        long plants,
        long least,
        long most,
        Interval lift) {

    /**
     * Works out the heights for one arm, wherever across travel its head is: all of it stands over plants.
     *
     * @param subject the case
     * @param arm the arm
     * @param mount where its mount is set, seen from above, carriage frame
     * @param sheet the head's sheet
     * @return the heights
     */
    public static WorkHeight of(Case subject, Arm arm, Point mount, HeadSheet sheet) {
        return of(subject, arm, mount, sheet, box -> false);
    }

    /**
     * Works out the heights for one arm at its set-point: what of its head lies in a free strip between rows may stand lower
     * than the plants.
     *
     * @param subject the case
     * @param arm the arm
     * @param mount where its mount is set, seen from above, carriage frame
     * @param sheet the head's sheet
     * @param turned true if the head is turned by 180 degrees
     * @return the heights
     */
    public static WorkHeight at(Case subject, Arm arm, Point mount, HeadSheet sheet, boolean turned) {
        FreeStrips strips = FreeStrips.of(subject, ArmAllowance.of(arm, Optional.of(sheet), coverageFactor(subject)));
        return of(subject, arm, mount, sheet, box -> {
            Interval y = turned ? new Interval(-box.y().most(), -box.y().least()) : box.y();
            return strips.hold(y.shifted(mount.y()));
        });
    }

    /**
     * The most heights that any place across travel can give: as if all of the head lay in free strips.
     *
     * @param subject the case
     * @param arm the arm
     * @param mount where its mount is set, seen from above, carriage frame
     * @param sheet the head's sheet
     * @return the heights
     */
    static WorkHeight betweenRows(Case subject, Arm arm, Point mount, HeadSheet sheet) {
        return of(subject, arm, mount, sheet, box -> true);
    }

    private static double coverageFactor(Case subject) {
        return subject.policy().value().coverageFactor().value();
    }

    private static WorkHeight of(Case subject, Arm arm, Point mount, HeadSheet sheet, Predicate<Box> inStrip) {
        CropPlan plan = subject.plan().value();
        long g = groundMotion(subject, arm, mount);
        long d = (long) Math.ceil(depth(sheet, plan) * Micrometres.PER_METRE);
        long plants = plants(subject);
        List<Box> ready =
                Occupied.of(sheet.posture(PostureName.READY).orElseThrow()).boxes();
        Optional<Long> overPlants = lowest(ready, inStrip.negate());
        Optional<Long> strip = lowest(ready, inStrip);
        Interval reach = sheet.reach().height();
        long least = -reach.most() + g - d;
        if (overPlants.isPresent()) {
            least = Math.max(least, plants + g - overPlants.get());
        }
        if (strip.isPresent()) {
            least = Math.max(least, g - strip.get());
        }
        return new WorkHeight(
                g,
                d,
                overPlants.or(() -> strip).orElseThrow(),
                strip,
                plants,
                least,
                -reach.least() - g - d,
                arm.lift());
    }

    private static Optional<Long> lowest(List<Box> boxes, Predicate<Box> counts) {
        return boxes.stream().filter(counts).map(b -> b.z().least()).min(Comparator.naturalOrder());
    }

    /**
     * How far the ground under an arm may be above or below its mean.
     *
     * @param subject the case
     * @param arm the arm
     * @param mount where its mount is set, seen from above, carriage frame
     * @return G, micrometres, rounded up
     */
    public static long groundMotion(Case subject, Arm arm, Point mount) {
        Carriage.GroundMotion motion = subject.carriage().value().ground();
        double ground = subject.plan().value().soil().relief()
                + Math.abs(mount.yMetres()) * StrictMath.tan(motion.roll())
                + farthestAlong(arm, mount) * StrictMath.tan(motion.pitch())
                + motion.wheelSink();
        return (long) Math.ceil(ground * Micrometres.PER_METRE);
    }

    /**
     * The height of the tallest plant with the gap that must stay over it.
     *
     * @param subject the case
     * @return micrometres, rounded up
     */
    public static long plants(Case subject) {
        double gap = subject.policy().value().canopyGap().value();
        return (long) Math.ceil((tallest(subject.plan().value()) + gap) * Micrometres.PER_METRE);
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

    /**
     * How wide the choice of heights must be: the guard must be able to hold the mount within it.
     *
     * @param arm the arm
     * @return twice the lift's tolerance, m
     */
    public static double neededWidth(Arm arm) {
        return 2 * arm.liftMotion().overshoot();
    }

    /** Whether there are heights enough for an arm. */
    boolean serves(Arm arm) {
        return Comparison.atLeast(width(), neededWidth(arm), Dimension.LENGTH).holds();
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
