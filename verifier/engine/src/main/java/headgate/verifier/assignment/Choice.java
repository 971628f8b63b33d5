package headgate.verifier.assignment;

import headgate.api.shape.Interval;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * One thing that a slider can do.
 *
 * @param stance what it fills meanwhile: an index into what the pitch knows of the slider
 * @param firstLane the first lane that it serves, from 0; of no meaning if it serves none
 * @param lanes how many lanes it serves, from the first on; 0 if none that count
 * @param allowed where its mount may be set, micrometres; in ascending order, disjoint, closed, not empty
 * @param cover the set-points from which it covers all of its lanes, micrometres; empty if it covers nothing
 * @param preferred where it would be set if it were alone, micrometres
 * @param item what it takes one of, an index into the problem's stock; empty if it takes nothing
 */
public record Choice(
        int stance,
        int firstLane,
        int lanes,
        List<Interval> allowed,
        Optional<Interval> cover,
        long preferred,
        OptionalInt item) {

    /** Copies the list. */
    public Choice {
        allowed = List.copyOf(allowed);
    }

    /**
     * A choice that takes nothing of the stock.
     *
     * @param stance what it fills meanwhile
     * @param firstLane the first lane that it serves, from 0
     * @param lanes how many lanes it serves
     * @param allowed where its mount may be set, micrometres
     * @param cover the set-points from which it covers all of its lanes, micrometres
     * @param preferred where it would be set if it were alone, micrometres
     */
    public Choice(
            int stance, int firstLane, int lanes, List<Interval> allowed, Optional<Interval> cover, long preferred) {
        this(stance, firstLane, lanes, allowed, cover, preferred, OptionalInt.empty());
    }

    /**
     * How far the lanes can lie inside what the slider covers, at the best set-point that is allowed.
     *
     * @return micrometres; less than 0 if no set-point covers them; empty if it covers nothing
     */
    public Optional<Long> mostCover() {
        return cover.map(c -> allowed.stream()
                .mapToLong(a -> {
                    long middle = Math.floorDiv(c.least() + c.most(), 2L);
                    long at = Math.max(a.least(), Math.min(a.most(), middle));
                    return Math.min(at - c.least(), c.most() - at);
                })
                .max()
                .orElse(Long.MIN_VALUE));
    }

    /** {@return true if it serves this lane} */
    boolean serves(int lane) {
        return lanes > 0 && firstLane <= lane && lane < firstLane + lanes;
    }
}
