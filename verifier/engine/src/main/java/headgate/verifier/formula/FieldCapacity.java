package headgate.verifier.formula;

/**
 * Area worked per hour. The customary form is width in metres times speed in km/h over 10 (ASABE EP496, as quoted in
 * University of Kentucky AEN-73, 1991); with speed in m/s that is 0.36 v w.
 */
public final class FieldCapacity {

    private static final double HECTARES_PER_HOUR = 3600.0 / 10_000.0;

    private FieldCapacity() {}

    /**
     * Area worked per hour, lost time included.
     *
     * @param speed working speed, m/s; 0 or more
     * @param width served width: rows per pass times row spacing, m; 0 or more
     * @param efficiency field efficiency, 0 to 1; 1 gives the theoretical capacity
     * @return the capacity, ha/h
     * @throws IllegalArgumentException if a figure is out of bounds
     */
    public static double hectaresPerHour(double speed, double width, double efficiency) {
        return HECTARES_PER_HOUR
                * Figures.notNegative("speed", speed, "m/s")
                * Figures.notNegative("width", width, "m")
                * Figures.share("efficiency", efficiency);
    }
}
