package headgate.verifier.replay;

import headgate.api.shape.Outline;
import headgate.api.shape.Point;
import headgate.api.sheet.Reach;
import headgate.verifier.behaviour.Facing;
import java.util.Arrays;
import java.util.List;

/**
 * The pieces of a reach along travel at a lateral offset, exact in micrometres and fractions of them. A non-convex reach
 * can have several. Seen along travel: "ahead" is positive before the mount however the head is fitted.
 */
final class ReachLine {

    /** A head whose reach is one point takes plants on half a lattice step to either side of it, micrometres. */
    private static final long POINT = 500;

    private final long[] x;
    private final long[] y;
    private final long least;
    private final long most;
    private final double front;
    private final double rear;
    private final double longest;

    private ReachLine(long[] x, long[] y) {
        this.x = x;
        this.y = y;
        this.least = Arrays.stream(y).min().orElseThrow();
        this.most = Arrays.stream(y).max().orElseThrow();
        this.front = Arrays.stream(x).max().orElseThrow();
        this.rear = Arrays.stream(x).min().orElseThrow();
        this.longest = longestChord();
    }

    /**
     * The reach of a head.
     *
     * @param reach its reach, head frame
     * @param facing how it is fitted
     * @return the reach, seen along travel with y to the left
     */
    static ReachLine of(Reach reach, Facing facing) {
        int sign = -facing.sign();
        Outline outline = reach.outline().orElse(null);
        if (outline == null) {
            Point at = reach.corners().get(0);
            long px = sign * at.x();
            long py = sign * at.y();
            return new ReachLine(
                    new long[] {px, px, px, px}, new long[] {py - POINT, py - POINT, py + POINT, py + POINT});
        }
        List<Point> corners = outline.vertices();
        return new ReachLine(
                corners.stream().mapToLong(p -> sign * p.x()).toArray(),
                corners.stream().mapToLong(p -> sign * p.y()).toArray());
    }

    /** {@return the least lateral offset that is reached, micrometres} */
    long least() {
        return least;
    }

    /** {@return the largest lateral offset that is reached, micrometres} */
    long most() {
        return most;
    }

    /** {@return how far ahead anything is reached, micrometres} */
    double front() {
        return front;
    }

    /** {@return how far ahead the reach ends at its rear, micrometres} */
    double rear() {
        return rear;
    }

    /** {@return the longest piece at any offset, micrometres} */
    double longest() {
        return longest;
    }

    /**
     * Cuts the reach.
     *
     * @param offset y of the plant less that of the mount, micrometres
     * @return for each piece, from the foremost on, how far ahead it begins and ends: two figures; empty beside the reach
     */
    double[] pieces(long offset) {
        if (offset < least || offset > most) {
            return new double[0];
        }
        // At the far edge a cut has no area to its other side: cut just inside of it.
        double at = offset == most ? offset - 0.5 : offset == least ? offset + 0.5 : offset;
        double[] cuts = new double[x.length];
        int n = 0;
        for (int i = 0, j = x.length - 1; i < x.length; j = i++) {
            if ((y[j] > at) != (y[i] > at)) {
                double share = (at - y[j]) / (y[i] - y[j]);
                cuts[n++] = x[j] + share * (x[i] - x[j]);
            }
        }
        if (n == 2) {
            // A convex reach, and most others: this is asked for every plant.
            return cuts[0] > cuts[1] ? new double[] {cuts[0], cuts[1]} : new double[] {cuts[1], cuts[0]};
        }
        Arrays.sort(cuts, 0, n);
        double[] pieces = new double[n];
        for (int k = 0; k < n; k++) {
            pieces[k] = cuts[n - 1 - k];
        }
        return pieces;
    }

    /** The longest piece at an offset, micrometres; negative beside the reach. */
    private double longestAt(long offset) {
        double[] pieces = pieces(offset);
        double best = -1;
        for (int k = 0; k + 1 < pieces.length; k += 2) {
            best = Math.max(best, pieces[k] - pieces[k + 1]);
        }
        return best;
    }

    /** Pieces grow and shrink linearly between corners, so the longest is found beside a corner. */
    private double longestChord() {
        double best = 0;
        for (long corner : y) {
            for (long offset = corner - 1; offset <= corner + 1; offset++) {
                best = Math.max(best, longestAt(offset));
            }
        }
        return best;
    }

    /**
     * The offset at which a plant has its longest piece, nearest to where it is now.
     *
     * @param now the plant's offset now, micrometres
     * @param from least offset that the shift allows, micrometres
     * @param to largest offset that the shift allows, micrometres
     * @return the offset; the present one moved into the bounds if the reach is beside all of them
     */
    long bestOffset(long now, long from, long to) {
        long nearest = Math.max(from, Math.min(to, now));
        long best = nearest;
        double length = longestAt(nearest);
        long[] marks = new long[3 * y.length + 2];
        int n = 0;
        for (long corner : y) {
            for (long offset = corner - 1; offset <= corner + 1; offset++) {
                marks[n++] = offset;
            }
        }
        marks[n++] = from;
        marks[n++] = to;
        for (long mark : marks) {
            if (mark < from || mark > to) {
                continue;
            }
            double here = longestAt(mark);
            boolean nearer = Math.abs(mark - now) < Math.abs(best - now);
            if (here > length || (here == length && nearer)) {
                best = mark;
                length = here;
            }
        }
        return best;
    }
}
