package headgate.verifier.setup;

import headgate.api.shape.Interval;
import headgate.api.shape.Point;
import headgate.runtime.carriage.Arm;
import headgate.verifier.geometry.Occupied;
import java.util.List;
import java.util.TreeSet;

/**
 * What is filled while a lift moves. A lift that goes straight up is swept exactly. One that swings is swept step by step
 * along its stated path: within a step, every height is taken with every place along travel, so the sweep holds more than
 * is filled by at most one step along travel.
 */
public final class LiftSweep {

    /** How far a swinging lift moves along travel in one step, micrometres: a compromise of excess and time. */
    private static final long STEP = 5_000;

    private LiftSweep() {}

    /**
     * Sweeps a volume over heights of a lift.
     *
     * @param arm the arm
     * @param space what moves with the mount, placed for a mount at height 0 that has not swung
     * @param heights the heights of the mount over level ground, micrometres
     * @return all that is filled at some height; an outer bound if the lift swings, by at most 5 mm along travel
     */
    public static Occupied over(Arm arm, Occupied space, Interval heights) {
        List<Arm.LiftPoint> path = arm.liftPath();
        if (path.isEmpty()) {
            return space.overLift(heights);
        }
        TreeSet<Long> bends = new TreeSet<>(List.of(heights.least(), heights.most()));
        path.stream().map(Arm.LiftPoint::height).filter(heights::contains).forEach(bends::add);
        Occupied all = Occupied.NOTHING;
        long low = bends.first();
        if (bends.size() == 1) {
            return step(path, space, low, low);
        }
        for (long high : bends.tailSet(low, false)) {
            long swing = Math.abs(forward(path, high, false) - forward(path, low, false));
            long steps = Math.max(1, (swing + STEP - 1) / STEP);
            for (long i = 0; i < steps; i++) {
                all = all.and(step(path, space, low + (high - low) * i / steps, low + (high - low) * (i + 1) / steps));
            }
            low = high;
        }
        return all;
    }

    /**
     * How far forward a lift takes its mount over some heights.
     *
     * @param arm the arm
     * @param heights the heights of the mount over level ground, micrometres
     * @return the least and the most, rounded outward, micrometres; 0 for a lift that goes straight up
     */
    static Interval forward(Arm arm, Interval heights) {
        List<Arm.LiftPoint> path = arm.liftPath();
        if (path.isEmpty()) {
            return Interval.at(0);
        }
        Interval ends = new Interval(forward(path, heights.least(), false), forward(path, heights.least(), true))
                .hull(new Interval(forward(path, heights.most(), false), forward(path, heights.most(), true)));
        return path.stream()
                .filter(p -> heights.contains(p.height()))
                .map(p -> Interval.at(p.forward()))
                .reduce(ends, Interval::hull);
    }

    /** Between two heights that have no bend between them. */
    private static Occupied step(List<Arm.LiftPoint> path, Occupied space, long low, long high) {
        long from = Math.min(forward(path, low, false), forward(path, high, false));
        long to = Math.max(forward(path, low, true), forward(path, high, true));
        return space.along(new Point(from, 0), new Point(to, 0)).overLift(new Interval(low, high));
    }

    /** How far forward the mount is at a height, rounded up or down; beyond its ends the path goes on as it ends. */
    private static long forward(List<Arm.LiftPoint> path, long height, boolean up) {
        if (path.size() == 1) {
            return path.get(0).forward();
        }
        int i = 1;
        while (i + 1 < path.size() && height > path.get(i).height()) {
            i++;
        }
        Arm.LiftPoint before = path.get(i - 1);
        Arm.LiftPoint next = path.get(i);
        long rise = (next.forward() - before.forward()) * (height - before.height());
        long span = next.height() - before.height();
        return before.forward() + (up ? -Math.floorDiv(-rise, span) : Math.floorDiv(rise, span));
    }
}
