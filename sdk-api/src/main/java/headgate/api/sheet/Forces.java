package headgate.api.sheet;

import headgate.api.annotation.ApiStatus;
import headgate.api.problem.ProblemCollector;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The largest forces between tool and soil or plant, each in its own direction, at the tool point.
 */
@ApiStatus(value = ApiStatus.Status.EXPERIMENTAL, since = "0.1.0")
public final class Forces {

    private final Figure pull;
    private final Figure press;
    private final Figure side;
    private final Figure draft;
    private final @Nullable Breakaway breakaway;

    private Forces(Figure pull, Figure press, Figure side, Figure draft, @Nullable Breakaway breakaway) {
        this.pull = pull;
        this.press = press;
        this.side = side;
        this.draft = draft;
        this.breakaway = breakaway;
    }

    /**
     * Makes the forces of a tool that gives way.
     *
     * @param pull largest upward pull, N; 0 to 100 000
     * @param press largest downward press, N; 0 to 100 000
     * @param side largest sideways force, N; 0 to 100 000
     * @param draft largest force against travel, N; 0 to 100 000
     * @param breakaway when the tool gives way
     * @return the forces
     * @throws headgate.api.problem.InvalidValueException if a figure is out of bounds
     */
    public static Forces of(Figure pull, Figure press, Figure side, Figure draft, Breakaway breakaway) {
        return checked(pull, press, side, draft, Objects.requireNonNull(breakaway, "breakaway"));
    }

    /**
     * Makes the forces of a tool that does not give way.
     *
     * @param pull largest upward pull, N; 0 to 100 000
     * @param press largest downward press, N; 0 to 100 000
     * @param side largest sideways force, N; 0 to 100 000
     * @param draft largest force against travel, N; 0 to 100 000
     * @return the forces
     * @throws headgate.api.problem.InvalidValueException if a figure is out of bounds
     */
    public static Forces rigid(Figure pull, Figure press, Figure side, Figure draft) {
        return checked(pull, press, side, draft, null);
    }

    private static Forces checked(Figure pull, Figure press, Figure side, Figure draft, @Nullable Breakaway breakaway) {
        ProblemCollector problems = new ProblemCollector("forces");
        problems.within("pull", pull.value(), 0.0, 100_000.0, "N");
        problems.within("press", press.value(), 0.0, 100_000.0, "N");
        problems.within("side", side.value(), 0.0, 100_000.0, "N");
        problems.within("draft", draft.value(), 0.0, 100_000.0, "N");
        problems.throwIfAny();
        return new Forces(pull, press, side, draft, breakaway);
    }

    /** {@return the largest upward pull on plant or soil, N: it loads the mount downward} */
    public Figure pull() {
        return pull;
    }

    /** {@return the largest downward press on soil, N: it loads the mount upward} */
    public Figure press() {
        return press;
    }

    /** {@return the largest sideways force, either way, N} */
    public Figure side() {
        return side;
    }

    /** {@return the largest force against travel, N} */
    public Figure draft() {
        return draft;
    }

    /** {@return when the tool gives way; empty if it does not} */
    public Optional<Breakaway> breakaway() {
        return Optional.ofNullable(breakaway);
    }

    private List<@Nullable Object> parts() {
        return Arrays.<@Nullable Object>asList(pull, press, side, draft, breakaway);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Forces that && parts().equals(that.parts());
    }

    @Override
    public int hashCode() {
        return parts().hashCode();
    }

    /** {@return the forces} */
    @Override
    public String toString() {
        return "pull " + pull + ", press " + press + ", side " + side + ", draft " + draft + " N";
    }
}
