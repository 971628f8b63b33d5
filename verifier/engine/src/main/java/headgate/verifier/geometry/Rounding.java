package headgate.verifier.geometry;

import headgate.api.unit.Micrometres;
import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Lengths in metres to whole micrometres in a stated direction. A figure counts to the nanometre: what a sum of decimal
 * fractions carries beyond that is rounding noise, and is dropped first.
 */
public final class Rounding {

    private Rounding() {}

    /**
     * Rounds up: for a required gap or anything occupied.
     *
     * @param metres length, m; finite, at most 100 m either way
     * @return the least whole number of micrometres that is not less
     * @throws IllegalArgumentException if the length is not finite or out of bounds
     */
    public static long up(double metres) {
        return round(metres, RoundingMode.CEILING);
    }

    /**
     * Rounds down: for room that is free.
     *
     * @param metres length, m; finite, at most 100 m either way
     * @return the greatest whole number of micrometres that is not more
     * @throws IllegalArgumentException if the length is not finite or out of bounds
     */
    public static long down(double metres) {
        return round(metres, RoundingMode.FLOOR);
    }

    private static long round(double metres, RoundingMode mode) {
        if (!Micrometres.inBounds(metres)) {
            throw new IllegalArgumentException(
                    "a length must be finite and at most 100 m either way, but is " + metres + " m");
        }
        return BigDecimal.valueOf(metres)
                .setScale(9, RoundingMode.HALF_EVEN)
                .setScale(6, mode)
                .movePointRight(6)
                .longValueExact();
    }
}
