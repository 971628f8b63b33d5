package headgate.verifier.geometry;

import headgate.api.shape.Interval;
import java.util.Arrays;
import java.util.Optional;

/**
 * One convex prism that slides along y past another. At offset p their distance seen from above is that of the point
 * (0, p) from the difference set still - sliding. That distance is a convex function of p, so the offsets below a given
 * distance are one open interval, and its ends can be found by halving with exact comparisons.
 */
final class Slide {

    private final Ring difference;
    private final long vertical;
    private final long requiredGap;

    Slide(Ring still, Ring sliding, long vertical, long requiredGap) {
        this.difference = still.plus(sliding.turned());
        this.vertical = vertical;
        this.requiredGap = requiredGap;
    }

    /** The open interval of forbidden offsets with whole ends, or empty if no offset is forbidden. */
    Optional<Interval> forbidden() {
        // The ends of the least distance along the line x = 0, rounded to the grid outward.
        long low = Long.MAX_VALUE;
        long high = Long.MIN_VALUE;
        long nearest = nearestX();
        for (int i = 0; i < difference.edges(); i++) {
            long x0 = difference.x[i] - nearest;
            long y0 = difference.y[i];
            long ex = difference.edgeX(i);
            long ey = difference.edgeY(i);
            long x1 = x0 + ex;
            if (x0 == 0) {
                low = Math.min(low, y0);
                high = Math.max(high, y0);
            }
            if ((x0 < 0 && x1 > 0) || (x0 > 0 && x1 < 0)) {
                low = Math.min(low, y0 + Math.floorDiv(-x0 * ey, ex));
                high = Math.max(high, y0 - Math.floorDiv(x0 * ey, ex));
            }
        }
        if (!belowRequired(nearest * nearest)) {
            return Optional.empty();
        }
        // Beyond the whole set by the required gap an offset is clear. Nearer is not enough: along a slanted edge the
        // distance grows slowly.
        long clearLow = Arrays.stream(difference.y).min().orElseThrow() - requiredGap;
        long clearHigh = Arrays.stream(difference.y).max().orElseThrow() + requiredGap;
        return Optional.of(new Interval(lastClear(low, clearLow), lastClear(high, clearHigh)));
    }

    /** The x of the difference set nearest to 0: 0 if the line x = 0 meets it. */
    private long nearestX() {
        long least = Long.MAX_VALUE;
        long most = Long.MIN_VALUE;
        for (long x : difference.x) {
            least = Math.min(least, x);
            most = Math.max(most, x);
        }
        return least > 0 ? least : Math.min(most, 0);
    }

    private boolean belowRequired(long squareFromAbove) {
        return squareFromAbove < requiredGap * requiredGap - vertical * vertical;
    }

    /** The clear offset nearest to the forbidden ones, between one that may be forbidden and one that is clear. */
    private long lastClear(long inside, long clear) {
        if (isClear(inside)) {
            return inside;
        }
        long forbidden = inside;
        long allowed = clear;
        while (Math.abs(allowed - forbidden) > 1) {
            long middle = forbidden + (allowed - forbidden) / 2;
            if (isClear(middle)) {
                allowed = middle;
            } else {
                forbidden = middle;
            }
        }
        return allowed;
    }

    private boolean isClear(long offset) {
        return Planar.fromPoint(0, offset, difference).withVertical(vertical).compareToDistance(requiredGap) >= 0;
    }
}
