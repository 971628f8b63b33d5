package headgate.api.answer;

import headgate.api.annotation.ApiStatus;
import headgate.api.problem.ProblemCollector;
import headgate.api.shape.Outline;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** How a continuous head works a stretch of row, or a refusal with its reason. */
@ApiStatus(value = ApiStatus.Status.EXPERIMENTAL, since = "0.1.0")
public final class Engagement {

    private final @Nullable Outline engaged;
    private final double depth;
    private final double draft;
    private final double insertTime;
    private final double withdrawTime;
    private final double followingSpeed;
    private final double followingAcceleration;
    private final @Nullable String declined;

    private Engagement(Builder from, @Nullable String declined) {
        this.engaged = from.engaged;
        this.depth = from.depth;
        this.draft = from.draft;
        this.insertTime = from.insertTime;
        this.withdrawTime = from.withdrawTime;
        this.followingSpeed = from.followingSpeed;
        this.followingAcceleration = from.followingAcceleration;
        this.declined = declined;
    }

    /** {@return a builder without any figure} */
    public static Builder builder() {
        return new Builder();
    }

    /**
     * Refuses a task.
     *
     * @param reason why, for a person; 1 to 200 characters
     * @return the refusal
     * @throws headgate.api.problem.InvalidValueException if the reason is blank or too long
     */
    public static Engagement decline(String reason) {
        ProblemCollector problems = new ProblemCollector("refusal");
        problems.demand(
                !reason.isBlank() && reason.length() <= 200,
                "reason",
                reason.length() + " characters",
                "must have 1 to 200 characters");
        problems.throwIfAny();
        Builder nothing = new Builder();
        nothing.depth = 0;
        nothing.draft = 0;
        nothing.insertTime = 0;
        nothing.withdrawTime = 0;
        nothing.followingSpeed = 0;
        nothing.followingAcceleration = 0;
        return new Engagement(nothing, reason);
    }

    /** {@return the ground that the tool works, head frame; empty if declined} */
    public Optional<Outline> engaged() {
        return Optional.ofNullable(engaged);
    }

    /** {@return the depth below ground, m; 0 or more} */
    public double depth() {
        return depth;
    }

    /** {@return the horizontal force against travel, N; 0 or more} */
    public double draft() {
        return draft;
    }

    /** {@return the time from lifted clear to full depth, s; 0 or more} */
    public double insertTime() {
        return insertTime;
    }

    /** {@return the time from full depth to lifted clear, s; 0 or more} */
    public double withdrawTime() {
        return withdrawTime;
    }

    /** {@return the fastest vertical speed at which the tool follows the ground, m/s; 0 or more} */
    public double followingSpeed() {
        return followingSpeed;
    }

    /** {@return the largest vertical acceleration with which the tool follows the ground, m/s²; 0 or more} */
    public double followingAcceleration() {
        return followingAcceleration;
    }

    /** {@return why the task was declined; empty if it was not} */
    public Optional<String> declined() {
        return Optional.ofNullable(declined);
    }

    private List<@Nullable Object> parts() {
        return Arrays.<@Nullable Object>asList(
                engaged, depth, draft, insertTime, withdrawTime, followingSpeed, followingAcceleration, declined);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Engagement that && parts().equals(that.parts());
    }

    @Override
    public int hashCode() {
        return parts().hashCode();
    }

    /** {@return depth, draft and times, or the reason of the refusal} */
    @Override
    public String toString() {
        return declined == null
                ? "engagement, depth " + depth + " m, draft " + draft + " N, in " + insertTime + " s, out "
                        + withdrawTime + " s"
                : "declined: " + declined;
    }

    /** Collects the parts of an engagement. */
    @ApiStatus(value = ApiStatus.Status.EXPERIMENTAL, since = "0.1.0")
    public static final class Builder {

        private @Nullable Outline engaged;
        private double depth = Double.NaN;
        private double draft = Double.NaN;
        private double insertTime = Double.NaN;
        private double withdrawTime = Double.NaN;
        private double followingSpeed = Double.NaN;
        private double followingAcceleration = Double.NaN;

        private Builder() {}

        /**
         * Sets the ground that the tool works.
         *
         * @param outline outline in the head frame
         * @return this builder
         */
        public Builder engaged(Outline outline) {
            this.engaged = outline;
            return this;
        }

        /**
         * Sets the depth.
         *
         * @param metres depth below ground, m; 0 to 1
         * @return this builder
         */
        public Builder depth(double metres) {
            this.depth = metres;
            return this;
        }

        /**
         * Sets the draft.
         *
         * @param newtons horizontal force against travel, N; 0 to 100 000
         * @return this builder
         */
        public Builder draft(double newtons) {
            this.draft = newtons;
            return this;
        }

        /**
         * Sets the time to go in.
         *
         * @param seconds from lifted clear to full depth, s; 0 to 60
         * @return this builder
         */
        public Builder insertTime(double seconds) {
            this.insertTime = seconds;
            return this;
        }

        /**
         * Sets the time to come out.
         *
         * @param seconds from full depth to lifted clear, s; 0 to 60
         * @return this builder
         */
        public Builder withdrawTime(double seconds) {
            this.withdrawTime = seconds;
            return this;
        }

        /**
         * Sets how well the tool follows the ground.
         *
         * @param speed fastest vertical speed, m/s; 0 to 10
         * @param acceleration largest vertical acceleration, m/s²; 0 to 100
         * @return this builder
         */
        public Builder following(double speed, double acceleration) {
            this.followingSpeed = speed;
            this.followingAcceleration = acceleration;
            return this;
        }

        /**
         * Makes the engagement.
         *
         * @return the engagement
         * @throws headgate.api.problem.InvalidValueException naming every field that is missing or out of bounds
         */
        public Engagement build() {
            ProblemCollector problems = new ProblemCollector("engagement");
            problems.given("engaged", engaged);
            problems.within("depth", depth, 0.0, 1.0, "m");
            problems.within("draft", draft, 0.0, 100_000.0, "N");
            problems.within("insertTime", insertTime, 0.0, 60.0, "s");
            problems.within("withdrawTime", withdrawTime, 0.0, 60.0, "s");
            problems.within("following speed", followingSpeed, 0.0, 10.0, "m/s");
            problems.within("following acceleration", followingAcceleration, 0.0, 100.0, "m/s2");
            problems.throwIfAny();
            return new Engagement(this, null);
        }
    }
}
