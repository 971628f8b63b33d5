package headgate.verifier.geometry;

import java.math.BigInteger;

/**
 * The square of a distance in square micrometres, exact: {@code numerator / denominator + vertical * vertical}, where
 * the numerator is squared if {@code onEdge}. The nearest point of an edge is in general not on the grid, so its squared
 * distance is a fraction; that of a vertex is whole.
 */
final class SquaredDistance implements Comparable<SquaredDistance> {

    static final SquaredDistance ZERO = ofVertex(0);

    private static final BigInteger SQUARE_NANOMETRES = BigInteger.valueOf(1_000_000);

    private final long numerator;
    private final long denominator;
    private final boolean onEdge;
    private final long vertical;
    private final double approximately;

    private SquaredDistance(long numerator, long denominator, boolean onEdge, long vertical) {
        this.numerator = numerator;
        this.denominator = denominator;
        this.onEdge = onEdge;
        this.vertical = vertical;
        double planar = onEdge ? (double) numerator * numerator / denominator : numerator;
        this.approximately = planar + (double) vertical * vertical;
    }

    /** From a vertex: the square itself. */
    static SquaredDistance ofVertex(long square) {
        return new SquaredDistance(square, 1, false, 0);
    }

    /** From a point inside an edge: the cross product of edge and vertex, and the square of the edge's length. */
    static SquaredDistance ofEdge(long cross, long squaredLength) {
        return new SquaredDistance(cross, squaredLength, true, 0);
    }

    SquaredDistance withVertical(long gap) {
        return new SquaredDistance(numerator, denominator, onEdge, gap);
    }

    /** To about 16 digits; the relative error is below 1e-15. */
    double approximately() {
        return approximately;
    }

    @Override
    public int compareTo(SquaredDistance other) {
        // Apart by far more than the error of either, the approximations decide.
        if (Math.abs(approximately - other.approximately) > 1e-13 * (approximately + other.approximately)) {
            return Double.compare(approximately, other.approximately);
        }
        if (denominator == 1 && other.denominator == 1 && !onEdge && !other.onEdge) {
            return Long.compare(numerator + vertical * vertical, other.numerator + other.vertical * other.vertical);
        }
        return exactNumerator()
                .multiply(BigInteger.valueOf(other.denominator))
                .compareTo(other.exactNumerator().multiply(BigInteger.valueOf(denominator)));
    }

    /** The order against a whole distance in micrometres. */
    int compareToDistance(long micrometres) {
        return compareTo(ofVertex(micrometres * micrometres));
    }

    /** The distance in whole nanometres, rounded down. */
    long floorNanometres() {
        // floor(sqrt(q)) = floor(sqrt(floor(q))), so the division may round down first.
        return exactNumerator()
                .multiply(SQUARE_NANOMETRES)
                .divide(BigInteger.valueOf(denominator))
                .sqrt()
                .longValueExact();
    }

    private BigInteger exactNumerator() {
        BigInteger planar = BigInteger.valueOf(numerator);
        BigInteger high = BigInteger.valueOf(vertical);
        return (onEdge ? planar.multiply(planar) : planar)
                .add(high.multiply(high).multiply(BigInteger.valueOf(denominator)));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof SquaredDistance that && compareTo(that) == 0;
    }

    @Override
    public int hashCode() {
        return Long.hashCode(floorNanometres());
    }

    @Override
    public String toString() {
        return floorNanometres() + " nm";
    }
}
