package headgate.runtime.carriage;

import headgate.api.shape.Point3;

/**
 * What moves the carriage.
 *
 * @param mass of the carriage ready for work, without heads, kg
 * @param centre its centre of mass, carriage frame
 * @param rollingResistance resistance over weight, without unit
 * @param grip largest pull over weight on the driven wheels, without unit
 * @param drivenShare share of the weight on driven wheels, 0 to 1
 * @param efficiency share of the motors' electric power that moves the carriage, 0 to 1
 * @param power highest electric power of the motors, W
 */
public record Drive(
        double mass,
        Point3 centre,
        double rollingResistance,
        double grip,
        double drivenShare,
        double efficiency,
        double power) {}
