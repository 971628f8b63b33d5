package headgate.verifier.report.drawing;

import headgate.api.shape.Interval;
import headgate.api.shape.Point;
import headgate.api.shape.Point3;
import headgate.api.shape.Prism;
import java.util.List;
import java.util.Optional;

/**
 * What there is to see: rows, crop, frame, arms at work with their heads, and the tightest place. Carriage frame, whole
 * micrometres.
 *
 * @param rows the lanes, from the right to the left
 * @param crop the crop's plants
 * @param beams the beams
 * @param frame parts of the frame
 * @param workers arms at work; empty if not every lane can have an arm
 * @param gap the tightest place, if there is one that can be shown; it has number 1
 * @param spots other places that findings measured, numbered from 2
 */
public record Scene(
        List<Row> rows,
        Crop crop,
        List<Beam> beams,
        List<Part> frame,
        List<Worker> workers,
        Optional<GapMark> gap,
        List<Spot> spots) {

    /** Copies the lists. */
    public Scene {
        rows = List.copyOf(rows);
        beams = List.copyOf(beams);
        frame = List.copyOf(frame);
        workers = List.copyOf(workers);
        spots = List.copyOf(spots);
    }

    /**
     * A lane.
     *
     * @param number from 1 at the right-hand side
     * @param y its line
     * @param arm the arm that serves it, or empty
     */
    public record Row(int number, long y, Optional<String> arm) {}

    /**
     * The crop's plants.
     *
     * @param canopyHeight height of the leaves over the ground; 0 if nothing stands yet
     * @param canopyWidth width of the leaves of one plant; 0 if nothing stands yet
     * @param protectedRadius radius about a plant that no tool may touch
     * @param plantSpacing distance from plant to plant in a row
     * @param rowSpacing distance from row to row
     * @param bandWidth width of the band to be treated; 0 if the plan names none
     * @param groundMotion largest height of the ground over its mean, or below it, under any arm
     */
    public record Crop(
            long canopyHeight,
            long canopyWidth,
            long protectedRadius,
            long plantSpacing,
            long rowSpacing,
            long bandWidth,
            long groundMotion) {}

    /**
     * A beam.
     *
     * @param id its id
     * @param x where it is along travel
     * @param y from the least to the largest place that a mount on it can take
     */
    public record Beam(String id, long x, Interval y) {}

    /**
     * A part of the frame.
     *
     * @param name its name
     * @param prisms its material
     */
    public record Part(String name, List<Prism> prisms) {

        /** Copies the list. */
        public Part {
            prisms = List.copyOf(prisms);
        }
    }

    /**
     * An arm at work.
     *
     * @param name arm, lane and head in words
     * @param work where its mount is drawn at work
     * @param heights from the lowest to the highest place of its mount at work
     * @param lifted where its mount is at the top of the lift
     * @param shape the head that it carries
     * @param arm the arm's own material, placed for a mount at the origin
     * @param column the arm's own material that does not move with the lift, placed for a mount at y = 0
     */
    public record Worker(
            String name,
            Point3 work,
            Interval heights,
            Point3 lifted,
            HeadShape shape,
            List<Prism> arm,
            List<Prism> column) {

        /** Copies the lists. */
        public Worker {
            arm = List.copyOf(arm);
            column = List.copyOf(column);
        }
    }

    /**
     * A head as it is fitted, mount at the origin.
     *
     * @param fixed at work: what does not move with the tool point
     * @param moving at work: all that is swept by what moves with the tool point
     * @param stowed all of it, stowed
     * @param reach the outline of the reach; one point if it is one
     * @param reachHeight heights of the tool point in the reach
     * @param boxed true if it has too many parts, and boxes are drawn in their place
     */
    public record HeadShape(
            List<Prism> fixed,
            List<Prism> moving,
            List<Prism> stowed,
            List<Point> reach,
            Interval reachHeight,
            boolean boxed) {

        /** Copies the lists. */
        public HeadShape {
            fixed = List.copyOf(fixed);
            moving = List.copyOf(moving);
            stowed = List.copyOf(stowed);
            reach = List.copyOf(reach);
        }
    }

    /**
     * The tightest place.
     *
     * @param from a point of the one
     * @param to a point of the other
     * @param subject what comes close, in words
     * @param measured the gap in words
     * @param limit the limit in words, such as "at least 62 mm"
     * @param limitLength the limit, m
     * @param holds true if the gap is large enough
     */
    public record GapMark(
            Point3 from, Point3 to, String subject, String measured, String limit, double limitLength, boolean holds) {}
}
