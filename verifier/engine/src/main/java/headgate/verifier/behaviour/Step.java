package headgate.verifier.behaviour;

import headgate.api.answer.Action;
import headgate.api.answer.Phase;
import headgate.api.shape.Point3;
import headgate.api.sheet.HeadSheet;
import headgate.api.unit.Micrometres;
import headgate.runtime.task.LatticeSpotTask;
import java.util.ArrayList;
import java.util.List;

/**
 * A phase with where and when it starts.
 *
 * @param phase the phase
 * @param start when it starts after the action, s
 * @param from where the tool point is then
 */
public record Step(Phase phase, double start, Point3 from) {

    /**
     * Lays the phases of an action one after the other, from the ready tool point.
     *
     * @param sheet what the head says of itself
     * @param action the action
     * @return its steps
     */
    public static List<Step> of(HeadSheet sheet, Action action) {
        List<Step> steps = new ArrayList<>();
        double time = 0;
        Point3 at = sheet.readyToolPoint();
        for (Phase phase : action.phases()) {
            steps.add(new Step(phase, time, at));
            time += phase.duration();
            at = phase.toolPoint();
        }
        return steps;
    }

    /** {@return when it ends, s} */
    public double end() {
        return start + phase.duration();
    }

    /** {@return where the tool point is at its end} */
    public Point3 to() {
        return phase.toolPoint();
    }

    /** {@return the lowest height of the tool point, micrometres} */
    public long lowest() {
        return Math.min(from.z(), to().z());
    }

    /**
     * How far the tool point is from the plant at most, seen from above. Both move in straight lines at constant speed, so
     * the distance is greatest at one end.
     *
     * @param task the task, which says where the plant is
     * @return the distance, m
     */
    public double farthestFrom(LatticeSpotTask task) {
        return Math.max(distance(task, start, from), distance(task, end(), to()));
    }

    private static double distance(LatticeSpotTask task, double time, Point3 tool) {
        double dx = tool.x() - (task.position().x() + task.groundVelocity().x() * time);
        double dy = tool.y() - (task.position().y() + task.groundVelocity().y() * time);
        return Math.sqrt(dx * dx + dy * dy) / Micrometres.PER_METRE;
    }
}
