package headgate.verifier.formula;

/**
 * Combining random errors by the GUM (JCGM 100:2008, clauses 4.3, 5.1, 6.2 and G.4). Standard uncertainties of
 * uncorrelated causes add as a root of squares; bounded errors that always act the same way add plainly, and do not
 * belong here.
 */
public final class Uncertainty {

    private Uncertainty() {}

    /**
     * Combines uncorrelated contributions.
     *
     * @param contributions sensitivity times standard uncertainty of each cause, all in one unit
     * @return the combined standard uncertainty, in that unit
     */
    public static double combined(double... contributions) {
        double square = 0;
        for (double c : contributions) {
            square += c * c;
        }
        return Math.sqrt(square);
    }

    /**
     * Standard uncertainty of a quantity that lies anywhere within bounds with equal chance.
     *
     * @param halfWidth half the width of the interval; 0 or more
     * @return half the width over the root of 3
     * @throws IllegalArgumentException if the width is out of bounds
     */
    public static double uniform(double halfWidth) {
        return Figures.notNegative("half width", halfWidth, "") / Math.sqrt(3);
    }

    /**
     * Standard uncertainty of a quantity within bounds that is likeliest in the middle.
     *
     * @param halfWidth half the width of the interval; 0 or more
     * @return half the width over the root of 6
     * @throws IllegalArgumentException if the width is out of bounds
     */
    public static double triangular(double halfWidth) {
        return Figures.notNegative("half width", halfWidth, "") / Math.sqrt(6);
    }

    /**
     * Effective degrees of freedom (Welch and Satterthwaite, GUM G.4.1).
     *
     * @param contributions the contributions
     * @param freedoms their degrees of freedom, as many; infinity for a contribution that is exactly known
     * @return the fourth power of the combined uncertainty over the sum of fourth powers over freedoms; infinity if no
     *     contribution has finite freedom
     * @throws IllegalArgumentException if there are not as many freedoms as contributions
     */
    public static double effectiveFreedom(double[] contributions, double[] freedoms) {
        if (contributions.length != freedoms.length) {
            throw new IllegalArgumentException("there must be one degree of freedom per contribution, but there are "
                    + freedoms.length + " for " + contributions.length);
        }
        double sum = 0;
        for (int i = 0; i < contributions.length; i++) {
            double square = contributions[i] * contributions[i];
            sum += square * square / freedoms[i];
        }
        double combined = combined(contributions);
        return combined * combined * combined * combined / sum;
    }

    /**
     * Radius of the circle that holds a share of errors which are normal and equal in both directions of the plane.
     *
     * @param standard standard uncertainty along each axis; 0 or more
     * @param share the share, 0 to less than 1
     * @return the radius, in the unit of the standard uncertainty
     * @throws IllegalArgumentException if a figure is out of bounds
     */
    public static double planarRadius(double standard, double share) {
        Figures.share("share", share);
        return Figures.notNegative("standard uncertainty", standard, "") * Math.sqrt(-2 * StrictMath.log1p(-share));
    }
}
