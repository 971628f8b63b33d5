package headgate.api.sheet;

import headgate.api.annotation.ApiStatus;
import headgate.api.problem.ProblemCollector;
import headgate.api.vocabulary.PlantClass;
import headgate.api.vocabulary.SoilClass;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** The tasks that a head is made for. Within it every method of the head must answer. */
@ApiStatus(value = ApiStatus.Status.EXPERIMENTAL, since = "0.1.0")
public final class WorkRange {

    private final Range groundSpeed;
    private final Set<PlantClass> plantClasses;
    private final Range stemDiameter;
    private final Range plantHeight;
    private final Set<SoilClass> soils;
    private final Range moisture;
    private final Range depth;

    private WorkRange(Builder from) {
        this.groundSpeed = Objects.requireNonNull(from.groundSpeed);
        this.plantClasses = Collections.unmodifiableSortedSet(new TreeSet<>(from.plantClasses));
        this.stemDiameter = Objects.requireNonNull(from.stemDiameter);
        this.plantHeight = Objects.requireNonNull(from.plantHeight);
        this.soils = Collections.unmodifiableSortedSet(new TreeSet<>(from.soils));
        this.moisture = Objects.requireNonNull(from.moisture);
        this.depth = Objects.requireNonNull(from.depth);
    }

    /** {@return a builder without any range} */
    public static Builder builder() {
        return new Builder();
    }

    /** {@return the ground speed, m/s} */
    public Range groundSpeed() {
        return groundSpeed;
    }

    /** {@return the plants it treats, sorted by name; empty for a head that is not about plants} */
    public Set<PlantClass> plantClasses() {
        return plantClasses;
    }

    /** {@return the stem diameter, m; for plugs the plug's diameter} */
    public Range stemDiameter() {
        return stemDiameter;
    }

    /** {@return the plant's height over the ground, m} */
    public Range plantHeight() {
        return plantHeight;
    }

    /** {@return the soils it works in, sorted by name} */
    public Set<SoilClass> soils() {
        return soils;
    }

    /** {@return the soil's water content by volume, 0 to 1} */
    public Range moisture() {
        return moisture;
    }

    /** {@return how far below the ground the tool point goes, m; 0 for a tool that stays above} */
    public Range depth() {
        return depth;
    }

    private List<Object> parts() {
        return Arrays.asList(groundSpeed, plantClasses, stemDiameter, plantHeight, soils, moisture, depth);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof WorkRange that && parts().equals(that.parts());
    }

    @Override
    public int hashCode() {
        return parts().hashCode();
    }

    /** {@return the ranges} */
    @Override
    public String toString() {
        return "work range " + parts();
    }

    /** Collects the ranges. */
    @ApiStatus(value = ApiStatus.Status.EXPERIMENTAL, since = "0.1.0")
    public static final class Builder {

        private @Nullable Range groundSpeed;
        private Set<PlantClass> plantClasses = Set.of();
        private @Nullable Range stemDiameter;
        private @Nullable Range plantHeight;
        private Set<SoilClass> soils = Set.of();
        private @Nullable Range moisture;
        private @Nullable Range depth;

        private Builder() {}

        /**
         * Sets the ground speed.
         *
         * @param range speed, m/s; within 0 to 10
         * @return this builder
         */
        public Builder groundSpeed(Range range) {
            this.groundSpeed = range;
            return this;
        }

        /**
         * Sets the plants that it treats.
         *
         * @param classes the classes; none for a head that is not about plants
         * @return this builder
         */
        public Builder plantClasses(PlantClass... classes) {
            this.plantClasses = new TreeSet<>(Arrays.asList(classes));
            return this;
        }

        /**
         * Sets the stem diameter.
         *
         * @param range diameter, m; within 0 to 0.5
         * @return this builder
         */
        public Builder stemDiameter(Range range) {
            this.stemDiameter = range;
            return this;
        }

        /**
         * Sets the plant's height.
         *
         * @param range height over the ground, m; within 0 to 5
         * @return this builder
         */
        public Builder plantHeight(Range range) {
            this.plantHeight = range;
            return this;
        }

        /**
         * Sets the soils.
         *
         * @param classes the soils; at least one
         * @return this builder
         */
        public Builder soils(SoilClass... classes) {
            this.soils = new TreeSet<>(Arrays.asList(classes));
            return this;
        }

        /**
         * Sets the soil's water content.
         *
         * @param range content by volume; within 0 to 1
         * @return this builder
         */
        public Builder moisture(Range range) {
            this.moisture = range;
            return this;
        }

        /**
         * Sets how far below the ground the tool point goes.
         *
         * @param range depth, m; within 0 to 1
         * @return this builder
         */
        public Builder depth(Range range) {
            this.depth = range;
            return this;
        }

        /**
         * Makes the work range.
         *
         * @return the work range
         * @throws headgate.api.problem.InvalidValueException naming every range that is missing or out of bounds
         */
        public WorkRange build() {
            ProblemCollector problems = new ProblemCollector("work range");
            within(problems, "groundSpeed", groundSpeed, 10.0, "m/s");
            within(problems, "stemDiameter", stemDiameter, 0.5, "m");
            within(problems, "plantHeight", plantHeight, 5.0, "m");
            problems.demand(!soils.isEmpty(), "soils", "none", "must name at least one soil");
            within(problems, "moisture", moisture, 1.0, "");
            within(problems, "depth", depth, 1.0, "m");
            problems.throwIfAny();
            return new WorkRange(this);
        }

        private static void within(
                ProblemCollector problems, String field, @Nullable Range range, double most, String unit) {
            if (problems.given(field, range)) {
                Range given = Objects.requireNonNull(range);
                problems.within(field, given.least(), 0.0, most, unit);
                problems.within(field, given.most(), 0.0, most, unit);
            }
        }
    }
}
