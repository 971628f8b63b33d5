package headgate.verifier.behaviour;

import headgate.api.task.Velocity;
import headgate.runtime.task.LatticeSpotTask;
import java.util.Locale;
import java.util.Optional;

/**
 * A trait broken.
 *
 * @param trait what was owed
 * @param task the task, where one task shows it
 * @param phase the name of the phase, where one phase shows it
 * @param measured what was measured, SI; NaN where nothing is measured
 * @param limit the limit, SI; NaN where there is none
 * @param sentence what happened, with its numbers; one sentence without a full stop
 */
public record Violation(
        Trait trait,
        Optional<LatticeSpotTask> task,
        Optional<String> phase,
        double measured,
        double limit,
        String sentence) {

    static Violation of(Trait trait, LatticeSpotTask task, String sentence) {
        return new Violation(trait, Optional.of(task), Optional.empty(), Double.NaN, Double.NaN, sentence);
    }

    static Violation measured(
            Trait trait, LatticeSpotTask task, Optional<String> phase, double measured, double limit, String sentence) {
        return new Violation(trait, Optional.of(task), phase, measured, limit, sentence);
    }

    /** {@return the sentence, and the task that shows it} */
    public String report() {
        return trait.id() + ": " + sentence + task.map(t -> "; task: " + say(t)).orElse("");
    }

    /**
     * Says a task in words.
     *
     * @param task the task
     * @return plant, ground and place on one line
     */
    public static String say(LatticeSpotTask task) {
        return task.plantClass() + ", stem " + mm(task.stemDiameter()) + ", height " + mm(task.plantHeight()) + ", "
                + task.soil() + " soil at " + String.format(Locale.ROOT, "%.2f", task.moisture())
                + " water, at " + task.position() + ", ground moving at "
                + metresPerSecond(task.groundVelocity());
    }

    static String metresPerSecond(Velocity velocity) {
        return String.format(Locale.ROOT, "(%.3f, %.3f) m/s", velocity.xMetresPerSecond(), velocity.yMetresPerSecond());
    }

    static String mm(double metres) {
        return String.format(Locale.ROOT, "%.1f mm", metres * 1000.0);
    }

    static String seconds(double seconds) {
        return String.format(Locale.ROOT, "%.3f s", seconds);
    }
}
