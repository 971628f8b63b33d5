package headgate.app.command;

import headgate.runtime.quantity.Kind;
import headgate.runtime.quantity.Quantities;
import java.util.Optional;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Quantities on the command line, written as in files: a number and a unit. */
final class Quantity {

    private Quantity() {}

    private static double si(String text, Kind kind, String example, double least, double most) {
        Quantities.Written written = Quantities.parse(text.strip());
        Optional<Double> si = written == null
                ? Optional.empty()
                : kind.unit(written.unit()).map(unit -> Quantities.si(written.number(), unit, kind));
        if (si.isEmpty() || !(si.get() >= least && si.get() <= most)) {
            throw new TypeConversionException("found '" + text + "', but expected "
                    + kind.phrase() + " from " + Quantities.rounded(least, kind) + " to "
                    + Quantities.rounded(most, kind) + ", such as '" + example + "'");
        }
        return si.get();
    }

    /** A speed, m/s. */
    static final class Speed implements ITypeConverter<Double> {
        @Override
        public Double convert(String text) {
            return si(text, Kind.SPEED, "0.2 m/s", 0.001, 10);
        }
    }

    /** A length of a plot, m. */
    static final class PlotLength implements ITypeConverter<Double> {
        @Override
        public Double convert(String text) {
            return si(text, Kind.LENGTH, "200 m", 1, 10_000);
        }
    }

    /** Weeds per square metre. */
    static final class Density implements ITypeConverter<Double> {
        @Override
        public Double convert(String text) {
            return si(text, Kind.DENSITY, "1.5 1/m2", 0, 1_000);
        }
    }

    /** Seeds: one, or several in a row such as 1-8. */
    static final class Seeds implements ITypeConverter<SeedRange> {
        @Override
        public SeedRange convert(String text) {
            String[] ends = text.strip().split("-", -1);
            try {
                long first = Long.parseLong(ends[0]);
                long last = ends.length == 2 ? Long.parseLong(ends[1]) : first;
                if (ends.length <= 2 && first >= 0 && last >= first && last - first < SeedRange.MOST) {
                    return new SeedRange(first, last);
                }
            } catch (NumberFormatException wrong) {
                throw seeds(text);
            }
            throw seeds(text);
        }

        private static TypeConversionException seeds(String text) {
            return new TypeConversionException("found '" + text
                    + "', but expected a whole number from 0 on, or two with a dash for all between them (at most "
                    + SeedRange.MOST + "), such as '1-8'");
        }
    }

    /**
     * Seeds in a row.
     *
     * @param first the first
     * @param last the last
     */
    record SeedRange(long first, long last) {
        /** Most seeds in a row. */
        static final int MOST = 1_000;
    }
}
