package headgate.runtime.carriage;

import headgate.api.shape.Body;
import java.util.List;
import java.util.Optional;

/**
 * The machine that carries the arms. Carriage frame: x forward, y left, z up; origin on the ground under the middle of
 * the foremost beam.
 *
 * @param name what its maker calls it
 * @param serial serial number
 * @param beams lateral bars, front to rear
 * @param arms stations on the beams
 * @param structure frame parts that do not move with an arm, each a body in the carriage frame
 * @param ground how the ground under an arm moves against the frame
 * @param stopping how the carriage stops
 * @param turning what a turn on the headland costs
 */
public record Carriage(
        String name,
        String serial,
        List<Beam> beams,
        List<Arm> arms,
        List<Part> structure,
        GroundMotion ground,
        Stopping stopping,
        Turning turning) {

    /** Copies the lists. */
    public Carriage {
        beams = List.copyOf(beams);
        arms = List.copyOf(arms);
        structure = List.copyOf(structure);
    }

    /**
     * Finds an arm.
     *
     * @param id the arm's id
     * @return the arm, or empty if there is none of that id
     */
    public Optional<Arm> arm(String id) {
        return arms.stream().filter(a -> a.id().equals(id)).findFirst();
    }

    /**
     * Finds a beam.
     *
     * @param id the beam's id
     * @return the beam, or empty if there is none of that id
     */
    public Optional<Beam> beam(String id) {
        return beams.stream().filter(b -> b.id().equals(id)).findFirst();
    }

    /**
     * A lateral bar.
     *
     * @param id its id
     * @param x where the mounts of its arms are along travel, micrometres, carriage frame; 0 for the foremost
     */
    public record Beam(String id, long x) {}

    /**
     * A part of the frame.
     *
     * @param name what it is, such as "left leg"
     * @param body its material, carriage frame
     */
    public record Part(String name, Body body) {}

    /**
     * How the ground under an arm moves against the frame.
     *
     * @param roll largest roll of the frame against the ground, rad
     * @param pitch largest pitch of the frame against the ground, rad
     * @param wheelSink how far the wheels sink, m
     */
    public record GroundMotion(double roll, double pitch, double wheelSink) {}

    /**
     * How the carriage stops.
     *
     * @param reactionTime from the command to braking, s
     * @param deceleration while braking, m/s²
     */
    public record Stopping(double reactionTime, double deceleration) {}

    /**
     * What a turn on the headland costs.
     *
     * @param turnTime one turn, from the last row worked to the next, s
     * @param liftTime lifting and lowering that does not overlap the turn, s
     */
    public record Turning(double turnTime, double liftTime) {}
}
