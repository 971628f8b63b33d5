package headgate.verifier.interlock;

import headgate.api.shape.Interval;
import headgate.api.shape.Prism;
import headgate.verifier.geometry.Box;
import headgate.verifier.geometry.Occupied;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** What of a reach, itself convex, lies within a gap of one convex prism, and boxes that hold it. */
final class Surroundings {

    private final Occupied prism;
    private final Occupied grown;
    private final Occupied reach;
    private final long gap;
    private final Optional<Box> whole;

    Surroundings(Prism prism, long gap, Occupied reach) {
        this.prism = Occupied.of(List.of(prism));
        this.grown = this.prism.grown(gap);
        this.reach = reach;
        this.gap = gap;
        this.whole = around(reach.bounds().orElseThrow()).flatMap(b -> Boxes.within(reach, b));
    }

    /** One zone that holds it; none if it is empty. */
    List<Zone> whole() {
        return whole.map(Zone::around).stream().toList();
    }

    /** An outer bound of it, by a polygon of 16 sides about each disc. */
    Occupied bound() {
        return grown;
    }

    /** Zones that hold it together: of slabs of one thickness along x or along y. */
    List<Zone> cut(boolean alongX, int count) {
        List<Zone> zones = new ArrayList<>();
        whole.ifPresent(box -> {
            Interval side = alongX ? box.x() : box.y();
            long from = side.least();
            for (int i = 1; i <= count && from < side.most(); i++) {
                long cut = Math.floorDiv(side.least() + side.length() * i / count, Zone.TENTH) * Zone.TENTH;
                // A tenth of a millimetre beyond the cut, so that the cut itself lies inside of a zone.
                long to = i == count ? side.most() : Math.min(side.most(), cut + Zone.TENTH);
                if (to > from) {
                    Interval part = new Interval(from, to);
                    slab(alongX ? new Box(part, box.y(), box.z()) : new Box(box.x(), part, box.z()))
                            .map(Zone::around)
                            .ifPresent(zones::add);
                    from = Math.max(from, cut);
                }
            }
        });
        return zones;
    }

    private Optional<Box> slab(Box region) {
        return around(region).flatMap(b -> Boxes.within(grown, b)).flatMap(b -> Boxes.within(reach, b));
    }

    /** Exact for a prism along the axes: as far as the gap to each side. */
    private Optional<Box> around(Box region) {
        return prism.boxesWithin(region.grown(gap)).stream()
                .flatMap(b -> Boxes.common(b.grown(gap), region).stream())
                .findFirst();
    }

    /**
     * Whether some of it, at a place that occurs, lies in a box.
     *
     * @param part the box; flat where only a face is left
     * @param places the reach without any margin
     * @param possible boxes that hold, together, the places that can still occur
     */
    boolean reachesInto(Box part, Occupied places, List<Box> possible) {
        return Boxes.within(grown, part)
                .filter(b -> isInside(part.x(), b.x(), Box::x)
                        && isInside(part.y(), b.y(), Box::y)
                        && isInside(part.z(), b.z(), Box::z))
                .flatMap(b -> Boxes.within(places, b))
                .filter(b -> possible.stream().anyMatch(p -> Boxes.common(p, b).isPresent()))
                .isPresent();
    }

    /** What is too near is open: where its hull only touches a box there is nothing of it. */
    private boolean isInside(Interval part, Interval common, Function<Box, Interval> side) {
        if (part.length() > 0) {
            return common.length() > 0;
        }
        Interval extent = side.apply(grown.bounds().orElseThrow());
        return extent.least() < part.least() && part.least() < extent.most();
    }
}
