package headgate.verifier.geometry;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The nearest pair of prisms of two volumes. */
record Nearest(Piece a, Piece b, SquaredDistance square, Planar planar) {

    /** Of pairs at the same distance the first in order; empty if a volume is empty or all is beyond the limit. */
    static Optional<Nearest> of(Occupied a, Occupied b, long limitMicrometres) {
        List<Piece> as = a.pieces();
        List<Piece> bs = b.pieces();
        // A longer limit than the grid allows is none.
        double bound = limitMicrometres >= Integer.MAX_VALUE
                ? Double.POSITIVE_INFINITY
                : (double) limitMicrometres * limitMicrometres;
        @Nullable Nearest best = null;
        for (Piece p : as) {
            for (Piece q : bs) {
                // Slack far above the rounding of either side: a pair may be measured in vain, never left out in error.
                if (p.box().squaredGapTo(q.box()) > bound * (1 + 1e-12)) {
                    continue;
                }
                Planar planar = Planar.between(p.ring(), q.ring());
                SquaredDistance square = planar.square().withVertical(p.height().gapTo(q.height()));
                boolean within = best != null
                        || limitMicrometres >= Integer.MAX_VALUE
                        || square.compareToDistance(limitMicrometres) <= 0;
                if (within && (best == null || square.compareTo(best.square()) < 0)) {
                    best = new Nearest(p, q, square, planar);
                    bound = square.approximately();
                }
            }
        }
        return Optional.ofNullable(best);
    }

    Gap gap() {
        return Gap.of(a, b, square, planar);
    }
}
