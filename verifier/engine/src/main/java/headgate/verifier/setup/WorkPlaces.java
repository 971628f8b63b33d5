package headgate.verifier.setup;

import headgate.api.shape.Interval;
import headgate.api.shape.Point;
import headgate.api.sheet.HeadSheet;
import headgate.api.vocabulary.PostureName;
import headgate.runtime.carriage.Arm;
import headgate.verifier.check.Case;
import headgate.verifier.geometry.Box;
import headgate.verifier.geometry.Occupied;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.LongPredicate;

/**
 * Where across travel an arm can be set so that its mount has heights to work at. Most heads can work anywhere; one with
 * parts that hang low beside its tool can only where those lie in the free strips between rows.
 *
 * <p>Which parts lie in free strips changes at a few places only. Between two of them the ground under the arm moves the
 * more, the further out the arm is, and nothing else changes: so the heights that are left shrink outward, and the place
 * where they are too few is found by halving.
 */
final class WorkPlaces {

    private WorkPlaces() {}

    /**
     * The places.
     *
     * @param subject the case
     * @param arm the arm
     * @param x where its mount is along travel, micrometres
     * @param sheet the head's sheet
     * @param turned true if the head is turned by 180 degrees
     * @return places on the arm's rail, from the right to the left; none if no place gives heights enough; single places
     *     between others that do not are left out
     */
    static List<Interval> of(Case subject, Arm arm, long x, HeadSheet sheet, boolean turned) {
        Interval rail = arm.shift();
        long farthest = Math.abs(rail.least()) > Math.abs(rail.most()) ? rail.least() : rail.most();
        if (WorkHeight.of(subject, arm, new Point(x, farthest), sheet).serves(arm)) {
            return List.of(rail);
        }
        LongPredicate serves =
                y -> WorkHeight.at(subject, arm, new Point(x, y), sheet, turned).serves(arm);
        List<Interval> places = new ArrayList<>();
        List<Long> changes = changes(subject, arm, sheet, turned);
        for (int i = 1; i < changes.size(); i++) {
            between(changes.get(i - 1), changes.get(i), serves).ifPresent(found -> add(places, found));
        }
        return places;
    }

    /** Ends of the rail, its middle place, and where some part of the head comes into a free strip or leaves it. */
    private static List<Long> changes(Case subject, Arm arm, HeadSheet sheet, boolean turned) {
        Interval rail = arm.shift();
        double k = subject.policy().value().coverageFactor().value();
        FreeStrips strips = FreeStrips.of(subject, ArmAllowance.of(arm, Optional.of(sheet), k));
        TreeSet<Long> changes = new TreeSet<>(List.of(rail.least(), rail.most()));
        if (rail.contains(0)) {
            changes.add(0L);
        }
        for (Box box :
                Occupied.of(sheet.posture(PostureName.READY).orElseThrow()).boxes()) {
            Interval y = turned ? new Interval(-box.y().most(), -box.y().least()) : box.y();
            for (Interval shifts : strips.shifts(y, rail)) {
                changes.add(shifts.least());
                changes.add(shifts.most());
            }
        }
        return List.copyOf(changes);
    }

    /** What serves between two places at which something changes, both included. */
    private static Optional<Interval> between(long least, long most, LongPredicate serves) {
        boolean outwardIsLeft = least + most >= 0;
        long inner = outwardIsLeft ? least : most;
        long outer = outwardIsLeft ? most : least;
        int step = outwardIsLeft ? 1 : -1;
        if (Math.abs(outer - inner) < 2 || !serves.test(inner + step)) {
            return Optional.empty();
        }
        if (serves.test(outer) && serves.test(outer - step)) {
            return Optional.of(new Interval(least, most));
        }
        long good = inner + step;
        long bad = outer;
        while (Math.abs(bad - good) > 1) {
            long middle = good + (bad - good) / 2;
            if (serves.test(middle)) {
                good = middle;
            } else {
                bad = middle;
            }
        }
        return Optional.of(new Interval(Math.min(inner, good), Math.max(inner, good)));
    }

    private static void add(List<Interval> places, Interval next) {
        Interval last = places.isEmpty() ? null : places.get(places.size() - 1);
        if (last != null && last.most() == next.least()) {
            places.set(places.size() - 1, last.hull(next));
        } else {
            places.add(next);
        }
    }
}
