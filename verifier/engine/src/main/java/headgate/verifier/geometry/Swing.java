package headgate.verifier.geometry;

import headgate.api.shape.Interval;
import headgate.api.shape.Outline;
import headgate.api.shape.Point;
import headgate.api.shape.Prism;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What a volume sweeps while it turns by quarters about an axis through the origin: an outer bound. The turn is cut into steps of
 * 7.5 degrees. In each, a corner runs along an arc, which lies in the triangle of its two ends and of the place where the
 * tangents there meet; a convex prism lies in the hull of the triangles of its corners. So it is too large by at most 0.22 % of
 * the farthest corner's distance beside the arc, what the hull closes within one step, and 2 micrometres of rounding. About x
 * and y it is besides the boxes along the axes around each step.
 */
public final class Swing {

    private static final int STEPS = 12;

    private static final double STEP = Math.PI / 2 / STEPS;

    /** How far past the arc the tangents of one step meet, or further: 1 over the cosine of half a step of 7.5 degrees. */
    private static final double BEYOND = 1 / StrictMath.cos(STEP / 2);

    /** What doubles may be off by, at 100 m, and more, micrometres. */
    private static final double SLACK = 1e-3;

    private Swing() {}

    /**
     * Turns about the z axis. A turn by three quarters goes back by one; half a turn may go either way.
     *
     * @param space the volume
     * @param quarters how many quarters, right-handed
     * @return all that it sweeps, both ends included; the volume itself if the turns are full
     */
    public static Occupied aboutZ(Occupied space, int quarters) {
        return aboutZ(space, steps(quarters), STEP);
    }

    /**
     * Turns about the z axis by a small angle to either side.
     *
     * @param space the volume
     * @param angle the angle, rad; 0 to a quarter turn, and no more
     * @return all that it sweeps, in steps of 7.5 degrees or less; the volume itself if the angle is 0
     * @throws IllegalArgumentException if the angle is out of bounds
     */
    public static Occupied eitherWayAboutZ(Occupied space, double angle) {
        if (!(angle >= 0 && angle <= Math.PI / 2 + SLACK)) {
            throw new IllegalArgumentException("an angle must be from 0 to a quarter turn, but is " + angle + " rad");
        }
        int steps = (int) StrictMath.ceil(angle / STEP - SLACK);
        return aboutZ(space, IntStream.range(-steps, steps).boxed().toList(), steps == 0 ? STEP : angle / steps);
    }

    private static Occupied aboutZ(Occupied space, List<Integer> steps, double width) {
        List<Piece> pieces = new ArrayList<>();
        for (int step : steps) {
            for (Piece p : space.pieces()) {
                List<Point> corners = new ArrayList<>();
                for (int i = 0; i < p.ring().size(); i++) {
                    addArc(corners, p.ring().vertex(i), step, width);
                }
                pieces.add(Piece.of(Ring.hull(corners), p.height()));
            }
        }
        return space.and(Occupied.ofPieces(pieces));
    }

    /**
     * Turns about the x axis; as {@link #aboutZ}.
     *
     * @param space the volume
     * @param quarters how many quarters, right-handed
     * @return all that it sweeps, both ends included; the volume itself if the turns are full
     */
    public static Occupied aboutX(Occupied space, int quarters) {
        List<Prism> prisms = new ArrayList<>();
        for (int step : steps(quarters)) {
            for (Box b : space.boxes()) {
                Box turned = arcs(b.y(), b.z(), step);
                prisms.add(Prism.of(Outline.rectangle(b.x(), turned.x()), turned.y()));
            }
        }
        return space.and(Occupied.of(prisms));
    }

    /**
     * Turns about the y axis; as {@link #aboutZ}.
     *
     * @param space the volume
     * @param quarters how many quarters, right-handed
     * @return all that it sweeps, both ends included; the volume itself if the turns are full
     */
    public static Occupied aboutY(Occupied space, int quarters) {
        List<Prism> prisms = new ArrayList<>();
        for (int step : steps(quarters)) {
            for (Box b : space.boxes()) {
                Box turned = arcs(b.z(), b.x(), step);
                prisms.add(Prism.of(Outline.rectangle(turned.y(), b.y()), turned.x()));
            }
        }
        return space.and(Occupied.of(prisms));
    }

    /** The numbers of the steps that are gone through, the first one from 0 to one step onward. */
    private static List<Integer> steps(int quarters) {
        int turns = Math.floorMod(quarters, 4);
        int from = turns == 3 ? -STEPS : 0;
        int to = turns == 1 ? STEPS : turns == 2 ? 4 * STEPS : 0;
        List<Integer> steps = new ArrayList<>();
        for (int i = from; i < to; i++) {
            steps.add(i);
        }
        return steps;
    }

    /** The box about what a rectangle sweeps in one step; its first axis is turned towards its second. */
    private static Box arcs(Interval first, Interval second, int step) {
        List<Point> corners = new ArrayList<>();
        for (long a : new long[] {first.least(), first.most()}) {
            for (long b : new long[] {second.least(), second.most()}) {
                addArc(corners, new Point(a, b), step, STEP);
            }
        }
        Interval along = Interval.at(corners.get(0).x());
        Interval across = Interval.at(corners.get(0).y());
        for (Point p : corners) {
            along = along.hull(Interval.at(p.x()));
            across = across.hull(Interval.at(p.y()));
        }
        return new Box(along, across, Interval.at(0));
    }

    /** The triangle about the arc of one step, each corner with the grid points around it. */
    private static void addArc(List<Point> corners, Point corner, int step, double width) {
        addTurned(corners, corner, step * width, 1);
        addTurned(corners, corner, (step + 0.5) * width, BEYOND);
        addTurned(corners, corner, (step + 1) * width, 1);
    }

    private static void addTurned(List<Point> corners, Point corner, double angle, double stretch) {
        double cos = StrictMath.cos(angle) * stretch;
        double sin = StrictMath.sin(angle) * stretch;
        double x = corner.x() * cos - corner.y() * sin;
        double y = corner.x() * sin + corner.y() * cos;
        for (double px : new double[] {Math.floor(x - SLACK), Math.ceil(x + SLACK)}) {
            for (double py : new double[] {Math.floor(y - SLACK), Math.ceil(y + SLACK)}) {
                corners.add(new Point((long) px, (long) py));
            }
        }
    }
}
