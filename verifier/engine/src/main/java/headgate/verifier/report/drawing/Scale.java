package headgate.verifier.report.drawing;

import headgate.api.unit.Micrometres;
import java.math.BigDecimal;

/** Round lengths for axes and scale bars: 1, 2 or 5 times a power of ten. */
final class Scale {

    private Scale() {}

    /** The least round length that takes at least so many pixels, micrometres. */
    static long round(double scale, double pixels) {
        double wanted = pixels / scale * Micrometres.PER_METRE;
        for (long power = 10; ; power *= 10) {
            for (long digit : new long[] {1, 2, 5}) {
                if (digit * power >= wanted) {
                    return digit * power;
                }
            }
        }
    }

    /** A length in metres, as short as it is exact. */
    static String metres(long micrometres) {
        return plain(BigDecimal.valueOf(micrometres, 6));
    }

    /** A length with its unit: metres from one metre on, else millimetres. */
    static String words(long micrometres) {
        return micrometres >= Micrometres.PER_METRE
                ? metres(micrometres) + " m"
                : plain(BigDecimal.valueOf(micrometres, 3)) + " mm";
    }

    private static String plain(BigDecimal value) {
        return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
    }
}
