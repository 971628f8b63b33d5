package headgate.verifier.formula;

/**
 * Sun on level ground over a day, by FAO Irrigation and Drainage Paper 56 (Allen, Pereira, Raes and Smith 1998), chapter
 * 3, equations 21 to 25 and 34 to 36.
 */
public final class Sunlight {

    private static final double SOLAR_CONSTANT = 0.0820;
    private static final double MINUTES_PER_DAY = 24 * 60;

    private final double inverseDistance;
    private final double declination;
    private final double sunsetAngle;
    private final double extraterrestrial;

    private Sunlight(double inverseDistance, double declination, double sunsetAngle, double extraterrestrial) {
        this.inverseDistance = inverseDistance;
        this.declination = declination;
        this.sunsetAngle = sunsetAngle;
        this.extraterrestrial = extraterrestrial;
    }

    /**
     * The sun of one day.
     *
     * @param latitude latitude, rad; north positive; within the polar circles' limits of the formula, 66.5 degrees
     *     either way
     * @param day day of the year, 1 to 366
     * @return the sun
     * @throws IllegalArgumentException if a figure is out of bounds
     */
    public static Sunlight of(double latitude, int day) {
        if (!(Math.abs(latitude) <= Math.toRadians(66.5))) {
            throw new IllegalArgumentException(
                    "latitude must be at most 66.5 degrees either way, but is " + Math.toDegrees(latitude));
        }
        if (day < 1 || day > 366) {
            throw new IllegalArgumentException("day must be from 1 to 366, but is " + day);
        }
        double year = 2 * Math.PI * day / 365;
        double dr = 1 + 0.033 * StrictMath.cos(year);
        double delta = 0.409 * StrictMath.sin(year - 1.39);
        double cosine = -StrictMath.tan(latitude) * StrictMath.tan(delta);
        double ws = StrictMath.acos(Math.max(-1, Math.min(1, cosine)));
        double ra = MINUTES_PER_DAY
                / Math.PI
                * SOLAR_CONSTANT
                * dr
                * (ws * StrictMath.sin(latitude) * StrictMath.sin(delta)
                        + StrictMath.cos(latitude) * StrictMath.cos(delta) * StrictMath.sin(ws));
        return new Sunlight(dr, delta, ws, ra);
    }

    /** {@return the inverse relative distance of the earth from the sun (equation 23)} */
    public double inverseDistance() {
        return inverseDistance;
    }

    /** {@return the declination, rad (equation 24)} */
    public double declination() {
        return declination;
    }

    /** {@return the hour angle of sunset, rad (equation 25)} */
    public double sunsetAngle() {
        return sunsetAngle;
    }

    /** {@return radiation above the air, MJ/m2 per day (equation 21)} */
    public double extraterrestrial() {
        return extraterrestrial;
    }

    /** {@return daylight, hours (equation 34)} */
    public double daylightHours() {
        return 24 / Math.PI * sunsetAngle;
    }

    /**
     * Radiation on the ground (equation 35, with the coefficients 0.25 and 0.50 where none were fitted).
     *
     * @param sunshineShare actual over possible hours of sunshine, 0 to 1
     * @return MJ/m2 per day
     * @throws IllegalArgumentException if the share is out of bounds
     */
    public double onGround(double sunshineShare) {
        return onGround(extraterrestrial, sunshineShare);
    }

    static double onGround(double extraterrestrial, double sunshineShare) {
        return (0.25 + 0.50 * Figures.share("sunshine share", sunshineShare)) * extraterrestrial;
    }

    /** {@return radiation on the ground under a clear sky near sea level, MJ/m2 per day (equation 36)} */
    public double clearSky() {
        return onGround(1);
    }

    /**
     * Electricity from panels.
     *
     * @param radiation radiation on the panel, MJ/m2 per day; 0 or more
     * @param area panel area, m2; 0 or more
     * @param efficiency of the panel, 0 to 1
     * @param systemShare share that reaches the store, 0 to 1
     * @return kWh per day; 1 kWh is 3.6 MJ exactly
     * @throws IllegalArgumentException if a figure is out of bounds
     */
    public static double kilowattHours(double radiation, double area, double efficiency, double systemShare) {
        return Figures.notNegative("radiation", radiation, "MJ/m2")
                * Figures.notNegative("area", area, "m2")
                * Figures.share("efficiency", efficiency)
                * Figures.share("system share", systemShare)
                / 3.6;
    }
}
