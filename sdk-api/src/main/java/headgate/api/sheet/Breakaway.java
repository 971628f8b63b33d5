package headgate.api.sheet;

import headgate.api.annotation.ApiStatus;
import headgate.api.problem.ProblemCollector;
import java.util.List;

/**
 * The force at which a soil tool gives way, and how far it then moves.
 */
@ApiStatus(value = ApiStatus.Status.EXPERIMENTAL, since = "0.1.0")
public final class Breakaway {

    private final Figure force;
    private final Figure stroke;

    private Breakaway(Figure force, Figure stroke) {
        this.force = force;
        this.stroke = stroke;
    }

    /**
     * Makes a breakaway.
     *
     * @param force force at which the tool gives way, N; more than 0, at most 100 000
     * @param stroke how far the tool point then moves, m; 0 to 2
     * @return the breakaway
     * @throws headgate.api.problem.InvalidValueException if a figure is out of bounds
     */
    public static Breakaway of(Figure force, Figure stroke) {
        ProblemCollector problems = new ProblemCollector("breakaway");
        problems.within("force", force.value(), 1e-3, 100_000.0, "N");
        problems.within("stroke", stroke.value(), 0.0, 2.0, "m");
        problems.throwIfAny();
        return new Breakaway(force, stroke);
    }

    /** {@return the horizontal force at the tool point at which it gives way, N} */
    public Figure force() {
        return force;
    }

    /** {@return how far the tool point moves once it has given way, m} */
    public Figure stroke() {
        return stroke;
    }

    private List<Object> parts() {
        return List.of(force, stroke);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Breakaway that && parts().equals(that.parts());
    }

    @Override
    public int hashCode() {
        return parts().hashCode();
    }

    /** {@return force and stroke} */
    @Override
    public String toString() {
        return force + " N over " + stroke + " m";
    }
}
