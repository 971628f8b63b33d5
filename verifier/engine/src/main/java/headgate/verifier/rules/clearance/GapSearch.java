package headgate.verifier.rules.clearance;

import headgate.api.unit.Micrometres;
import headgate.verifier.geometry.Box;
import headgate.verifier.geometry.Gap;
import headgate.verifier.geometry.Occupied;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Looks for the tightest of many pairs of volumes. A pair whose boxes alone leave more margin than the tightest so far is not
 * measured: it can decide nothing.
 *
 * @param <P> what a pair is to the rule that looks
 */
final class GapSearch<P> {

    private static final double NANOMETRES_PER_METRE = 1e9;

    private final List<Found<P>> tooNear = new ArrayList<>();
    private Optional<Found<P>> tightest = Optional.empty();
    private int examined;

    /**
     * A pair that was measured.
     *
     * @param pair the pair
     * @param gap the gap between the two
     * @param required the gap that must stay, m
     */
    record Found<P>(P pair, Gap gap, double required) {

        /** The gap less the required one, m. */
        double margin() {
            return gap.metres() - required;
        }
    }

    /** A sum of terms to the nearest nanometre, as gaps are: decimal figures that meet on paper also meet here. */
    static double nearestNanometre(double metres) {
        return Math.rint(metres * NANOMETRES_PER_METRE) / NANOMETRES_PER_METRE;
    }

    /** Looks at one more pair; one that fills nothing on one side counts, but has no gap. */
    void look(P pair, Occupied first, Occupied second, double required) {
        examined++;
        double mayBeLeft = Math.max(0, tightest.map(Found::margin).orElse(Double.MAX_VALUE));
        if (leastGap(first, second) - required > mayBeLeft) {
            return;
        }
        Optional<Found<P>> near = Gap.between(first, second).map(gap -> new Found<>(pair, gap, required));
        near.filter(n -> n.margin() < 0).ifPresent(tooNear::add);
        if (near.isPresent()
                && (tightest.isEmpty() || near.get().margin() < tightest.get().margin())) {
            tightest = near;
        }
    }

    private static double leastGap(Occupied first, Occupied second) {
        Optional<Box> a = first.bounds();
        Optional<Box> b = second.bounds();
        return a.isEmpty() || b.isEmpty()
                ? Double.POSITIVE_INFINITY
                : Math.sqrt((double) a.get().squaredGapTo(b.get())) / Micrometres.PER_METRE;
    }

    /** How many pairs were looked at. */
    int examined() {
        return examined;
    }

    /** The pair with the least margin, the first of equal ones; empty if none has a gap. */
    Optional<Found<P>> tightest() {
        return tightest;
    }

    /** The pairs that do not keep their gap, in the order in which they were looked at. */
    List<Found<P>> tooNear() {
        return List.copyOf(tooNear);
    }
}
