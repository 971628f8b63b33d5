package headgate.api.sheet;

import headgate.api.annotation.ApiStatus;
import headgate.api.problem.ProblemCollector;
import java.util.List;

/**
 * The electric power that a head takes from its arm.
 */
@ApiStatus(value = ApiStatus.Status.EXPERIMENTAL, since = "0.1.0")
public final class PowerDraw {

    private final Figure idle;
    private final Figure working;
    private final Figure peak;

    private PowerDraw(Figure idle, Figure working, Figure peak) {
        this.idle = idle;
        this.working = working;
        this.peak = peak;
    }

    /**
     * Makes a power draw.
     *
     * @param idle power while ready, W; 0 or more
     * @param working mean power at work, W; 0 or more
     * @param peak highest power for longer than 10 ms, W; at least the mean, at most 100 000
     * @return the power draw
     * @throws headgate.api.problem.InvalidValueException if a figure is out of bounds or order
     */
    public static PowerDraw of(Figure idle, Figure working, Figure peak) {
        ProblemCollector problems = new ProblemCollector("power");
        problems.within("idle", idle.value(), 0.0, 100_000.0, "W");
        problems.within("working", working.value(), 0.0, 100_000.0, "W");
        problems.within("peak", peak.value(), 0.0, 100_000.0, "W");
        problems.demand(
                !(working.value() > peak.value()) && !(idle.value() > peak.value()),
                "peak",
                peak.value() + " W",
                "must be at least the idle and the working power");
        problems.throwIfAny();
        return new PowerDraw(idle, working, peak);
    }

    /** {@return the power while ready, W} */
    public Figure idle() {
        return idle;
    }

    /** {@return the mean power during an action or while engaged, W} */
    public Figure working() {
        return working;
    }

    /** {@return the highest power for longer than 10 ms, W} */
    public Figure peak() {
        return peak;
    }

    private List<Object> parts() {
        return List.of(idle, working, peak);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof PowerDraw that && parts().equals(that.parts());
    }

    @Override
    public int hashCode() {
        return parts().hashCode();
    }

    /** {@return the three powers} */
    @Override
    public String toString() {
        return idle + ", " + working + ", " + peak + " W";
    }
}
