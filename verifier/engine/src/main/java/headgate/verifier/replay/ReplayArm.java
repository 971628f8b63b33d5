package headgate.verifier.replay;

import headgate.api.shape.Interval;
import headgate.runtime.carriage.Arm;
import headgate.verifier.behaviour.Facing;
import java.util.List;

/**
 * An arm at work in a replay.
 *
 * @param id its id
 * @param tool its head, as an index into the setting's tools
 * @param facing how its head is fitted
 * @param mountX where its mount is along travel, micrometres, carriage frame
 * @param setPoint y of its mount at the start, micrometres, carriage frame
 * @param shift where its mount may go, micrometres, carriage frame; a single value if the arm does not shift
 * @param motion how its side shift moves
 * @param height height of the mount over level ground at work, micrometres
 * @param bands what the sensors see that it works by; none if it knows of every plant {@link ReplaySetting#ahead()} before
 */
public record ReplayArm(
        String id,
        int tool,
        Facing facing,
        long mountX,
        long setPoint,
        Interval shift,
        Arm.AxisMotion motion,
        long height,
        List<SensorBand> bands) {

    /**
     * Checks and copies.
     *
     * @throws IllegalArgumentException if the set-point lies outside of the shift
     */
    public ReplayArm {
        if (!shift.contains(setPoint)) {
            throw new IllegalArgumentException("arm " + id + " must start within its shift");
        }
        bands = List.copyOf(bands);
    }
}
