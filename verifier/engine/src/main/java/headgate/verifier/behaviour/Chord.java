package headgate.verifier.behaviour;

import headgate.api.shape.Interval;
import headgate.api.shape.Outline;
import headgate.api.shape.Point;
import java.util.ArrayList;
import java.util.List;

/** The pieces of a reach along travel at one lateral offset. */
public final class Chord {

    private Chord() {}

    /**
     * Cuts an outline along x. Ends are rounded inward to whole micrometres. At the very edge of the outline, and at the
     * height of a corner, a cut has no area to either side: cut beside it.
     *
     * @param outline the outline
     * @param y where it is cut, micrometres
     * @return the pieces inside, from the least x on; empty beside the outline
     */
    public static List<Interval> at(Outline outline, long y) {
        List<double[]> crossings = new ArrayList<>();
        List<Point> corners = outline.vertices();
        for (int i = 0, j = corners.size() - 1; i < corners.size(); j = i++) {
            Point a = corners.get(j);
            Point b = corners.get(i);
            if ((a.y() > y) != (b.y() > y)) {
                double share = (double) (y - a.y()) / (b.y() - a.y());
                crossings.add(new double[] {a.x() + share * (b.x() - a.x())});
            }
        }
        double[] xs = crossings.stream().mapToDouble(c -> c[0]).sorted().toArray();
        List<Interval> pieces = new ArrayList<>();
        for (int i = 0; i + 1 < xs.length; i += 2) {
            long from = (long) Math.ceil(xs[i]);
            long to = (long) Math.floor(xs[i + 1]);
            if (from < to) {
                pieces.add(new Interval(from, to));
            }
        }
        return pieces;
    }
}
