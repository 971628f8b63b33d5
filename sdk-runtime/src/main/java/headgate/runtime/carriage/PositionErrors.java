package headgate.runtime.carriage;

import java.util.Optional;

/**
 * How well the carriage knows where its tools are when a plant comes from the sensor to the tool: standard
 * uncertainties, as in JCGM 100 (GUM).
 *
 * @param clock of the time between image and action, s
 * @param slip of the distance travelled, as a share of it
 * @param heading of the heading, rad
 * @param pitch of the pitch, rad
 * @param roll of the roll, rad
 * @param absolute of the position on the ground, m; empty if the carriage works by what it sees and not on a grid
 */
public record PositionErrors(
        double clock, double slip, double heading, double pitch, double roll, Optional<Double> absolute) {}
