package headgate.runtime.quantity;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * The slips that people make with units: they write one unit and mean another. Nothing is ever converted silently; a
 * slip only makes a message more helpful.
 */
public final class Slips {

    /** One slip: what was meant, and what to multiply the SI value by to get it. */
    private record Slip(String meant, double factor) {}

    // The factors are definitions: the international yard and pound agreement of 1959 for inch and pound, and the
    // standard acceleration of free fall of 1901, 9.80665 m/s2, for pound-force and kilogram-force.
    private static final double INCH = 0.0254;
    private static final double POUND = 0.45359237;
    private static final double FREE_FALL = 9.80665;

    private static final Map<Kind, List<Slip>> SLIPS = Map.of(
            Kind.LENGTH,
                    List.of(
                            new Slip("mm instead of m", 0.001),
                            new Slip("m instead of mm", 1000),
                            new Slip("cm instead of m", 0.01),
                            new Slip("cm instead of mm", 10),
                            new Slip("inches instead of mm", INCH / 0.001)),
            Kind.MASS,
                    List.of(
                            new Slip("g instead of kg", 0.001),
                            new Slip("kg instead of g", 1000),
                            new Slip("pounds instead of kg", POUND)),
            Kind.FORCE,
                    List.of(
                            new Slip("N instead of kN", 0.001),
                            new Slip("kN instead of N", 1000),
                            new Slip("kilograms-force instead of N", FREE_FALL),
                            new Slip("pounds-force (lbf) instead of N", POUND * FREE_FALL)),
            Kind.MOMENT, List.of(new Slip("kilogram metres instead of N m", FREE_FALL)),
            Kind.ANGLE,
                    List.of(
                            new Slip("deg instead of rad", Math.PI / 180),
                            new Slip("rad instead of deg", 180 / Math.PI)),
            Kind.SPEED,
                    List.of(
                            new Slip("km/h instead of m/s", 1 / 3.6),
                            new Slip("m/s instead of km/h", 3.6),
                            new Slip("mm/s instead of m/s", 0.001),
                            new Slip("m/s instead of mm/s", 1000)),
            Kind.TIME, List.of(new Slip("ms instead of s", 0.001), new Slip("s instead of ms", 1000)),
            Kind.POWER, List.of(new Slip("W instead of kW", 0.001), new Slip("kW instead of W", 1000)),
            Kind.SHARE, List.of(new Slip("a number from 0 to 1 instead of percent", 100)));

    /** Units that are not read, and what the same figure is in one that is. */
    private static final Map<String, Foreign> FOREIGN = Map.ofEntries(
            Map.entry("in", new Foreign(Kind.LENGTH, INCH)),
            Map.entry("inch", new Foreign(Kind.LENGTH, INCH)),
            Map.entry("ft", new Foreign(Kind.LENGTH, 12 * INCH)),
            Map.entry("um", new Foreign(Kind.LENGTH, 1e-6)),
            Map.entry("km", new Foreign(Kind.LENGTH, 1000)),
            Map.entry("lb", new Foreign(Kind.MASS, POUND)),
            Map.entry("lbs", new Foreign(Kind.MASS, POUND)),
            Map.entry("t", new Foreign(Kind.MASS, 1000)),
            Map.entry("lbf", new Foreign(Kind.FORCE, POUND * FREE_FALL)),
            Map.entry("kgf", new Foreign(Kind.FORCE, FREE_FALL)),
            Map.entry("kp", new Foreign(Kind.FORCE, FREE_FALL)),
            Map.entry("mph", new Foreign(Kind.SPEED, 63_360 * INCH / 3600)),
            Map.entry("Nm", new Foreign(Kind.MOMENT, 1)),
            Map.entry("Wh", new Foreign(Kind.ENERGY, 3600)),
            Map.entry("J", new Foreign(Kind.ENERGY, 1)),
            Map.entry("mA", new Foreign(Kind.CURRENT, 0.001)),
            Map.entry("mrad", new Foreign(Kind.ANGLE, 0.001)),
            Map.entry("°", new Foreign(Kind.ANGLE, Math.PI / 180)));

    private record Foreign(Kind kind, double si) {}

    private Slips() {}

    /**
     * Guesses the slip that puts a value outside what is usual.
     *
     * @param si the value as it was read, SI
     * @param kind what it measures
     * @param least least usual value, SI
     * @param most largest usual value, SI
     * @return what was perhaps meant, if one of the known slips brings the value into the usual range
     */
    public static Optional<String> guess(double si, Kind kind, double least, double most) {
        return SLIPS.getOrDefault(kind, List.of()).stream()
                .filter(s -> si * s.factor >= least && si * s.factor <= most)
                .findFirst()
                .map(s -> "perhaps it was meant in " + s.meant + ": " + Quantities.rounded(si * s.factor, kind));
    }

    /**
     * Says what a quantity in a unit that is not read is in one that is.
     *
     * @param written the quantity
     * @param kind what is expected
     * @return the same quantity in a unit that is read, if the unit is known and measures the same
     */
    public static Optional<String> converted(Quantities.Written written, Kind kind) {
        Foreign foreign = FOREIGN.get(written.unit());
        if (foreign == null || foreign.kind != kind) {
            return Optional.empty();
        }
        double si = written.number().doubleValue() * foreign.si;
        return Optional.of(String.format(
                Locale.ROOT,
                "%s %s is %s",
                written.number().toPlainString(),
                written.unit(),
                Quantities.rounded(si, kind)));
    }
}
