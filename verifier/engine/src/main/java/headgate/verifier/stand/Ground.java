package headgate.verifier.stand;

import headgate.runtime.stand.Plant;

/**
 * The ground of a stand: x from 0 along travel, y to the left.
 *
 * @param length along travel, m
 * @param right y of its right edge, m
 * @param left y of its left edge, m
 */
public record Ground(double length, double right, double left) {

    /** Longest plot, m: farther from the origin no plant of a stand file may be. */
    public static final double LONGEST = 10_000;

    /**
     * Checks.
     *
     * @throws IllegalArgumentException if it is no ground, or farther from the origin than {@link #LONGEST}
     */
    public Ground {
        if (!(length > 0 && length <= LONGEST)) {
            throw new IllegalArgumentException("a plot is up to " + LONGEST + " m long, not " + length + " m");
        }
        if (!(right < left && right >= -LONGEST && left <= LONGEST)) {
            throw new IllegalArgumentException(
                    "a plot's right edge lies right of its left one, not " + right + " m and " + left + " m");
        }
    }

    /** {@return across travel, m} */
    public double width() {
        return left - right;
    }

    /** {@return its area, m²} */
    public double area() {
        return length * width();
    }

    /** Where a place is, on the grid that {@link Plant} uses. */
    static Plant.Position position(double x, double y) {
        return new Plant.Position(Math.round(x * 1e6), Math.round(y * 1e6));
    }

    boolean contains(double x, double y) {
        return x >= 0 && x < length && y >= right && y < left;
    }
}
