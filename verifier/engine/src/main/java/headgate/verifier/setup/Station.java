package headgate.verifier.setup;

import headgate.api.shape.Interval;
import headgate.api.shape.Point;
import headgate.api.sheet.HeadSheet;
import headgate.runtime.carriage.Arm;
import headgate.verifier.check.HeadUnderTest;
import headgate.verifier.geometry.Rounding;
import java.util.List;
import java.util.stream.Collectors;

/**
 * An arm with its head, where it is set: at work on a lane or on neighbouring lanes, or waiting lifted.
 *
 * @param lanes the lanes that it serves, from the right to the left; none if it waits lifted
 * @param arm the arm
 * @param head the head
 * @param sheet the head's sheet
 * @param turned true if the head is turned by 180 degrees
 * @param mount where the mount is set, seen from above, carriage frame
 * @param height the heights at which it can work
 * @param liftRunOut how far its lift may run past where it should stop
 */
public record Station(
        List<Lane> lanes,
        Arm arm,
        HeadUnderTest head,
        HeadSheet sheet,
        boolean turned,
        Point mount,
        WorkHeight height,
        RunOut liftRunOut) {

    /** Copies the list. */
    public Station {
        lanes = List.copyOf(lanes);
    }

    /**
     * The lane that it serves, or the first of them.
     *
     * @return the lane
     * @throws IllegalStateException if it serves none
     */
    public Lane lane() {
        if (lanes.isEmpty()) {
            throw new IllegalStateException(label() + " and serves no lane");
        }
        return lanes.get(0);
    }

    /** {@return true if it serves a lane} */
    public boolean isAtWork() {
        return !lanes.isEmpty();
    }

    /**
     * Where the middle of what it serves is, as the head sees it: of its lane, or of all of its lanes.
     *
     * @return y in the head frame, micrometres
     */
    public long laneOffset() {
        long middle = Math.floorDiv(
                lane().ground().least() + lanes.get(lanes.size() - 1).ground().most(), 2L);
        long offset = middle - mount.y();
        return turned ? -offset : offset;
    }

    /**
     * The mount heights that the arm takes between work and lifted: from the least height at which it works, less what the
     * lift may run past it, up to the top of its lift, overshoot included. If no height works, the whole lift.
     *
     * @return the heights over level ground, micrometres
     */
    public Interval heights() {
        return heights(arm, height, liftRunOut);
    }

    static Interval heights(Arm arm, WorkHeight height, RunOut liftRunOut) {
        long least = height.allowed().map(Interval::least).orElse(arm.lift().least());
        // The lift's own end stops it as well, past it by no more than its overshoot.
        long low = Math.max(
                least - Rounding.up(liftRunOut.total()), arm.lift().least() - Rounding.up(liftRunOut.overshoot()));
        return new Interval(low, top(arm));
    }

    /** The highest that a mount gets: the top of its lift, overshoot included, micrometres. */
    static long top(Arm arm) {
        return arm.lift().most() + Rounding.up(arm.liftMotion().overshoot());
    }

    /**
     * The mount heights at which the arm works. If no height works, the bottom of the lift.
     *
     * @return the heights over level ground, micrometres
     */
    public Interval workHeights() {
        return workHeights(arm, height);
    }

    static Interval workHeights(Arm arm, WorkHeight height) {
        return height.allowed().orElse(Interval.at(arm.lift().least()));
    }

    /** {@return how reports name it: the arm and its lanes} */
    public String label() {
        if (lanes.isEmpty()) {
            return "arm " + arm.id() + ", which waits lifted";
        }
        return "arm " + arm.id() + (lanes.size() == 1 ? " on lane " : " on lanes ")
                + lanes.stream().map(l -> String.valueOf(l.number())).collect(Collectors.joining(" and "));
    }
}
