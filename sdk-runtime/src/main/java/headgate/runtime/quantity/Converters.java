package headgate.runtime.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import javax.measure.IncommensurableException;
import javax.measure.UnitConverter;
import tech.units.indriya.function.RationalNumber;

/**
 * What one of a unit is in SI, as the units library converts it. Each is asked for once: most files use few units, and
 * every unit here is a multiple of its SI unit.
 */
final class Converters {

    private record Key(Kind kind, WrittenUnit unit) {}

    private static final Map<Key, BigDecimal> FACTORS = new ConcurrentHashMap<>();

    private Converters() {}

    /** What one of a unit is in SI, to 34 digits: more than a double holds, so that a product with it is rounded once. */
    static BigDecimal factor(Kind kind, WrittenUnit unit) {
        return FACTORS.computeIfAbsent(new Key(kind, unit), Converters::make);
    }

    private static BigDecimal make(Key key) {
        Number one = converter(key).convert(BigDecimal.ONE);
        if (one instanceof RationalNumber rational) {
            return new BigDecimal(rational.getDividend())
                    .divide(new BigDecimal(rational.getDivisor()), MathContext.DECIMAL128);
        }
        return new BigDecimal(one.toString());
    }

    private static UnitConverter converter(Key key) {
        try {
            UnitConverter converter = key.unit.unit().getConverterToAny(key.kind.si());
            if (!converter.isLinear()) {
                throw new IllegalStateException(key.unit.symbol() + " is no multiple of an SI unit");
            }
            return converter;
        } catch (IncommensurableException impossible) {
            throw new IllegalStateException(key.unit.symbol() + " does not measure " + key.kind.phrase(), impossible);
        }
    }
}
