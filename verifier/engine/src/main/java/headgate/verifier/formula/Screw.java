package headgate.verifier.formula;

import java.util.Map;
import java.util.Optional;

/**
 * Strength of coarse-pitch metric screws: stress area pi / 4 (d - 0.9382 P)^2 and the proof loads that ISO 898-1 tables,
 * which are rounded irregularly and so are kept as a table.
 */
public final class Screw {

    /** Property class of a screw. */
    public enum PropertyClass {
        /** Class 8.8. */
        C8_8,
        /** Class 10.9. */
        C10_9
    }

    private record Size(double pitch, double proof88, double proof109) {}

    private static final Map<Integer, Size> SIZES = Map.of(
            5, new Size(0.8, 8230, 11800),
            6, new Size(1.0, 11600, 16700),
            8, new Size(1.25, 21200, 30400),
            10, new Size(1.5, 33700, 48100));

    private final int diameter;
    private final Size size;

    private Screw(int diameter, Size size) {
        this.diameter = diameter;
        this.size = size;
    }

    /**
     * Finds a screw. M6, M8 and M10 are as printed from ISO 898-1 in manufacturers' tables; M5 is from memory.
     *
     * @param diameter nominal diameter in millimetres, such as 6 for M6
     * @return the screw, or empty if it is not in the table
     */
    public static Optional<Screw> metric(int diameter) {
        return Optional.ofNullable(SIZES.get(diameter)).map(s -> new Screw(diameter, s));
    }

    /** {@return the stress area, square metres} */
    public double stressArea() {
        double d = (diameter - 0.9382 * size.pitch()) / 1000;
        return Math.PI / 4 * d * d;
    }

    /**
     * The load that the screw bears without lasting stretch.
     *
     * @param propertyClass its property class
     * @return the proof load, N
     */
    public double proofLoad(PropertyClass propertyClass) {
        return propertyClass == PropertyClass.C8_8 ? size.proof88() : size.proof109();
    }
}
