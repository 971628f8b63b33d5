package headgate.api.shape;

import headgate.api.unit.Micrometres;
import java.math.BigDecimal;

/** The bounds of the grid, and its coordinates as text. */
final class Bounds {

    private Bounds() {}

    static void check(String name, long micrometres) {
        if (micrometres < -Micrometres.LIMIT || micrometres > Micrometres.LIMIT) {
            throw new IllegalArgumentException(
                    name + " must be at most 100 m either way, but is " + millimetres(micrometres) + " mm");
        }
    }

    static String millimetres(long micrometres) {
        return BigDecimal.valueOf(micrometres, 3).stripTrailingZeros().toPlainString();
    }
}
