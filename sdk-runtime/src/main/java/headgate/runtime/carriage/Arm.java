package headgate.runtime.carriage;

import headgate.api.shape.Body;
import headgate.api.shape.Interval;
import headgate.api.sheet.Connector;
import headgate.api.sheet.PlateDesignation;
import java.util.List;

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
        Body body) {

    /** Copies the list. */
    public Arm {
        connectors = List.copyOf(connectors);
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
