package headgate.verifier.interlock;

import headgate.api.shape.Interval;
import headgate.api.shape.Outline;
import headgate.api.shape.Point;
import headgate.api.shape.Prism;
import headgate.api.sheet.Reach;
import headgate.api.unit.Micrometres;
import headgate.verifier.geometry.Box;
import headgate.verifier.geometry.Occupied;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;

/**
 * Covers a set, grown by a gap, by few zones.
 *
 * <p>Each convex prism of the set that some place of the reach is too near to is covered by the box around what of it is
 * no farther than the gap, grown by the gap, and cut to the box around the reach and a tenth of a millimetre more. Where
 * such boxes close more than one part in a hundred of the reach besides, prisms are cut into slabs, each with a box of its
 * own: 2, 4, 8, up to 32 of them, as long as there are no more than 64 boxes. Then two boxes become one for as long as no
 * more than two parts in a hundred of the reach are closed besides, counted on {@link Samples}; and a zone is left out if
 * the others close all that it is there for.
 *
 * <p>So every place that is too near lies in a zone; and no zone can be left out. That no other cover has fewer zones is
 * not shown: to find the least number is a hard problem.
 */
final class ZoneCover {

    /** What zones may close besides what is too near for the sake of fewer zones, as a share of the reach. */
    static final double SPARE = 0.02;

    /** Most zones that are joined with care; with more of them, those next to each other in order are joined first. */
    private static final int MOST = 64;

    private static final int MOST_SLABS = 32;

    /** Most prisms that are taken off what is closed, to say how much is closed besides. */
    private static final int MOST_COUNTED = 6;

    private static final Comparator<Interval> SIDE =
            Comparator.comparingLong(Interval::least).thenComparingLong(Interval::most);

    private static final Comparator<Zone> ORDER =
            Comparator.comparing(Zone::x, SIDE).thenComparing(Zone::y, SIDE).thenComparing(Zone::z, SIDE);

    private static final Interval EDGE = new Interval(-Zone.TENTH, Zone.TENTH);

    private final long gap;
    private final Occupied places;
    private final Occupied reach;
    private final double room;
    private final List<Prism> near;
    private final List<Surroundings> surroundings;
    private final Samples samples;

    private ZoneCover(Occupied set, long gap, Occupied places) {
        this.gap = gap;
        this.places = places;
        // The ends of a reach must lie inside of zones and not on their faces.
        this.reach = places.over(Reach.over(Outline.rectangle(EDGE, EDGE), EDGE));
        this.room = reach.cubicMetres();
        // What is too near to a place of the reach has a point within the gap of it: other prisms do not matter.
        this.near = set.nearerThan(gap, places).prisms();
        this.surroundings =
                near.stream().map(p -> new Surroundings(p, gap, reach)).toList();
        this.samples = new Samples(
                reach, surroundings.stream().map(Surroundings::bound).toList());
    }

    /**
     * Covers what a reach meets of a set.
     *
     * @param set the places or offsets at which material meets
     * @param gap the gap to be kept from them, micrometres
     * @param places the places or offsets that occur; convex
     * @return the cover
     */
    static Cover of(Occupied set, long gap, Occupied places) {
        return of(set, gap, places, List.of(), places.boxes());
    }

    /**
     * Covers what a reach meets of a set, and is not closed anyway.
     *
     * @param set the places or offsets at which material meets
     * @param gap the gap to be kept from them, micrometres
     * @param places the places or offsets that occur; convex
     * @param closed zones that are closed in any case
     * @param possible boxes that hold, together, the places or offsets that other limits let occur
     * @return the cover
     */
    static Cover of(Occupied set, long gap, Occupied places, List<Zone> closed, List<Box> possible) {
        if (places.isEmpty() || set.nearerThan(gap, places).isEmpty()) {
            return Cover.NOTHING;
        }
        return new ZoneCover(set, gap, places).make(closed, possible);
    }

    private Cover make(List<Zone> closed, List<Box> possible) {
        List<Zone> cells = new ArrayList<>();
        surroundings.forEach(each -> cells.addAll(slabs(each)));
        cells.sort(ORDER);
        List<Zone> zones = needed(joined(widest(cells)), closed, possible);
        return zones.isEmpty() ? Cover.NOTHING : new Cover(zones, excess(zones));
    }

