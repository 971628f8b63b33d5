package headgate.api.unit;

import headgate.api.annotation.ApiStatus;

/**
 * The grid that every coordinate lies on: whole micrometres, at most 100 m from the origin. On it the orientation of
 * three points is exact in {@code long} arithmetic, so a geometric answer is the same on every machine.
 */
@ApiStatus(value = ApiStatus.Status.EXPERIMENTAL, since = "0.1.0")
public final class Micrometres {

    /** Micrometres in a metre. */
    public static final long PER_METRE = 1_000_000L;

    /** Largest coordinate, either sign, micrometres: 100 m. Differences of products of such numbers fit in a long. */
    public static final long LIMIT = 100L * PER_METRE;

    private Micrometres() {}

    /**
     * Rounds a length to the grid: to the nearest micrometre, a tie to the even one.
     *
     * @param metres length, m; finite, at most 100 m either way
     * @return the length, micrometres
     * @throws IllegalArgumentException if the length is not finite or out of bounds
     */
    public static long nearest(double metres) {
        if (!inBounds(metres)) {
            throw new IllegalArgumentException(
                    "a length must be finite and at most 100 m either way, but is " + metres + " m");
        }
        return (long) Math.rint(metres * PER_METRE);
    }

    /**
     * Says whether a length can be put on the grid.
     *
     * @param metres length, m; any double
     * @return true if it is finite and at most 100 m either way
     */
    public static boolean inBounds(double metres) {
        return Math.abs(metres) <= (double) (LIMIT / PER_METRE);
    }

    /**
     * Converts back.
     *
     * @param micrometres length, micrometres
     * @return the length, m
     */
    public static double toMetres(long micrometres) {
        return (double) micrometres / PER_METRE;
    }
}
