package headgate.runtime.stand;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Map;
import java.util.OptionalLong;

/**
 * Reads the numbers of a column of lengths onto whole micrometres, a tie to the even one. A stand has millions of numbers,
 * so the usual ones go through plain integer arithmetic and only those with many digits through decimals.
 *
 * @param perUnit micrometres in one of the column's units
 */
record LengthColumn(long perUnit) {

    /** The units of lengths, in micrometres. A test holds them against the units library. */
    static final Map<String, LengthColumn> UNITS =
            Map.of("mm", new LengthColumn(1_000), "cm", new LengthColumn(10_000), "m", new LengthColumn(1_000_000));

    /** Longest number that is read. */
    private static final int LONGEST = 24;

    /** Digits whose product with a million still fits in a long. */
    private static final int FAST_DIGITS = 12;

    /**
     * Reads a number.
     *
     * @param line the line
     * @param from where the number begins
     * @param to where it ends
     * @return the length, micrometres; empty if this is no plain decimal number
     */
    OptionalLong micrometres(String line, int from, int to) {
        int length = to - from;
        boolean minus = length > 0 && line.charAt(from) == '-';
        int at = minus ? from + 1 : from;
        long mantissa = 0;
        int digits = 0;
        int decimals = -1;
        for (int i = at; i < to; i++) {
            char c = line.charAt(i);
            if (c >= '0' && c <= '9') {
                mantissa = digits < FAST_DIGITS ? mantissa * 10 + (c - '0') : mantissa;
                digits++;
                decimals = decimals < 0 ? -1 : decimals + 1;
            } else if (c == '.' && decimals < 0 && digits > 0) {
                decimals = 0;
            } else {
                return OptionalLong.empty();
            }
        }
        if (digits == 0 || decimals == 0 || length > LONGEST) {
            return OptionalLong.empty();
        }
        if (digits > FAST_DIGITS) {
            return slow(line.substring(from, to));
        }
        long value = rounded(mantissa * perUnit, Math.max(0, decimals));
        return OptionalLong.of(minus ? -value : value);
    }

    private static long rounded(long scaled, int decimals) {
        long divisor = 1;
        for (int i = 0; i < decimals; i++) {
            divisor *= 10;
        }
        long whole = scaled / divisor;
        long twice = 2 * (scaled % divisor);
        boolean up = twice > divisor || (twice == divisor && whole % 2 != 0);
        return up ? whole + 1 : whole;
    }

    private OptionalLong slow(String number) {
        BigDecimal micrometres =
                new BigDecimal(number).multiply(BigDecimal.valueOf(perUnit)).setScale(0, RoundingMode.HALF_EVEN);
        return micrometres.unscaledValue().bitLength() < 64
                ? OptionalLong.of(micrometres.longValueExact())
                : OptionalLong.empty();
    }
}
