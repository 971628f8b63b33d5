package headgate.verifier.report.json;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Numbers for machine-readable reports. {@code Double.toString} differs between JDK 17 and later ones (JDK-4511638), and
 * some library functions differ in the last place, so a figure is written with twelve significant digits at most.
 */
final class JsonNumbers {

    private static final MathContext DIGITS = new MathContext(12, RoundingMode.HALF_EVEN);

    private JsonNumbers() {}

    /** The number in plain notation, without trailing zeros. */
    static String text(double finite) {
        BigDecimal rounded = new BigDecimal(finite).round(DIGITS);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
