package headgate.verifier.formula;

/**
 * One-sided bounds of a share from a count: exact by the binomial law, however few were counted. C. J. Clopper and
 * E. S. Pearson, Biometrika 26 (1934) 404-413. The binomial law's tail is an incomplete beta function; it is worked out by
 * the continued fraction of Abramowitz and Stegun, Handbook of Mathematical Functions, 26.5.8. Statistics libraries use
 * functions that may differ in the last bit from one machine to the next; these bounds stand in reports that must not.
 */
public final class ExactShare {

    /** Enough halvings for the last bit of a double. */
    private static final int HALVINGS = 80;

    private static final double ALMOST_NOTHING = 1e-300;
    private static final double EXACT = 1e-15;
    private static final int MOST_TERMS = 100_000;

    private ExactShare() {}

    /**
     * The share that is at least there.
     *
     * @param hits how many were counted, 0 to {@code of}
     * @param of of how many, at least 1
     * @param confidence level, 0.5 to less than 1
     * @return the least share with which so many or more would still be counted with a chance of 1 - confidence; 0 if none
     *     was counted
     * @throws IllegalArgumentException if a figure is out of bounds
     */
    public static double atLeast(long hits, long of, double confidence) {
        check(hits, of, confidence);
        if (hits == 0) {
            return 0;
        }
        double low = 0;
        double high = 1;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (orMore((double) hits, (double) of, middle) < 1 - confidence) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /**
     * The share that is at most there.
     *
     * @param hits how many were counted, 0 to {@code of}
     * @param of of how many, at least 1
     * @param confidence level, 0.5 to less than 1
     * @return the largest share with which so many or fewer would still be counted with a chance of 1 - confidence; 1 if all
     *     were counted
     * @throws IllegalArgumentException if a figure is out of bounds
     */
    public static double atMost(long hits, long of, double confidence) {
        return 1 - atLeast(of - hits, of, confidence);
    }

    private static void check(long hits, long of, double confidence) {
        if (of < 1 || hits < 0 || hits > of) {
            throw new IllegalArgumentException("a share needs a count from 0 to all, but got " + hits + " of " + of);
        }
        if (!(confidence >= 0.5 && confidence < 1)) {
            throw new IllegalArgumentException("a confidence must be from 0.5 to less than 1, but is " + confidence);
        }
    }

    /** The chance of so many or more, each with the given share: the incomplete beta function of a = hits, b = misses + 1. */
    private static double orMore(double hits, double of, double share) {
        double a = hits;
        double b = of - hits + 1;
        double front = StrictMath.exp(
                logGamma(a + b) - logGamma(a) - logGamma(b) + a * StrictMath.log(share) + b * StrictMath.log1p(-share));
        // The fraction converges fast below the mean; above it the other tail is worked out.
        return share < (a + 1) / (a + b + 2)
                ? front * fraction(a, b, share) / a
                : 1 - front * fraction(b, a, 1 - share) / b;
    }

    /** The continued fraction, evaluated from its front (Lentz's way). */
    private static double fraction(double a, double b, double x) {
        double c = 1;
        double d = 1 / awayFromNothing(1 - (a + b) * x / (a + 1));
        double value = d;
        for (int m = 1; m < MOST_TERMS; m++) {
            double even = m * (b - m) * x / ((a + 2 * m - 1) * (a + 2 * m));
            d = 1 / awayFromNothing(1 + even * d);
            c = awayFromNothing(1 + even / c);
            value *= d * c;
            double odd = -(a + m) * (a + b + m) * x / ((a + 2 * m) * (a + 2 * m + 1));
            d = 1 / awayFromNothing(1 + odd * d);
            c = awayFromNothing(1 + odd / c);
            value *= d * c;
            if (Math.abs(d * c - 1) < EXACT) {
                break;
            }
        }
        return value;
    }

    private static double awayFromNothing(double value) {
        return Math.abs(value) < ALMOST_NOTHING ? ALMOST_NOTHING : value;
    }

    /** The logarithm of the gamma function for 1 and more: Stirling's series (the same handbook, 6.1.41) from 16 on. */
    private static double logGamma(double z) {
        double product = 1;
        double x = z;
        while (x < 16) {
            product *= x;
            x++;
        }
        double square = x * x;
        double series = (1.0 / 12 - (1.0 / 360 - (1.0 / 1260 - 1.0 / 1680 / square) / square) / square) / x;
        return (x - 0.5) * StrictMath.log(x) - x + 0.5 * StrictMath.log(2 * Math.PI) + series - StrictMath.log(product);
    }
}
