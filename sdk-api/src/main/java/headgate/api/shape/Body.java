package headgate.api.shape;

import headgate.api.annotation.ApiStatus;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** Material: some prisms, which may overlap. A body may be empty. */
@ApiStatus(value = ApiStatus.Status.EXPERIMENTAL, since = "0.1.0")
public final class Body {

    /** Most prisms that a body may have. */
    public static final int MOST_PRISMS = 256;

    /** The body without material. */
    public static final Body NONE = new Body(List.of());

    private final List<Prism> prisms;

    private Body(List<Prism> prisms) {
        this.prisms = List.copyOf(prisms);
    }

    /**
     * Makes a body.
     *
     * @param prisms its parts, at most 256
     * @return the body
     * @throws IllegalArgumentException if there are too many parts
     */
    public static Body of(List<Prism> prisms) {
        if (prisms.size() > MOST_PRISMS) {
            throw new IllegalArgumentException(
                    "a body must have at most " + MOST_PRISMS + " prisms, but has " + prisms.size());
        }
        return new Body(prisms);
    }

    /**
     * Makes a body.
     *
     * @param prisms its parts, at most 256
     * @return the body
     * @throws IllegalArgumentException if there are too many parts
     */
    public static Body of(Prism... prisms) {
        return of(List.of(prisms));
    }

    /** {@return the parts, in the order given} */
    public List<Prism> prisms() {
        return prisms;
    }

    /** {@return true if there is no material} */
    public boolean isEmpty() {
        return prisms.isEmpty();
    }

    /**
     * Moves the body.
     *
     * @param by the displacement
     * @return the moved body
     */
    public Body shifted(Point3 by) {
        return new Body(prisms.stream().map(p -> p.shifted(by)).toList());
    }

    /** {@return the body turned by 180 degrees about the z axis} */
    public Body turned() {
        return new Body(prisms.stream().map(Prism::turned).toList());
    }

    /**
     * Puts two bodies together.
     *
     * @param other the other body
     * @return a body with the parts of both
     */
    public Body and(Body other) {
        List<Prism> all = new ArrayList<>(prisms);
        all.addAll(other.prisms);
        return new Body(all);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Body that && prisms.equals(that.prisms);
    }

    @Override
    public int hashCode() {
        return Objects.hash(prisms);
    }

    /** {@return the parts} */
    @Override
    public String toString() {
        return "body " + prisms;
    }
}
