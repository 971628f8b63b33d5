package headgate.verifier.check;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;

/** What kind of quantity a figure is: its unit in SI, and how people write it. */
public enum Dimension {
    /** Shown in millimetres, a tenth at the finest. */
    LENGTH("m", "mm", 1000.0, 1),
    /** Shown in metres per second. */
    SPEED("m/s", "m/s", 1.0, 3),
    /** Shown in seconds. */
    TIME("s", "s", 1.0, 3),
    /** Shown in kilograms. */
    MASS("kg", "kg", 1.0, 2),
    /** Shown in newtons. */
    FORCE("N", "N", 1.0, 1),
    /** Shown in newton metres. */
    MOMENT("N m", "N m", 1.0, 2),
    /** Shown in watts. */
    POWER("W", "W", 1.0, 1),
    /** Shown in percent. */
    SHARE("1", "%", 100.0, 1),
    /** Shown in hectares per hour. */
    AREA_RATE("m2/s", "ha/h", 0.36, 4),
    /** Shown in events per second. */
    RATE("1/s", "1/s", 1.0, 3),
    /** Shown in plants per square metre. */
    DENSITY("1/m2", "1/m2", 1.0, 2),
    /** Shown in kilograms per cubic metre. */
    MASS_DENSITY("kg/m3", "kg/m3", 1.0, 1),
    /** Shown in litres. */
    VOLUME("m3", "l", 1000.0, 3),
    /** Shown in degrees. */
    ANGLE("rad", "deg", 180.0 / Math.PI, 2),
    /** Shown as a whole number. */
    COUNT("1", "", 1.0, 0);

    private final String siUnit;
    private final String shownUnit;
    private final double factor;
    private final int digits;

    Dimension(String siUnit, String shownUnit, double factor, int digits) {
        this.siUnit = siUnit;
        this.shownUnit = shownUnit;
        this.factor = factor;
        this.digits = digits;
    }

    /** {@return the unit's symbol in SI, as machine-readable reports give it} */
    public String siUnit() {
        return siUnit;
    }

    /** {@return the symbol of the unit that people are shown; empty for counts} */
    public String shownUnit() {
        return shownUnit;
    }

    /**
     * Writes a figure for people: fixed digits, never scientific, rounded half to even, trailing zeros dropped.
     *
     * @param si the figure, SI
     * @return the figure with its unit
     */
    public String text(double si) {
        return text(si, RoundingMode.HALF_EVEN);
    }

    /**
     * Writes a figure for people, rounded in a given direction: a least value is written rounded up, so that whoever
     * follows it is safe.
     *
     * @param si the figure, SI
     * @param mode the direction
     * @return the figure with its unit
     */
    public String text(double si, RoundingMode mode) {
        if (!Double.isFinite(si)) {
            return String.valueOf(si).toLowerCase(Locale.ROOT);
        }
        BigDecimal shown = new BigDecimal(si * factor)
                .setScale(digits + 3, RoundingMode.HALF_EVEN)
                .setScale(digits, mode);
        String number = shown.signum() == 0 ? "0" : plain(shown);
        return shownUnit.isEmpty() ? number : number + " " + shownUnit;
    }

    /**
     * Rounds a figure to what people are shown, in a given direction.
     *
     * @param si the figure, SI
     * @param mode the direction
     * @return the rounded figure, SI
     */
    public double rounded(double si, RoundingMode mode) {
        return new BigDecimal(si * factor)
                        .setScale(digits + 3, RoundingMode.HALF_EVEN)
                        .setScale(digits, mode)
                        .doubleValue()
                / factor;
    }

    private static String plain(BigDecimal shown) {
        return shown.stripTrailingZeros().toPlainString();
    }
}
