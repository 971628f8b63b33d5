package headgate.verifier.formula;

/**
 * Loads of the screws of a round plate, equally spaced on a pitch circle. The plate is taken as stiff, its screws as
 * equal. A bending moment about a diameter loads each screw in proportion to its distance from that diameter, and the
 * squared distances sum to n D^2 / 8 for three screws or more, whatever the phase: the largest load is 4 M / (n D).
 * Derived; the same form stands in handbooks for bolted flanges.
 */
public final class BoltCircle {

    private final int screws;
    private final double pitchCircle;

    private BoltCircle(int screws, double pitchCircle) {
        this.screws = screws;
        this.pitchCircle = pitchCircle;
    }

    /**
     * A ring of screws.
     *
     * @param screws number of screws; at least 3
     * @param pitchCircle diameter of the pitch circle, m; more than 0
     * @return the ring
     * @throws IllegalArgumentException if a figure is out of bounds
     */
    public static BoltCircle of(int screws, double pitchCircle) {
        return new BoltCircle(Figures.atLeast("screws", screws, 3), Figures.positive("pitch circle", pitchCircle, "m"));
    }

    /**
     * Greatest tension from a bending moment, a screw being on the extreme fibre.
     *
     * @param moment bending moment about a diameter, N m; 0 or more
     * @return 4 M / (n D), N
     * @throws IllegalArgumentException if the moment is out of bounds
     */
    public double bendingTension(double moment) {
        return 4 * Figures.notNegative("moment", moment, "N m") / (screws * pitchCircle);
    }

    /**
     * Tension of the screw at an angle from the axis of the moment.
     *
     * @param moment bending moment about a diameter, N m; 0 or more
     * @param angle angle of the screw from that diameter, rad
     * @return 4 M sin(angle) / (n D), N; negative on the pressed side
     * @throws IllegalArgumentException if the moment is out of bounds
     */
    public double bendingTension(double moment, double angle) {
        return bendingTension(moment) * StrictMath.sin(angle);
    }

    /**
     * Tension from a pull along the normal of the plate, shared by all.
     *
     * @param pull force that pulls the plate off, N; a force that presses it on counts as 0
     * @return the tension of each screw, N
     */
    public double directTension(double pull) {
        return Math.max(0, pull) / screws;
    }

    /**
     * Greatest shear from a force in the plate and a torque about its normal, taken in one direction.
     *
     * @param force force in the plane of the plate, N; 0 or more
     * @param torque torque about the normal, N m; 0 or more
     * @return F / n + 2 T / (n D), N
     * @throws IllegalArgumentException if a figure is out of bounds
     */
    public double shear(double force, double torque) {
        return Figures.notNegative("force", force, "N") / screws
                + 2 * Figures.notNegative("torque", torque, "N m") / (screws * pitchCircle);
    }
}
