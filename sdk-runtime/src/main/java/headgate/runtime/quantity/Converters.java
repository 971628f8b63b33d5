package headgate.runtime.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import javax.measure.IncommensurableException;
import javax.measure.UnitConverter;
import tech.units.indriya.function.RationalNumber;

/** Keeps the converters to SI, each made at first use, since most files use few units. */
final class Converters {

    private record Key(Kind kind, WrittenUnit unit) {}

    private static final Map<Key, UnitConverter> MADE = new ConcurrentHashMap<>();

    private Converters() {}

    /** The converter from a unit to the SI unit of a kind. */
    static UnitConverter toSi(Kind kind, WrittenUnit unit) {
        return MADE.computeIfAbsent(new Key(kind, unit), Converters::make);
    }

    /** What one unit is in SI, to 34 digits: more than a double holds, so that a quotient by it is rounded only once. */
    static BigDecimal factor(Kind kind, WrittenUnit unit) {
        Number one = toSi(kind, unit).convert(BigDecimal.ONE);
        if (one instanceof RationalNumber rational) {
            return new BigDecimal(rational.getDividend())
                    .divide(new BigDecimal(rational.getDivisor()), MathContext.DECIMAL128);
        }
        return new BigDecimal(one.toString());
    }

    private static UnitConverter make(Key key) {
        try {
            return key.unit.unit().getConverterToAny(key.kind.si());
        } catch (IncommensurableException impossible) {
            throw new IllegalStateException(key.unit.symbol() + " does not measure " + key.kind.phrase(), impossible);
        }
    }
}
