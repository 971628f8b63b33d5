package headgate.runtime.carriage;

import headgate.api.shape.Body;
import headgate.api.shape.Interval;
import headgate.api.sheet.Connector;
import headgate.api.sheet.PlateDesignation;
import java.util.List;
import java.util.Optional;

/**
 * A station on a beam. Its mount moves by side shift along y and by lift along z, in the carriage frame.
 *
 * @param id its id
 * @param beam the id of its beam
 * @param shift the side shift's rail: y of the mount, micrometres
 * @param lift the lift: height of the mount over level ground, micrometres
 * @param shiftMotion how the side shift moves
 * @param liftMotion how the lift moves
 * @param tolerance how far the mount may be from where it is set
 * @param payload what it can carry
 * @param plate the plate at its mount
 * @param connectors what it offers
 * @param supply the electric power that it gives
 * @param body the arm's own material that moves with the mount, placed for a mount at the origin
 * @param column the arm's own material that moves with the side shift but not with the lift, placed for a mount at y = 0,
 *     carriage frame in x and z; empty if the file does not say
 * @param liftPath how the mount moves along travel as it is lifted, for a lift that swings; empty if it goes straight up
 * @param following how the lift follows the ground by itself; empty if it holds its height
 * @param plateNormal where the plate faces, a unit vector in the head frame
 */
public record Arm(
        String id,
        String beam,
        Interval shift,
        Interval lift,
        AxisMotion shiftMotion,
        AxisMotion liftMotion,
        Tolerance tolerance,
        Payload payload,
        PlateDesignation plate,
        List<Connector> connectors,
        PowerSupply supply,
        Body body,
        Body column,
        List<LiftPoint> liftPath,
        Optional<Following> following,
        Direction plateNormal) {

    /** Copies the lists. */
    public Arm {
        connectors = List.copyOf(connectors);
        liftPath = List.copyOf(liftPath);
    }

    /**
     * An arm whose lift goes straight up and holds its height, with a plate that faces down.
     *
     * @param id its id
     * @param beam the id of its beam
     * @param shift the side shift's rail: y of the mount, micrometres
     * @param lift the lift: height of the mount over level ground, micrometres
     * @param shiftMotion how the side shift moves
     * @param liftMotion how the lift moves
     * @param tolerance how far the mount may be from where it is set
     * @param payload what it can carry
     * @param plate the plate at its mount
     * @param connectors what it offers
     * @param supply the electric power that it gives
     * @param body the arm's own material that moves with the mount, placed for a mount at the origin
     */
    public Arm(
            String id,
            String beam,
            Interval shift,
            Interval lift,
            AxisMotion shiftMotion,
            AxisMotion liftMotion,
            Tolerance tolerance,
            Payload payload,
            PlateDesignation plate,
            List<Connector> connectors,
            PowerSupply supply,
            Body body) {
        this(
                id,
                beam,
                shift,
                lift,
                shiftMotion,
                liftMotion,
                tolerance,
                payload,
                plate,
                connectors,
                supply,
                body,
                Body.NONE,
                List.of(),
                Optional.empty(),
                Direction.DOWN);
    }

    private Arm with(Interval newShift, Interval newLift, Payload newPayload) {
        return new Arm(
                id,
                beam,
                newShift,
                newLift,
                shiftMotion,
                liftMotion,
                tolerance,
                newPayload,
                plate,
                connectors,
                supply,
                body,
                column,
                liftPath,
                following,
                plateNormal);
    }

    /**
     * Changes the rail.
     *
     * @param changed the side shift's rail: y of the mount, micrometres
     * @return the same arm with it
     */
    public Arm withShift(Interval changed) {
        return with(changed, lift, payload);
    }

    /**
     * Changes the lift.
     *
     * @param changed the lift: height of the mount over level ground, micrometres
     * @return the same arm with it
     */
    public Arm withLift(Interval changed) {
        return with(shift, changed, payload);
    }

    /**
     * Changes the payload.
     *
     * @param changed what it can carry
     * @return the same arm with it
     */
    public Arm withPayload(Payload changed) {
        return with(shift, lift, changed);
    }

    /**
     * Where the mount of a lift that swings is at one height; straight between two such points.
     *
     * @param height height of the mount over level ground, micrometres
     * @param forward x of the mount less the beam's x, micrometres
     */
    public record LiftPoint(long height, long forward) {}

    /**
     * How a lift follows the ground by itself.
     *
     * @param error largest difference from the height over the ground that it should hold, m
     * @param speed highest vertical speed at which it follows, m/s
     * @param acceleration highest vertical acceleration at which it follows, m/s²
     * @param force downward force on the head's support, N
     */
    public record Following(double error, double speed, double acceleration, double force) {}

    /**
     * A direction.
     *
     * @param x share forward
     * @param y share to the left
     * @param z share upward; the three make a vector of length 1
     */
    public record Direction(double x, double y, double z) {

        /** How far the length of a direction may be from 1, after rounding. */
        private static final double ROUNDING = 1e-12;

        /** Straight down: the plate of an arm from which heads hang. */
        public static final Direction DOWN = new Direction(0, 0, -1);

        /**
         * Makes a direction of a vector of any length.
         *
         * @param x share forward
         * @param y share to the left
         * @param z share upward; not all three 0
         * @return the direction
         */
        public static Direction of(double x, double y, double z) {
            double length = StrictMath.sqrt(x * x + y * y + z * z);
            if (!(length > 0) || Double.isInfinite(length)) {
                throw new IllegalArgumentException("a direction needs a finite vector that is not 0");
            }
            // A vector that is a direction already stays as it is, so that a file read, written and read is the same.
            return Math.abs(length - 1) < ROUNDING
                    ? new Direction(x, y, z)
                    : new Direction(x / length, y / length, z / length);
        }
    }

    /**
     * Rest-to-rest motion of one axis.
     *
     * @param speed highest speed, m/s
     * @param acceleration while speeding up, m/s²
     * @param deceleration while slowing down, m/s²
     * @param overshoot how far it may run past its set-point, m
     */
    public record AxisMotion(double speed, double acceleration, double deceleration, double overshoot) {}

    /**
     * How far the mount may be from where it is set, across travel.
     *
     * @param backlash play of the side shift, m
     * @param tracking largest difference of measured and set position, m
     * @param sigma standard deviation of the position, m
     * @param angularPlay play of the mount about its axes, rad
     * @param stiffness sideways stiffness of arm and beam at the mount, N/m
     */
    public record Tolerance(double backlash, double tracking, double sigma, double angularPlay, double stiffness) {}

    /**
     * What an arm can carry.
     *
     * @param mass largest mass of a head, kg
     * @param momentX largest static moment about the x axis of the mount, N m
     * @param momentY largest static moment about the y axis of the mount, N m
     * @param momentZ largest moment about the z axis of the mount, N m
     */
    public record Payload(double mass, double momentX, double momentY, double momentZ) {}

    /**
     * Electric power.
     *
     * @param continuous mean power, W
     * @param peak highest power, W
     */
    public record PowerSupply(double continuous, double peak) {}
}
