package headgate.verifier.interlock;

import headgate.api.shape.Interval;
import headgate.api.shape.Outline;
import headgate.api.shape.Point;
import headgate.api.shape.Prism;
import headgate.verifier.geometry.Box;
import headgate.verifier.geometry.Occupied;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Places of a reach, evenly spread, each known to be too near or not. They say how much zones close besides what is too
 * near while zones are chosen: so they decide which of many safe covers is taken, and never whether one is safe.
 */
final class Samples {

    private static final int ACROSS = 24;
    private static final int UP = 6;

    private final long[] x;
    private final long[] y;
    private final long[] z;
    private final BitSet free = new BitSet();
    private final Map<Zone, BitSet> known = new HashMap<>();
    private final int count;

    /**
     * Spreads them.
     *
     * @param reach one convex prism
     * @param near what is too near
     */
    Samples(Occupied reach, List<Occupied> near) {
        Box box = reach.bounds().orElseThrow();
        this.x = spread(box.x(), ACROSS);
        this.y = spread(box.y(), ACROSS);
        this.z = spread(box.z(), UP);
        Outline places = reach.prisms().get(0).outline();
        List<Prism> prisms = near.stream().flatMap(o -> o.prisms().stream()).toList();
        int occurring = 0;
        for (int i = 0; i < x.length; i++) {
            for (int j = 0; j < y.length; j++) {
                Point at = new Point(x[i], y[j]);
                if (!places.contains(at)) {
                    continue;
                }
                List<Interval> tooNear = prisms.stream()
                        .filter(p -> p.outline().xExtent().contains(at.x())
                                && p.outline().yExtent().contains(at.y())
                                && p.outline().contains(at))
                        .map(Prism::height)
                        .toList();
                for (int k = 0; k < z.length; k++) {
                    long height = z[k];
                    occurring++;
                    free.set(index(i, j, k), tooNear.stream().noneMatch(h -> h.contains(height)));
                }
            }
        }
        this.count = Math.max(1, occurring);
    }

    private static long[] spread(Interval side, int number) {
        long[] at = new long[number];
        for (int i = 0; i < number; i++) {
            at[i] = side.least() + side.length() * (2L * i + 1) / (2L * number);
        }
        return at;
    }

    private int index(int i, int j, int k) {
        return (i * y.length + j) * z.length + k;
    }

    /** Those that a zone closes though they are not too near; not to be changed. */
    BitSet besides(Zone zone) {
        return known.computeIfAbsent(zone, this::lookUp);
    }

    private BitSet lookUp(Zone zone) {
        BitSet closed = new BitSet();
        int fromZ = first(z, zone.z().least());
        int toZ = first(z, zone.z().most() - 1);
        int fromY = first(y, zone.y().least());
        int toY = first(y, zone.y().most() - 1);
        int toX = first(x, zone.x().most() - 1);
        for (int i = first(x, zone.x().least()); i < toX; i++) {
            for (int j = fromY; j < toY; j++) {
                closed.set(index(i, j, fromZ), index(i, j, toZ));
            }
        }
        closed.and(free);
        return closed;
    }

    /** The index of the first place beyond a coordinate. */
    private static int first(long[] at, long beyond) {
        int i = 0;
        while (i < at.length && at[i] <= beyond) {
            i++;
        }
        return i;
    }

    /** {@return a share of all as a number of samples} */
    double share(double share) {
        return share * count;
    }
}
