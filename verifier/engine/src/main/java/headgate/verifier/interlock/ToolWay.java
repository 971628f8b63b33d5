package headgate.verifier.interlock;

import headgate.api.answer.Action;
import headgate.api.answer.Phase;
import headgate.api.shape.Point3;
import headgate.verifier.setup.Station;
import java.util.ArrayList;
import java.util.List;

/**
 * A straight piece of the way of a tool point, seen from the arm's own mount, along the axes of the carriage: the head
 * frame, turned with the head if that is turned. Where the mount stands is the interlock's affair.
 *
 * @param from one end
 * @param to the other end; the same for a tool point that stands
 */
public record ToolWay(Point3 from, Point3 to) {

    /**
     * A tool point that stands.
     *
     * @param station the arm with its head
     * @param toolPoint where it stands, head frame
     * @return the way
     */
    public static ToolWay at(Station station, Point3 toolPoint) {
        return between(station, toolPoint, toolPoint);
    }

    /**
     * A tool point that goes straight from one place to another.
     *
     * @param station the arm with its head
     * @param from where it starts, head frame
     * @param to where it ends, head frame
     * @return the way
     */
    public static ToolWay between(Station station, Point3 from, Point3 to) {
        return station.turned() ? new ToolWay(from.turned(), to.turned()) : new ToolWay(from, to);
    }

    /**
     * The ways of a whole action, which starts at the ready tool point.
     *
     * @param station the arm with its head
     * @param action what the head does
     * @return a way for each phase; one at the ready tool point if the head declines
     */
    public static List<ToolWay> of(Station station, Action action) {
        List<ToolWay> ways = new ArrayList<>();
        Point3 at = station.sheet().readyToolPoint();
        for (Phase phase : action.phases()) {
            ways.add(between(station, at, phase.toolPoint()));
            at = phase.toolPoint();
        }
        return ways.isEmpty() ? List.of(at(station, at)) : List.copyOf(ways);
    }

    /** Whether it runs through a zone. */
    boolean meets(Zone zone) {
        return Meeting.differenceMeets(this, new ToolWay(Point3.ORIGIN, Point3.ORIGIN), zone);
    }
}
