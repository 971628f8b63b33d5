package headgate.runtime.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Reads and writes quantities as text: a decimal number, one space or none, and a unit; before {@code 1/m2} the space is
 * needed. Reading rounds once, to the
 * nearest double of the SI value; writing gives the shortest text that reads back as the same double.
 */
public final class Quantities {

    /** The form of the number: at most 12 digits before the point and 20 behind it, no exponent. */
    public static final String NUMBER_FORM = "-?(0|[1-9][0-9]{0,11})(\\.[0-9]{1,20})?";

    private static final Pattern FORM =
            Pattern.compile("(" + NUMBER_FORM + ")(?: ?(?![eE][0-9+-])([^0-9 .,+-].*)| (1/.*))");

    private Quantities() {}

    /**
     * A quantity as it was written.
     *
     * @param number its number
     * @param unit its unit
     */
    public record Written(BigDecimal number, String unit) {}

    /**
     * Takes a text apart.
     *
     * @param text the text, such as {@code 120 mm}
     * @return number and unit, or null if the text has another form; the unit may be one that nobody knows
     */
    public static @Nullable Written parse(String text) {
        if (text.length() > 80) {
            return null;
        }
        Matcher matcher = FORM.matcher(text);
        if (!matcher.matches()) {
            return null;
        }
        String unit = matcher.group(4) == null ? matcher.group(5) : matcher.group(4);
        return new Written(new BigDecimal(matcher.group(1)), unit);
    }

    /**
     * Converts a number in a unit to SI.
     *
     * @param number the number
     * @param unit its unit, one of the kind's
     * @param kind what it measures
     * @return the value in the kind's SI unit, rounded once
     * @throws IllegalArgumentException if the kind is not measured in the unit
     */
    public static double si(BigDecimal number, WrittenUnit unit, Kind kind) {
        if (!kind.units().contains(unit)) {
            throw new IllegalArgumentException(kind.phrase() + " is not written in " + unit.symbol());
        }
        double value = number.multiply(Converters.factor(kind, unit)).doubleValue();
        // A minus sign before a zero says nothing about a machine.
        return value == 0 ? 0.0 : value;
    }

    /**
     * Writes an SI value in a unit so that it reads back as the same double.
     *
     * @param si the value, SI; finite
     * @param kind what it measures
     * @param unit the unit to write it in, one of the kind's
     * @return the text, such as {@code 120 mm}
     */
    public static String text(double si, Kind kind, WrittenUnit unit) {
        BigDecimal exact = inUnit(si, kind, unit);
        for (int digits = 1; digits <= 17; digits++) {
            BigDecimal rounded = exact.round(new MathContext(digits));
            if (si(rounded, unit, kind) == si) {
                return plain(rounded) + " " + unit.symbol();
            }
        }
        return plain(exact.round(new MathContext(19))) + " " + unit.symbol();
    }

    /**
     * Writes an SI value for people: in the unit in which its number is handiest, with at most four digits.
     *
     * @param si the value, SI; finite
     * @param kind what it measures
     * @return the text, such as {@code 0.9 m/s}
     */
    public static String rounded(double si, Kind kind) {
        WrittenUnit unit = handiest(si, kind);
        return plain(inUnit(si, kind, unit).round(new MathContext(4))) + " " + unit.symbol();
    }

    /**
     * Finds the unit in which a person would write a value.
     *
     * @param si the value, SI
     * @param kind what it measures
     * @return the kind's first unit if the number in it is from 0.1 to 1000, else the first in which it is from 1 to
     *     1000, or else the first
     */
    public static WrittenUnit handiest(double si, Kind kind) {
        WrittenUnit first = kind.units().get(0);
        if (si == 0 || !Double.isFinite(si)) {
            return first;
        }
        // Lengths of 2 m and more are said in metres, shorter ones in millimetres, as on drawings.
        if (kind == Kind.LENGTH) {
            return Math.abs(si) < 2 ? WrittenUnit.MM : WrittenUnit.M;
        }
        for (WrittenUnit unit : kind.units()) {
            double number = Math.abs(inUnit(si, kind, unit).doubleValue());
            if (number >= (unit == first ? 0.1 : 1) && number < 1000) {
                return unit;
            }
        }
        return first;
    }

    /**
     * Converts an SI value to a unit.
     *
     * @param si the value, SI; finite
     * @param kind what it measures
     * @param unit the unit
     * @return the number in that unit
     */
    static BigDecimal inUnit(double si, Kind kind, WrittenUnit unit) {
        return new BigDecimal(Double.toString(si)).divide(Converters.factor(kind, unit), new MathContext(24));
    }

    private static String plain(BigDecimal number) {
        BigDecimal shortest = number.signum() == 0 ? BigDecimal.ZERO : number.stripTrailingZeros();
        return shortest.toPlainString();
    }
}
