package headgate.api.sheet;

import headgate.api.annotation.ApiStatus;
import headgate.api.shape.Body;
import headgate.api.vocabulary.PostureName;
import java.util.List;
import java.util.Objects;

/**
 * What the head sweeps while it changes from one posture to another, where that leaves the two postures.
 */
@ApiStatus(value = ApiStatus.Status.EXPERIMENTAL, since = "0.1.0")
public final class Transition {

    private final PostureName from;
    private final PostureName to;
    private final Body swept;

    private Transition(PostureName from, PostureName to, Body swept) {
        this.from = from;
        this.to = to;
        this.swept = swept;
    }

    /**
     * Makes a transition.
     *
     * @param from the posture before
     * @param to the posture after
     * @param swept all space that material passes through during the change, head frame
     * @return the transition
     */
    public static Transition between(PostureName from, PostureName to, Body swept) {
        return new Transition(
                Objects.requireNonNull(from, "from"),
                Objects.requireNonNull(to, "to"),
                Objects.requireNonNull(swept, "swept"));
    }

    /** {@return the posture before} */
    public PostureName from() {
        return from;
    }

    /** {@return the posture after} */
    public PostureName to() {
        return to;
    }

    /** {@return all space that material passes through during the change, head frame} */
    public Body swept() {
        return swept;
    }

    private List<Object> parts() {
        return List.of(from, to, swept);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Transition that && parts().equals(that.parts());
    }

    @Override
    public int hashCode() {
        return parts().hashCode();
    }

    /** {@return the two postures} */
    @Override
    public String toString() {
        return "from " + from + " to " + to;
    }
}
