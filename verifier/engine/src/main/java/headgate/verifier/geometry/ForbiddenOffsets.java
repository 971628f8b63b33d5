package headgate.verifier.geometry;

import headgate.api.shape.Interval;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The shifts of one volume against another, along one axis, at which a required gap does not hold.
 *
 * <p>Exact on the grid: a whole number of micrometres is forbidden if and only if the gap at that shift is less than
 * required. Between whole numbers the set rounds outward, by less than one micrometre at each end.
 */
public final class ForbiddenOffsets {

    private final List<Interval> intervals;

    private ForbiddenOffsets(List<Interval> intervals) {
        this.intervals = List.copyOf(intervals);
    }

    /**
     * Finds the forbidden shifts along y.
     *
     * @param still a volume that stays where it is
     * @param sliding a volume that is shifted by some offset along y; in the same frame, at offset 0
     * @param requiredGap the gap that must hold, micrometres; at least 1
     * @return the offsets at which the gap is less
     * @throws IllegalArgumentException if the required gap is less than 1 micrometre
     */
    public static ForbiddenOffsets alongY(Occupied still, Occupied sliding, long requiredGap) {
        demandGap(requiredGap);
        List<Interval> found = new ArrayList<>();
        for (Piece a : still.pieces()) {
            for (Piece b : sliding.pieces()) {
                long vertical = a.height().gapTo(b.height());
                boolean near =
                        vertical < requiredGap && a.box().x().gapTo(b.box().x()) < requiredGap;
                if (near) {
                    new Slide(a.ring(), b.ring(), vertical, requiredGap)
                            .forbidden()
                            .ifPresent(found::add);
                }
            }
        }
        return new ForbiddenOffsets(merged(found));
    }

    /**
     * Finds the forbidden shifts along x.
     *
     * @param still a volume that stays where it is
     * @param sliding a volume that is shifted by some offset along x; in the same frame, at offset 0
     * @param requiredGap the gap that must hold, micrometres; at least 1
     * @return the offsets at which the gap is less
     * @throws IllegalArgumentException if the required gap is less than 1 micrometre
     */
    public static ForbiddenOffsets alongX(Occupied still, Occupied sliding, long requiredGap) {
        // A quarter turn takes x to y, and leaves every gap as it is.
        return alongY(still.quarterTurned(1), sliding.quarterTurned(1), requiredGap);
    }

    /**
     * Finds the forbidden shifts along z.
     *
     * @param still a volume that stays where it is
     * @param sliding a volume that is shifted by some offset along z; in the same frame, at offset 0
     * @param requiredGap the gap that must hold, micrometres; at least 1
     * @return the offsets at which the gap is less
     * @throws IllegalArgumentException if the required gap is less than 1 micrometre
     */
    public static ForbiddenOffsets alongZ(Occupied still, Occupied sliding, long requiredGap) {
        demandGap(requiredGap);
        List<Interval> found = new ArrayList<>();
        for (Piece a : still.pieces()) {
            for (Piece b : sliding.pieces()) {
                boolean near = a.box().x().gapTo(b.box().x()) < requiredGap
                        && a.box().y().gapTo(b.box().y()) < requiredGap;
                if (near) {
                    SquaredDistance planar = Planar.between(a.ring(), b.ring()).square();
                    if (planar.compareToDistance(requiredGap) < 0) {
                        long vertical = leastVertical(planar, requiredGap);
                        found.add(new Interval(
                                a.height().least() - b.height().most() - vertical,
                                a.height().most() - b.height().least() + vertical));
                    }
                }
            }
        }
        return new ForbiddenOffsets(merged(found));
    }

    /** The least whole vertical gap that, with a distance seen from above, makes up the required gap. */
    private static long leastVertical(SquaredDistance planar, long requiredGap) {
        long tooLittle = 0;
        long enough = requiredGap;
        while (enough - tooLittle > 1) {
            long middle = tooLittle + (enough - tooLittle) / 2;
            if (planar.withVertical(middle).compareToDistance(requiredGap) >= 0) {
                enough = middle;
            } else {
                tooLittle = middle;
            }
        }
        return enough;
    }

    private static void demandGap(long requiredGap) {
        if (requiredGap < 1) {
            throw new IllegalArgumentException(
                    "a required gap must be at least 1 micrometre, but is " + requiredGap + " um");
        }
    }

    private static List<Interval> merged(List<Interval> open) {
        List<Interval> sorted = new ArrayList<>(open);
        sorted.sort(Comparator.comparingLong(Interval::least).thenComparingLong(Interval::most));
        List<Interval> result = new ArrayList<>();
        for (Interval next : sorted) {
            int last = result.size() - 1;
            // Open intervals that share only an end leave that one offset allowed.
            if (last >= 0 && next.least() < result.get(last).most()) {
                result.set(last, result.get(last).hull(next));
            } else {
                result.add(next);
            }
        }
        return result;
    }

    /**
     * The forbidden offsets as open intervals: their ends are allowed.
     *
     * @return the intervals, micrometres, in ascending order, disjoint
     */
    public List<Interval> intervals() {
        return intervals;
    }

    /**
     * Says whether the gap holds at an offset.
     *
     * @param offset the offset along y, micrometres
     * @return true if it does
     */
    public boolean allows(long offset) {
        return intervals.stream().noneMatch(i -> i.least() < offset && offset < i.most());
    }

    /**
     * The least pitch: from it on the gap holds at every larger offset too.
     *
     * @return the least offset of 0 or more, micrometres, such that it and all larger ones are allowed
     */
    public long leastPitch() {
        return intervals.isEmpty()
                ? 0
                : Math.max(0, intervals.get(intervals.size() - 1).most());
    }

    /**
     * The forbidden offsets of both sets.
     *
     * @param other the other set
     * @return the union
     */
    public ForbiddenOffsets and(ForbiddenOffsets other) {
        List<Interval> all = new ArrayList<>(intervals);
        all.addAll(other.intervals);
        return new ForbiddenOffsets(merged(all));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof ForbiddenOffsets that && intervals.equals(that.intervals);
    }

    @Override
    public int hashCode() {
        return intervals.hashCode();
    }

    /** {@return the open intervals in millimetres} */
    @Override
    public String toString() {
        return "forbidden " + intervals;
    }
}