    /** As many slabs as bring what is closed besides under one prism's part of half of what is spare. */
    private List<Zone> slabs(Surroundings prism) {
        List<Zone> best = prism.whole();
        int besides = besides(best).cardinality();
        int prisms = surroundings.size();
        for (int count = 2;
                besides > samples.share(SPARE / 2) / prisms && count <= MOST_SLABS && count * prisms <= MOST;
                count *= 2) {
            for (boolean alongX : new boolean[] {true, false}) {
                List<Zone> finer = prism.cut(alongX, count);
                int left = besides(finer).cardinality();
                if (left < besides) {
                    best = finer;
                    besides = left;
                }
            }
        }
        return best;
    }

    private BitSet besides(List<Zone> zones) {
        BitSet all = new BitSet();
        zones.forEach(z -> all.or(samples.besides(z)));
        return all;
    }

    /** The zones that no other holds, each once. */
    private static List<Zone> widest(List<Zone> zones) {
        List<Zone> different = zones.stream().distinct().toList();
        return different.stream()
                .filter(z -> different.stream().noneMatch(o -> !o.equals(z) && o.holds(z)))
                .toList();
    }

    /** Joins the two whose hull closes least besides, as long as all that is closed besides is no more than what is spare. */
    private List<Zone> joined(List<Zone> zones) {
        List<Zone> left = new ArrayList<>(fewer(zones));
        BitSet besides = besides(left);
        while (true) {
            Pair best = null;
            for (int i = 0; i < left.size(); i++) {
                for (int j = i + 1; j < left.size(); j++) {
                    Pair pair = pair(left.get(i), left.get(j), besides);
                    best = best == null || pair.compareTo(best) < 0 ? pair : best;
                }
            }
            if (best == null
                    || besides.cardinality() + best.more() > Math.max(besides.cardinality(), samples.share(SPARE))) {
                left.sort(ORDER);
                return List.copyOf(left);
            }
            Zone both = best.hull();
            left.removeIf(both::holds);
            left.add(both);
            besides.or(samples.besides(both));
        }
    }

    /** Two zones as one: how many samples more that closes besides, and the volume that it adds. */
    private record Pair(Zone hull, int more, double volume) implements Comparable<Pair> {

        @Override
        public int compareTo(Pair other) {
            int byMore = Integer.compare(more, other.more);
            return byMore != 0 ? byMore : Double.compare(volume, other.volume);
        }
    }

    private Pair pair(Zone a, Zone b, BitSet besides) {
        Zone hull = a.hull(b);
        BitSet more = (BitSet) samples.besides(hull).clone();
        more.andNot(besides);
        return new Pair(hull, more.cardinality(), hull.volume() - a.volume() - b.volume() + a.commonVolume(b));
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

    /** Leaves out what the rest closes, the smallest first: whatever is kept then stays needed as more is left out. */
    private List<Zone> needed(List<Zone> zones, List<Zone> closed, List<Box> possible) {
        List<Zone> left = new ArrayList<>(zones);
        List<Zone> smallestFirst = zones.stream()
                .sorted(Comparator.comparingDouble(Zone::volume).thenComparing(ORDER))
                .toList();
        for (Zone zone : smallestFirst) {
            List<Zone> others = new ArrayList<>(closed);
            left.stream().filter(z -> !z.equals(zone)).forEach(others::add);
            if (Rest.of(zone, others).stream().map(Rest::box).noneMatch(part -> isNear(part, possible))) {
                left.remove(zone);
            }
        }
        return List.copyOf(left);
    }

    private boolean isNear(Box part, List<Box> possible) {
        return surroundings.stream().anyMatch(s -> s.reachesInto(part, places, possible));
    }

    /** What the zones close of the reach besides what is too near, as a share of the reach; never understated. */
    private double excess(List<Zone> zones) {
        Occupied closed = Occupied.of(zones.stream()
                .map(z -> Prism.of(Outline.rectangle(z.x(), z.y()), z.z()))
                .toList());
        // Less than what is too near: some of the prisms, with a polygon inside the disc beside them, and the gap above
        // and
        // below.
        List<Prism> largest = near.stream()
                .sorted(Comparator.comparingDouble((Prism p) -> -p.volume()))
                .limit(MOST_COUNTED)
                .toList();
        Occupied counted = Occupied.of(largest);
        Outline disc = Outline.insideDisc(Point.ORIGIN, Micrometres.toMetres(gap), 16);
        Occupied inner = counted.over(Reach.over(disc, Interval.at(0))).and(counted.overLift(new Interval(-gap, gap)));
        return Math.min(1, Math.max(0, (inReach(closed) - inReach(inner)) / room));
    }

    private double inReach(Occupied volume) {
        return volume.cubicMetres() + room - volume.and(reach).cubicMetres();
    }
}
