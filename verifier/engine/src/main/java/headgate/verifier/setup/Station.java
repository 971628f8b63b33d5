package headgate.verifier.setup;

import headgate.api.shape.Interval;
import headgate.api.shape.Point;
import headgate.api.sheet.HeadSheet;
import headgate.api.unit.Micrometres;
import headgate.runtime.carriage.Arm;
import headgate.verifier.check.HeadUnderTest;

/**
 * An arm at work on a lane, with its head.
 *
 * @param lane the lane that it serves
 * @param arm the arm
 * @param head the head
 * @param sheet the head's sheet
 * @param turned true if the head is turned by 180 degrees
 * @param mount where the mount is set, seen from above, carriage frame
 * @param height the heights at which it can work
 */
public record Station(
        Lane lane, Arm arm, HeadUnderTest head, HeadSheet sheet, boolean turned, Point mount, WorkHeight height) {

    /**
     * The mount heights that the arm takes between work and lifted: from the least height at which it works up to the
     * top of its lift, overshoot included. If no height works, the whole lift.
     *
     * @return the heights over level ground, micrometres
     */
    public Interval heights() {
        long least = height.allowed().map(Interval::least).orElse(arm.lift().least());
        long overshoot = (long) Math.ceil(arm.liftMotion().overshoot() * Micrometres.PER_METRE);
        return new Interval(least, arm.lift().most() + overshoot);
    }

    /**
     * The mount heights at which the arm works. If no height works, the bottom of the lift.
     *
     * @return the heights over level ground, micrometres
     */
    public Interval workHeights() {
        return height.allowed().orElse(Interval.at(arm.lift().least()));
    }

    /** {@return how reports name it: the arm and its lane} */
    public String label() {
        return "arm " + arm.id() + " on lane " + lane.number();
    }
}
