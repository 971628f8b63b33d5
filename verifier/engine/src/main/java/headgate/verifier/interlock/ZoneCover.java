package headgate.verifier.interlock;

import headgate.api.shape.Interval;
import headgate.verifier.geometry.Box;
import headgate.verifier.geometry.Occupied;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Covers a set, grown by a gap, by few zones. Each convex prism of the set that some place of the reach is too near to is
 * covered by the box around what of it is no farther than the gap, grown by the gap, and cut to the box around the reach and a tenth of a millimetre more. Zones that another holds are dropped, and two become one as long as
 * that closes no more than half a percent of the box around the reach; of more than 64, neighbours are joined first. So the zones hold every place that is too
 * near, and more: up to the box around each grown prism, and half a percent for each zone that was saved.
 */
final class ZoneCover {

    /** What the joining of two zones may close besides them, as a share of the box around the reach. */
    private static final double SPARE = 0.005;

    /** Most zones that are joined with care; with more of them, those next to each other in order are joined first. */
    private static final int MOST = 64;

    private static final Comparator<Interval> SIDE =
            Comparator.comparingLong(Interval::least).thenComparingLong(Interval::most);

    private static final Comparator<Zone> ORDER =
            Comparator.comparing(Zone::x, SIDE).thenComparing(Zone::y, SIDE).thenComparing(Zone::z, SIDE);

    private ZoneCover() {}

    /**
     * Covers what a reach meets of a set.
     *
     * @param set the places or offsets at which material meets
     * @param gap the gap to be kept from them, micrometres
     * @param reach the places or offsets that occur
     * @return the zones, in a fixed order
     */
    static List<Zone> of(Occupied set, long gap, Occupied reach) {
        if (reach.isEmpty()) {
            return List.of();
        }
        Box within = reach.bounds().orElseThrow().grown(Zone.TENTH);
        List<Zone> zones = new ArrayList<>();
        // What is too near to a place of the reach has a point within the gap of it: the rest of a prism does not
        // matter.
        for (Box box : set.nearerThan(gap, reach).boxesWithin(within.grown(gap))) {
            zones.add(Zone.around(common(box.grown(gap), within)));
        }
        zones.sort(ORDER);
        return joined(widest(zones), SPARE * Zone.around(within).volume());
    }

    /** Zones that the others do not hold. */
    static List<Zone> without(List<Zone> zones, List<Zone> others) {
        return zones.stream()
                .filter(z -> others.stream().noneMatch(o -> o.holds(z)))
                .toList();
    }

    private static Box common(Box a, Box b) {
        return new Box(common(a.x(), b.x()), common(a.y(), b.y()), common(a.z(), b.z()));
    }

    private static Interval common(Interval a, Interval b) {
        return new Interval(Math.max(a.least(), b.least()), Math.min(a.most(), b.most()));
    }

    /** The zones that no other holds, each once. */
    private static List<Zone> widest(List<Zone> zones) {
        List<Zone> different = zones.stream().distinct().toList();
        return different.stream()
                .filter(z -> different.stream().noneMatch(o -> !o.equals(z) && o.holds(z)))
                .toList();
    }

    /** Joins the two whose hull closes least besides them, as long as that is no more than what is spare. */
    private static List<Zone> joined(List<Zone> zones, double spare) {
        List<Zone> left = new ArrayList<>(fewer(zones));
        while (true) {
            double least = Double.POSITIVE_INFINITY;
            int first = -1;
            int second = -1;
            for (int i = 0; i < left.size(); i++) {
                for (int j = i + 1; j < left.size(); j++) {
                    double excess = excess(left.get(i), left.get(j));
                    if (excess < least) {
                        least = excess;
                        first = i;
                        second = j;
                    }
                }
            }
            if (first < 0 || least > spare) {
                left.sort(ORDER);
                return List.copyOf(left);
            }
            Zone both = left.get(first).hull(left.get(second));
            left.removeIf(both::holds);
            left.add(both);
        }
    }

    /** A head of hundreds of prisms needs no zone for each: every two that follow one another become one. */
    private static List<Zone> fewer(List<Zone> zones) {
        List<Zone> left = zones;
        while (left.size() > MOST) {
            List<Zone> half = new ArrayList<>();
            for (int i = 0; i < left.size(); i += 2) {
                half.add(i + 1 < left.size() ? left.get(i).hull(left.get(i + 1)) : left.get(i));
            }
            left = widest(half);
        }
        return left;
    }

    private static double excess(Zone a, Zone b) {
        return a.hull(b).volume() - a.volume() - b.volume() + a.commonVolume(b);
    }
}
