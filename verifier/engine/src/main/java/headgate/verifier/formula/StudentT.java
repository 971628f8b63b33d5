package headgate.verifier.formula;

/**
 * Quantiles of Student's t law, for bounds of a mean from few values. The share within t of the middle is a finite
 * trigonometric series for whole degrees of freedom: Abramowitz and Stegun, Handbook of Mathematical Functions, 26.7.3 and
 * 26.7.4.
 */
public final class StudentT {

    /** Enough halvings for the last bit of a double. */
    private static final int HALVINGS = 200;

    private StudentT() {}

    /**
     * The value that is not exceeded with a probability.
     *
     * @param probability from 0.5 to less than 1
     * @param freedom degrees of freedom, at least 1
     * @return the quantile
     * @throws IllegalArgumentException if a figure is out of bounds
     */
    public static double quantile(double probability, int freedom) {
        Figures.atLeast("degrees of freedom", freedom, 1);
        if (!(probability >= 0.5 && probability < 1)) {
            throw new IllegalArgumentException("a probability must be from 0.5 to less than 1, but is " + probability);
        }
        // The angle whose tangent is t over the root of the freedom goes from 0 to a right angle.
        double low = 0;
        double high = Math.PI / 2;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if ((1 + within(middle, freedom)) / 2 < probability) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return StrictMath.sqrt(freedom) * StrictMath.tan(low);
    }

    /** The share of the law within an angle to both sides. */
    private static double within(double angle, int freedom) {
        double cosine = StrictMath.cos(angle);
        double square = cosine * cosine;
        boolean odd = freedom % 2 == 1;
        double term = odd ? cosine : 1;
        double sum = 0;
        for (int k = odd ? 1 : 0; k <= freedom - 2; k += 2) {
            sum += term;
            term *= square * (k + 1) / (k + 2);
        }
        return odd ? 2 / Math.PI * (angle + StrictMath.sin(angle) * sum) : StrictMath.sin(angle) * sum;
    }
}
