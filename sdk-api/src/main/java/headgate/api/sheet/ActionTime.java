package headgate.api.sheet;

import headgate.api.annotation.ApiStatus;
import headgate.api.problem.ProblemCollector;
import java.util.List;

/**
 * How long a spot head is busy with one task: approach, work and return together.
 */
@ApiStatus(value = ApiStatus.Status.EXPERIMENTAL, since = "0.1.0")
public final class ActionTime {

    private final Figure least;
    private final Figure typical;
    private final Figure most;

    private ActionTime(Figure least, Figure typical, Figure most) {
        this.least = least;
        this.typical = typical;
        this.most = most;
    }

    /**
     * Makes an action time.
     *
     * @param least shortest time, s; more than 0
     * @param typical usual time, s; at least the shortest
     * @param most longest time, s; at least the usual, at most 600
     * @return the action time
     * @throws headgate.api.problem.InvalidValueException if a figure is out of bounds or order
     */
    public static ActionTime of(Figure least, Figure typical, Figure most) {
        ProblemCollector problems = new ProblemCollector("action time");
        problems.within("least", least.value(), 1e-3, 600.0, "s");
        problems.within("typical", typical.value(), 1e-3, 600.0, "s");
        problems.within("most", most.value(), 1e-3, 600.0, "s");
        problems.demand(
                least.value() <= typical.value() && typical.value() <= most.value(),
                "least, typical, most",
                least.value() + ", " + typical.value() + ", " + most.value() + " s",
                "must be in rising order");
        problems.throwIfAny();
        return new ActionTime(least, typical, most);
    }

    /** {@return the shortest time over the work range, s} */
    public Figure least() {
        return least;
    }

    /** {@return the usual time, s} */
    public Figure typical() {
        return typical;
    }

    /** {@return the longest time over the work range, s} */
    public Figure most() {
        return most;
    }

    private List<Object> parts() {
        return List.of(least, typical, most);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof ActionTime that && parts().equals(that.parts());
    }

    @Override
    public int hashCode() {
        return parts().hashCode();
    }

    /** {@return the three times} */
    @Override
    public String toString() {
        return least + ", " + typical + ", " + most + " s";
    }
}
