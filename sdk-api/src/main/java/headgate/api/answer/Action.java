package headgate.api.answer;

import headgate.api.annotation.ApiStatus;
import headgate.api.problem.ProblemCollector;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What a spot head does for one task: phases one after the other, or a refusal with its reason. An action that is not
 * declined has at least one phase that treats ground, and ends where the head is ready again.
 */
@ApiStatus(value = ApiStatus.Status.EXPERIMENTAL, since = "0.1.0")
public final class Action {

    /** Most phases that an action may have. */
    public static final int MOST_PHASES = 64;

    private final List<Phase> phases;
    private final @Nullable String declined;

    private Action(List<Phase> phases, @Nullable String declined) {
        this.phases = List.copyOf(phases);
        this.declined = declined;
    }

    /**
     * Makes an action.
     *
     * @param phases its steps in order, 1 to 64
     * @return the action
     * @throws headgate.api.problem.InvalidValueException if there are none or too many
     */
    public static Action of(List<Phase> phases) {
        ProblemCollector problems = new ProblemCollector("action");
        problems.demand(
                !phases.isEmpty() && phases.size() <= MOST_PHASES,
                "phases",
                phases.size() + " phases",
                "must have 1 to " + MOST_PHASES + " phases; use Action.decline for none");
        problems.throwIfAny();
        return new Action(phases, null);
    }

    /**
     * Makes an action.
     *
     * @param phases its steps in order, 1 to 64
     * @return the action
     * @throws headgate.api.problem.InvalidValueException if there are none or too many
     */
    public static Action of(Phase... phases) {
        return of(List.of(phases));
    }

    /**
     * Refuses a task.
     *
     * @param reason why, for a person; 1 to 200 characters
     * @return the refusal
     * @throws headgate.api.problem.InvalidValueException if the reason is blank or too long
     */
    public static Action decline(String reason) {
        ProblemCollector problems = new ProblemCollector("refusal");
        problems.demand(
                !reason.isBlank() && reason.length() <= 200,
                "reason",
                reason.length() + " characters",
                "must have 1 to 200 characters");
        problems.throwIfAny();
        return new Action(List.of(), reason);
    }

    /** {@return the steps in order; empty if the task was declined} */
    public List<Phase> phases() {
        return phases;
    }

    /** {@return why the task was declined; empty if it was not} */
    public Optional<String> declined() {
        return Optional.ofNullable(declined);
    }

    /** {@return how long the head is busy, s; 0 if declined} */
    public double duration() {
        return phases.stream().mapToDouble(Phase::duration).sum();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Action that && phases.equals(that.phases) && Objects.equals(declined, that.declined);
    }

    @Override
    public int hashCode() {
        return Objects.hash(phases, declined);
    }

    /** {@return the phases, or the reason of the refusal} */
    @Override
    public String toString() {
        return declined == null ? "action " + phases : "declined: " + declined;
    }
}
