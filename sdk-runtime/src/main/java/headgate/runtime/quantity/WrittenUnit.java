package headgate.runtime.quantity;

import java.util.function.Supplier;
import javax.measure.MetricPrefix;
import javax.measure.Unit;
import tech.units.indriya.AbstractUnit;
import tech.units.indriya.unit.Units;

/**
 * A unit as it may be written in a file, and the unit that it stands for. The symbols are those of the SI brochure
 * (BIPM, 9th edition) and the units accepted for use with it, spelled with a plain keyboard: {@code m/s2}, {@code 1/m2}.
 */
// The suppliers make the same immutable unit each time; they only put off loading the units library.
@SuppressWarnings("ImmutableEnumChecker")
public enum WrittenUnit {
    /** Millimetre. */
    MM("mm", () -> MetricPrefix.MILLI(Units.METRE)),
    /** Centimetre. */
    CM("cm", () -> MetricPrefix.CENTI(Units.METRE)),
    /** Metre. */
    M("m", () -> Units.METRE),
    /** Square metre. */
    M2("m2", () -> Units.SQUARE_METRE),
    /** Hectare, 10,000 square metres. */
    HA("ha", () -> Units.SQUARE_METRE.multiply(10_000)),
    /** Hectare per hour. */
    HA_PER_H("ha/h", () -> Units.SQUARE_METRE.multiply(10_000).divide(Units.HOUR)),
    /** So many per square metre. */
    PER_M2("1/m2", () -> AbstractUnit.ONE.divide(Units.SQUARE_METRE)),
    /** Litre, a thousandth of a cubic metre. */
    L("l", () -> Units.CUBIC_METRE.divide(1000)),
    /** Millimetre per second. */
    MM_PER_S("mm/s", () -> MetricPrefix.MILLI(Units.METRE).divide(Units.SECOND)),
    /** Metre per second. */
    M_PER_S("m/s", () -> Units.METRE_PER_SECOND),
    /** Kilometre per hour. */
    KM_PER_H("km/h", () -> Units.METRE.multiply(1000).divide(Units.SECOND.multiply(3600))),
    /** Metre per second squared. */
    M_PER_S2("m/s2", () -> Units.METRE_PER_SQUARE_SECOND),
    /** Millisecond. */
    MS("ms", () -> MetricPrefix.MILLI(Units.SECOND)),
    /** Second. */
    S("s", () -> Units.SECOND),
    /** Minute. */
    MIN("min", () -> Units.MINUTE),
    /** Hour. */
    H("h", () -> Units.HOUR),
    /** Hertz, so many a second. */
    HZ("Hz", () -> Units.HERTZ),
    /** Gram. */
    G("g", () -> Units.GRAM),
    /** Kilogram. */
    KG("kg", () -> Units.KILOGRAM),
    /** Newton. */
    N("N", () -> Units.NEWTON),
    /** Kilonewton. */
    KN("kN", () -> MetricPrefix.KILO(Units.NEWTON)),
    /** Newton metre, of a moment. */
    NM("N m", () -> Units.NEWTON.multiply(Units.METRE)),
    /** Newton per millimetre. */
    N_PER_MM("N/mm", () -> Units.NEWTON.divide(MetricPrefix.MILLI(Units.METRE))),
    /** Kilonewton per metre. */
    KN_PER_M("kN/m", () -> MetricPrefix.KILO(Units.NEWTON).divide(Units.METRE)),
    /** Watt. */
    W("W", () -> Units.WATT),
    /** Kilowatt. */
    KW("kW", () -> MetricPrefix.KILO(Units.WATT)),
    /** Kilowatt hour, 3.6 megajoule. */
    KWH("kWh", () -> MetricPrefix.KILO(Units.WATT).multiply(Units.HOUR)),
    /** Volt. */
    V("V", () -> Units.VOLT),
    /** Ampere. */
    A("A", () -> Units.AMPERE),
    /** Degree of angle, pi / 180 radian. */
    DEG("deg", () -> Units.RADIAN.multiply(Math.PI / 180)),
    /** Radian. */
    RAD("rad", () -> Units.RADIAN),
    /** Hundredth. */
    PERCENT("%", () -> Units.PERCENT);

    private final String symbol;
    private final Supplier<Unit<?>> unit;

    WrittenUnit(String symbol, Supplier<Unit<?>> unit) {
        this.symbol = symbol;
        this.unit = unit;
    }

    /** {@return how it is written, such as {@code km/h}} */
    public String symbol() {
        return symbol;
    }

    /** {@return the unit of JSR 385 that it stands for} */
    public Unit<?> unit() {
        return unit.get();
    }
}
