package headgate.api.answer;

import headgate.api.annotation.ApiStatus;
import headgate.api.problem.ProblemCollector;
import headgate.api.shape.Outline;
import headgate.api.shape.Point3;
import headgate.api.vocabulary.PostureName;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * One step of an action. During it the tool point moves in a straight line at constant speed from where the phase
 * before ended (the ready tool point, for the first) to {@link #toolPoint()}.
 */
@ApiStatus(value = ApiStatus.Status.EXPERIMENTAL, since = "0.1.0")
public final class Phase {

    /** Longest duration of a phase, s. */
    public static final double LONGEST = 600.0;

    private final String name;
    private final double duration;
    private final Point3 toolPoint;
    private final PostureName posture;
    private final Contact contact;
    private final @Nullable Outline treated;

    private Phase(
            String name,
            double duration,
            Point3 toolPoint,
            PostureName posture,
            Contact contact,
            @Nullable Outline treated) {
        this.name = name;
        this.duration = duration;
        this.toolPoint = toolPoint;
        this.posture = posture;
        this.contact = contact;
        this.treated = treated;
    }

    /**
     * Begins a phase.
     *
     * @param name what the head does in it, such as "close fingers"; 1 to 60 characters
     * @return a builder
     */
    public static Builder named(String name) {
        return new Builder(name);
    }

    /** {@return what the head does in it} */
    public String name() {
        return name;
    }

    /** {@return how long it takes, s; 0 to 600} */
    public double duration() {
        return duration;
    }

    /** {@return where the tool point is at its end, head frame} */
    public Point3 toolPoint() {
        return toolPoint;
    }

    /** {@return the posture that the head is in for the whole phase} */
    public PostureName posture() {
        return posture;
    }

    /** {@return what the head touches} */
    public Contact contact() {
        return contact;
    }

    /** {@return the ground treated in this phase, as an outline about the tool point; empty if it treats none} */
    public Optional<Outline> treated() {
        return Optional.ofNullable(treated);
    }

    private List<@Nullable Object> parts() {
        return Arrays.<@Nullable Object>asList(name, duration, toolPoint, posture, contact, treated);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Phase that && parts().equals(that.parts());
    }

    @Override
    public int hashCode() {
        return parts().hashCode();
    }

    /** {@return name, duration, posture and contact} */
    @Override
    public String toString() {
        return name + " " + duration + " s, " + posture + ", " + contact + ", to " + toolPoint;
    }

    /** Collects the parts of a phase. */
    @ApiStatus(value = ApiStatus.Status.EXPERIMENTAL, since = "0.1.0")
    public static final class Builder {

        private final String name;
        private double duration = Double.NaN;
        private @Nullable Point3 toolPoint;
        private @Nullable PostureName posture;
        private @Nullable Contact contact;
        private @Nullable Outline treated;

        private Builder(String name) {
            this.name = Objects.requireNonNull(name, "name");
        }

        /**
         * Sets how long the phase takes.
         *
         * @param seconds duration, s; 0 to 600
         * @return this builder
         */
        public Builder lasting(double seconds) {
            this.duration = seconds;
            return this;
        }

        /**
         * Sets where the tool point is at the end.
         *
         * @param point the point, head frame
         * @return this builder
         */
        public Builder endingAt(Point3 point) {
            this.toolPoint = point;
            return this;
        }

        /**
         * Sets the posture.
         *
         * @param name one of the sheet's postures
         * @return this builder
         */
        public Builder in(PostureName name) {
            this.posture = name;
            return this;
        }

        /**
         * Sets what the head touches.
         *
         * @param label the contact
         * @return this builder
         */
        public Builder touching(Contact label) {
            this.contact = label;
            return this;
        }

        /**
         * Sets the ground that is treated.
         *
         * @param outline outline about the tool point, rounded inward where it approximates
         * @return this builder
         */
        public Builder treating(Outline outline) {
            this.treated = outline;
            return this;
        }

        /**
         * Makes the phase.
         *
         * @return the phase
         * @throws headgate.api.problem.InvalidValueException naming every field that is missing or out of bounds
         */
        public Phase build() {
            ProblemCollector problems = new ProblemCollector("phase \"" + name + "\"");
            problems.demand(
                    !name.isBlank() && name.length() <= 60, "name", '"' + name + '"', "must have 1 to 60 characters");
            if (Double.isNaN(duration)) {
                problems.given("lasting", null);
            } else {
                problems.within("lasting", duration, 0.0, LONGEST, "s");
            }
            problems.given("endingAt", toolPoint);
            problems.given("in", posture);
            problems.given("touching", contact);
            problems.throwIfAny();
            return new Phase(
                    name,
                    duration,
                    Objects.requireNonNull(toolPoint),
                    Objects.requireNonNull(posture),
                    Objects.requireNonNull(contact),
                    treated);
        }
    }
}
