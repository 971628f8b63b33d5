package headgate.api.sheet;

import headgate.api.annotation.ApiStatus;
import headgate.api.problem.ProblemCollector;
import headgate.api.shape.Body;
import headgate.api.vocabulary.PostureName;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A named shape of the head. Its bodies hold all material, links and hoses, for every instant in which the posture is
 * named, the change from the posture before included, unless the sheet gives a {@link Transition} for that change.
 */
@ApiStatus(value = ApiStatus.Status.EXPERIMENTAL, since = "0.1.0")
public final class Posture {

    private final PostureName name;
    private final Body fixed;
    private final Body moving;
    private final Body carried;
    private final Reach region;

    private Posture(PostureName name, Body fixed, Body moving, Body carried, Reach region) {
        this.name = name;
        this.fixed = fixed;
        this.moving = moving;
        this.carried = carried;
        this.region = region;
    }

    /**
     * Begins a posture.
     *
     * @param name its name
     * @return a builder with no bodies and no region
     */
    public static Builder named(PostureName name) {
        return new Builder(name);
    }

    /** {@return the name} */
    public PostureName name() {
        return name;
    }

    /** {@return what does not move with the tool point, head frame} */
    public Body fixed() {
        return fixed;
    }

    /** {@return what moves with the tool point: its place when the tool point is at the origin} */
    public Body moving() {
        return moving;
    }

    /** {@return what the head holds (weed, plug, full tray): its place when the tool point is at the origin} */
    public Body carried() {
        return carried;
    }

    /** {@return where the tool point can be, head frame} */
    public Reach region() {
        return region;
    }

    private List<Object> parts() {
        return List.of(name, fixed, moving, carried, region);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Posture that && parts().equals(that.parts());
    }

    @Override
    public int hashCode() {
        return parts().hashCode();
    }

    /** {@return the name} */
    @Override
    public String toString() {
        return "posture " + name;
    }

    /** Collects the parts of a posture. */
    @ApiStatus(value = ApiStatus.Status.EXPERIMENTAL, since = "0.1.0")
    public static final class Builder {

        private final PostureName name;
        private Body fixed = Body.NONE;
        private Body moving = Body.NONE;
        private Body carried = Body.NONE;
        private @Nullable Reach region;

        private Builder(PostureName name) {
            this.name = Objects.requireNonNull(name, "name");
        }

        /**
         * Sets what does not move with the tool point.
         *
         * @param body the body, head frame
         * @return this builder
         */
        public Builder fixed(Body body) {
            this.fixed = Objects.requireNonNull(body);
            return this;
        }

        /**
         * Sets what moves with the tool point.
         *
         * @param body the body, placed for a tool point at the origin
         * @return this builder
         */
        public Builder moving(Body body) {
            this.moving = Objects.requireNonNull(body);
            return this;
        }

        /**
         * Sets what the head holds.
         *
         * @param body the body, placed for a tool point at the origin
         * @return this builder
         */
        public Builder carried(Body body) {
            this.carried = Objects.requireNonNull(body);
            return this;
        }

        /**
         * Sets where the tool point can be.
         *
         * @param reach the region, head frame
         * @return this builder
         */
        public Builder region(Reach reach) {
            this.region = reach;
            return this;
        }

        /**
         * Makes the posture.
         *
         * @return the posture
         * @throws headgate.api.problem.InvalidValueException if there is no region, no material, or a stowed or ready
         *     posture has a region of more than one point
         */
        public Posture build() {
            ProblemCollector problems = new ProblemCollector("posture " + name);
            problems.demand(
                    !(fixed.isEmpty() && moving.isEmpty()), "fixed, moving", "no prism", "must hold some material");
            problems.given("region", region);
            boolean single = name.equals(PostureName.STOWED) || name.equals(PostureName.READY);
            if (single && region != null) {
                problems.demand(
                        region.corners3().size() == 1, "region", region, "must be one tool point in this posture");
            }
            problems.throwIfAny();
            return new Posture(name, fixed, moving, carried, Objects.requireNonNull(region));
        }
    }
}
