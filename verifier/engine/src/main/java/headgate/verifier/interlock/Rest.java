package headgate.verifier.interlock;

import headgate.api.shape.Interval;
import headgate.verifier.geometry.Box;
import java.util.ArrayList;
import java.util.List;

/**
 * What is left of an open box once other open boxes are taken out of it: boxes some of whose faces belong to them and some
 * do not. Exact: a coordinate c stands here as 2 c, and all that lies between c and c + 1 as 2 c + 1, since no face lies
 * there.
 */
final class Rest {

    private final long[] least;
    private final long[] most;

    private Rest(long[] least, long[] most) {
        this.least = least;
        this.most = most;
    }

    /**
     * Takes zones out of a zone.
     *
     * @param zone the zone, without its faces
     * @param others the zones that are taken out, without their faces
     * @return boxes that hold together what is left, and nothing else
     */
    static List<Rest> of(Zone zone, List<Zone> others) {
        List<Rest> left = List.of(open(zone));
        for (Zone other : others) {
            Rest taken = open(other);
            List<Rest> next = new ArrayList<>();
            left.forEach(piece -> piece.without(taken, next));
            left = next;
        }
        return left;
    }

    private static Rest open(Zone zone) {
        Interval[] sides = {zone.x(), zone.y(), zone.z()};
        long[] least = new long[3];
        long[] most = new long[3];
        for (int i = 0; i < 3; i++) {
            least[i] = 2 * sides[i].least() + 1;
            most[i] = 2 * sides[i].most() - 1;
        }
        return new Rest(least, most);
    }

    private void without(Rest taken, List<Rest> into) {
        for (int i = 0; i < 3; i++) {
            if (taken.most[i] < least[i] || taken.least[i] > most[i]) {
                into.add(this);
                return;
            }
        }
        long[] low = least.clone();
        long[] high = most.clone();
        for (int i = 0; i < 3; i++) {
            if (low[i] < taken.least[i]) {
                long[] cut = high.clone();
                cut[i] = taken.least[i] - 1;
                into.add(new Rest(low.clone(), cut));
                low[i] = taken.least[i];
            }
            if (high[i] > taken.most[i]) {
                long[] cut = low.clone();
                cut[i] = taken.most[i] + 1;
                into.add(new Rest(cut, high.clone()));
                high[i] = taken.most[i];
            }
        }
    }

    /** The least box of whole micrometres that holds it, its faces included. */
    Box box() {
        return new Box(side(0), side(1), side(2));
    }

    private Interval side(int axis) {
        return new Interval(Math.floorDiv(least[axis], 2), -Math.floorDiv(-most[axis], 2));
    }
}
