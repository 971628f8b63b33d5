package headgate.runtime.quantity;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import javax.measure.Unit;
import tech.units.indriya.AbstractUnit;
import tech.units.indriya.unit.Units;

/** What a quantity measures, the units in which it may be written, and the SI unit in which programs hold it. */
// The suppliers make the same immutable unit each time; they only put off loading the units library.
@SuppressWarnings("ImmutableEnumChecker")
public enum Kind {
    /** A length, held in m. */
    LENGTH("a length", () -> Units.METRE, WrittenUnit.MM, WrittenUnit.CM, WrittenUnit.M),
    /** An area, held in square metres. */
    AREA("an area", () -> Units.SQUARE_METRE, WrittenUnit.M2, WrittenUnit.HA),
    /** An area in a time, held in square metres per second. */
    AREA_RATE("an area rate", () -> Units.SQUARE_METRE.divide(Units.SECOND), WrittenUnit.HA_PER_H),
    /** A count on an area, held in 1 per square metre. */
    DENSITY("a density", () -> AbstractUnit.ONE.divide(Units.SQUARE_METRE), WrittenUnit.PER_M2),
    /** A volume, held in cubic metres. */
    VOLUME("a volume", () -> Units.CUBIC_METRE, WrittenUnit.L),
    /** A speed, held in m/s. */
    SPEED("a speed", () -> Units.METRE_PER_SECOND, WrittenUnit.M_PER_S, WrittenUnit.KM_PER_H, WrittenUnit.MM_PER_S),
    /** An acceleration, held in m/s². */
    ACCELERATION("an acceleration", () -> Units.METRE_PER_SQUARE_SECOND, WrittenUnit.M_PER_S2),
    /** A time, held in s. */
    TIME("a time", () -> Units.SECOND, WrittenUnit.S, WrittenUnit.MS, WrittenUnit.MIN, WrittenUnit.H),
    /** So many times a second, held in Hz. */
    FREQUENCY("a frequency", () -> Units.HERTZ, WrittenUnit.HZ),
    /** A mass, held in kg. */
    MASS("a mass", () -> Units.KILOGRAM, WrittenUnit.KG, WrittenUnit.G),
    /** A force, held in N. */
    FORCE("a force", () -> Units.NEWTON, WrittenUnit.N, WrittenUnit.KN),
    /** A moment, held in N m. */
    MOMENT("a moment", () -> Units.NEWTON.multiply(Units.METRE), WrittenUnit.NM),
    /** A force for each length that something gives way, held in N/m. */
    STIFFNESS("a stiffness", () -> Units.NEWTON.divide(Units.METRE), WrittenUnit.N_PER_MM, WrittenUnit.KN_PER_M),
    /** A power, held in W. */
    POWER("a power", () -> Units.WATT, WrittenUnit.W, WrittenUnit.KW),
    /** An energy, held in J. */
    ENERGY("an energy", () -> Units.JOULE, WrittenUnit.KWH),
    /** An electric tension, held in V. */
    VOLTAGE("a voltage", () -> Units.VOLT, WrittenUnit.V),
    /** An electric current, held in A. */
    CURRENT("a current", () -> Units.AMPERE, WrittenUnit.A),
    /** An angle, held in rad. */
    ANGLE("an angle", () -> Units.RADIAN, WrittenUnit.DEG, WrittenUnit.RAD),
    /** A share of a whole, held as a number, 1 for all. */
    SHARE("a share", () -> AbstractUnit.ONE, WrittenUnit.PERCENT);

    private final String phrase;
    private final Supplier<Unit<?>> si;
    private final List<WrittenUnit> units;

    Kind(String phrase, Supplier<Unit<?>> si, WrittenUnit... units) {
        this.phrase = phrase;
        this.si = si;
        this.units = List.of(units);
    }

    /** {@return its name with the article, such as "a length"} */
    public String phrase() {
        return phrase;
    }

    /** {@return the units in which it may be written; the first is the one that people use most} */
    public List<WrittenUnit> units() {
        return units;
    }

    /** {@return the SI unit in which programs hold it} */
    public Unit<?> si() {
        return si.get();
    }

    /** {@return the symbols of its units, such as "mm, cm or m"} */
    public String symbols() {
        int last = units.size() - 1;
        if (last == 0) {
            return units.get(0).symbol();
        }
        String head = units.subList(0, last).stream().map(WrittenUnit::symbol).collect(Collectors.joining(", "));
        return head + " or " + units.get(last).symbol();
    }

    /**
     * Finds one of its units.
     *
     * @param symbol how the unit is written
     * @return the unit, if this kind may be written in it
     */
    public Optional<WrittenUnit> unit(String symbol) {
        return units.stream().filter(u -> u.symbol().equals(symbol)).findFirst();
    }

    /**
     * Finds what a unit measures.
     *
     * @param symbol how the unit is written
     * @return the kind that may be written in it, if any
     */
    public static Optional<Kind> ofSymbol(String symbol) {
        return Arrays.stream(values()).filter(k -> k.unit(symbol).isPresent()).findFirst();
    }
}
