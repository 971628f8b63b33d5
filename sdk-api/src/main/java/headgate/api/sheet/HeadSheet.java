package headgate.api.sheet;

import headgate.api.annotation.ApiStatus;
import headgate.api.problem.ProblemCollector;
import headgate.api.shape.Point3;
import headgate.api.vocabulary.Operation;
import headgate.api.vocabulary.PostureName;
import headgate.api.vocabulary.PowerLossState;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What a head says of itself. Identity (id, version, provider) stands in the JAR's manifest and not here. Frame: the
 * head frame, origin at the centre of the mount plate.
 */
@ApiStatus(value = ApiStatus.Status.EXPERIMENTAL, since = "0.1.0")
public final class HeadSheet {

    private final Operation operation;
    private final boolean turnable;
    private final PlateDesignation plate;
    private final List<Connector> connectors;
    private final MassPoint empty;
    private final MassPoint full;
    private final MassPoint soiled;
    private final List<Posture> postures;
    private final List<Transition> transitions;
    private final @Nullable ActionTime actionTime;
    private final PowerDraw power;
    private final Forces forces;
    private final Accuracy accuracy;
    private final WorkRange workRange;
    private final List<Supply> supplies;
    private final List<Hazard> hazards;
    private final @Nullable List<Drop> drops;
    private final Figure withdrawTime;
    private final PowerLossState onPowerLoss;
    private final String hardwareRevision;

    private HeadSheet(Builder from) {
        this.operation = Objects.requireNonNull(from.operation);
        this.turnable = from.turnable;
        this.plate = Objects.requireNonNull(from.plate);
        this.connectors = List.copyOf(from.connectors);
        this.empty = Objects.requireNonNull(from.empty);
        this.full = Objects.requireNonNull(from.full);
        this.soiled = Objects.requireNonNull(from.soiled);
        this.postures = List.copyOf(from.postures);
        this.transitions = List.copyOf(from.transitions);
        this.actionTime = from.actionTime;
        this.power = Objects.requireNonNull(from.power);
        this.forces = Objects.requireNonNull(from.forces);
        this.accuracy = Objects.requireNonNull(from.accuracy);
        this.workRange = Objects.requireNonNull(from.workRange);
        this.supplies = List.copyOf(from.supplies);
        this.hazards = List.copyOf(from.hazards);
        this.drops = from.drops;
        this.withdrawTime = Objects.requireNonNull(from.withdrawTime);
        this.onPowerLoss = Objects.requireNonNull(from.onPowerLoss);
        this.hardwareRevision = Objects.requireNonNull(from.hardwareRevision);
    }

    /** {@return a builder without any figure; not turnable} */
    public static Builder builder() {
        return new Builder();
    }

    /** {@return a builder that holds everything this sheet says} */
    public Builder toBuilder() {
        Builder copy = new Builder();
        copy.operation = operation;
        copy.turnable = turnable;
        copy.plate = plate;
        copy.connectors.addAll(connectors);
        copy.empty = empty;
        copy.full = full;
        copy.soiled = soiled;
        copy.postures.addAll(postures);
        copy.transitions.addAll(transitions);
        copy.actionTime = actionTime;
        copy.power = power;
        copy.forces = forces;
        copy.accuracy = accuracy;
        copy.workRange = workRange;
        copy.supplies.addAll(supplies);
        copy.hazards.addAll(hazards);
        copy.drops = drops;
        copy.withdrawTime = withdrawTime;
        copy.onPowerLoss = onPowerLoss;
        copy.hardwareRevision = hardwareRevision;
        return copy;
    }

    /** {@return what it does to the field} */
    public Operation operation() {
        return operation;
    }

    /** {@return true if it may be fitted turned by 180 degrees about the vertical axis} */
    public boolean turnable() {
        return turnable;
    }

    /** {@return the mount plate that it bolts to} */
    public PlateDesignation plate() {
        return plate;
    }

    /** {@return the connectors that it needs} */
    public List<Connector> connectors() {
        return connectors;
    }

    /** {@return mass and centre, clean, with all supplies used up} */
    public MassPoint empty() {
        return empty;
    }

    /** {@return mass and centre, clean, with all supplies full} */
    public MassPoint full() {
        return full;
    }

    /** {@return mass and centre, full and with the soil that sticks to it after a day's work} */
    public MassPoint soiled() {
        return soiled;
    }

    /** {@return the postures, in the order given; stowed, ready and work are among them} */
    public List<Posture> postures() {
        return postures;
    }

    /**
     * Finds a posture.
     *
     * @param name its name
     * @return the posture, or empty if the sheet has none of that name
     */
    public Optional<Posture> posture(PostureName name) {
        return postures.stream().filter(p -> p.name().equals(name)).findFirst();
    }

    /** {@return the region of tool points at work} */
    public Reach reach() {
        return posture(PostureName.WORK).orElseThrow().region();
    }

    /** {@return where the tool point is before and after each action} */
    public Point3 readyToolPoint() {
        return posture(PostureName.READY).orElseThrow().region().corners3().get(0);
    }

    /** {@return changes of posture whose sweep leaves the two postures} */
    public List<Transition> transitions() {
        return transitions;
    }

    /** {@return how long one action takes; empty for a continuous head} */
    public Optional<ActionTime> actionTime() {
        return Optional.ofNullable(actionTime);
    }

    /** {@return the electric power that it takes} */
    public PowerDraw power() {
        return power;
    }

    /** {@return the forces between tool and soil or plant} */
    public Forces forces() {
        return forces;
    }

    /** {@return how well it puts its tool point} */
    public Accuracy accuracy() {
        return accuracy;
    }

    /** {@return the tasks that it is made for} */
    public WorkRange workRange() {
        return workRange;
    }

    /** {@return what it uses up} */
    public List<Supply> supplies() {
        return supplies;
    }

    /** {@return how it can hurt somebody, and what is done about it} */
    public List<Hazard> hazards() {
        return hazards;
    }

    /**
     * What it lets fall.
     *
     * @return its drops; none if it says that it drops nothing; empty if it does not say
     */
    public Optional<List<Drop>> drops() {
        return Optional.ofNullable(drops);
    }

    /** {@return the longest time to leave soil and canopy when told to, from any point of an action, s} */
    public Figure withdrawTime() {
        return withdrawTime;
    }

    /** {@return what it does by itself when its supply fails} */
    public PowerLossState onPowerLoss() {
        return onPowerLoss;
    }

    /** {@return the revision of the hardware that the sheet describes} */
    public String hardwareRevision() {
        return hardwareRevision;
    }

    private List<@Nullable Object> parts() {
        return Arrays.<@Nullable Object>asList(
                operation,
                turnable,
                plate,
                connectors,
                empty,
                full,
                soiled,
                postures,
                transitions,
                actionTime,
                power,
                forces,
                accuracy,
                workRange,
                supplies,
                hazards,
                drops,
                withdrawTime,
                onPowerLoss,
                hardwareRevision);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof HeadSheet that && parts().equals(that.parts());
    }

    @Override
    public int hashCode() {
        return parts().hashCode();
    }

    /** {@return operation and hardware revision} */
    @Override
    public String toString() {
        return "sheet of a head that does " + operation + ", revision " + hardwareRevision;
    }

    /** Collects what a head says of itself. */
    @ApiStatus(value = ApiStatus.Status.EXPERIMENTAL, since = "0.1.0")
    public static final class Builder {

        private @Nullable Operation operation;
        private boolean turnable;
        private @Nullable PlateDesignation plate;
        private final List<Connector> connectors = new ArrayList<>();
        private @Nullable MassPoint empty;
        private @Nullable MassPoint full;
        private @Nullable MassPoint soiled;
        private final List<Posture> postures = new ArrayList<>();
        private final List<Transition> transitions = new ArrayList<>();
        private @Nullable ActionTime actionTime;
        private @Nullable PowerDraw power;
        private @Nullable Forces forces;
        private @Nullable Accuracy accuracy;
        private @Nullable WorkRange workRange;
        private final List<Supply> supplies = new ArrayList<>();
        private final List<Hazard> hazards = new ArrayList<>();
        private @Nullable List<Drop> drops;
        private @Nullable Figure withdrawTime;
        private @Nullable PowerLossState onPowerLoss;
        private @Nullable String hardwareRevision;

        private Builder() {}

        /**
         * Sets what it does to the field.
         *
         * @param value the operation
         * @return this builder
         */
        public Builder operation(Operation value) {
            this.operation = value;
            return this;
        }

        /**
         * Says whether it may be fitted turned by 180 degrees.
         *
         * @param value true if it may; false unless set
         * @return this builder
         */
        public Builder turnable(boolean value) {
            this.turnable = value;
            return this;
        }

        /**
         * Sets the mount plate.
         *
         * @param value the designation
         * @return this builder
         */
        public Builder plate(PlateDesignation value) {
            this.plate = value;
            return this;
        }

        /**
         * Sets the connectors.
         *
         * @param values all that it needs
         * @return this builder
         */
        public Builder connectors(Connector... values) {
            connectors.clear();
            connectors.addAll(List.of(values));
            return this;
        }

        /**
         * Sets mass and centre in the three states.
         *
         * @param emptied clean, with all supplies used up
         * @param filled clean, with all supplies full; no lighter than empty
         * @param dirty full, with the soil that sticks to it; no lighter than full
         * @return this builder
         */
        public Builder mass(MassPoint emptied, MassPoint filled, MassPoint dirty) {
            this.empty = emptied;
            this.full = filled;
            this.soiled = dirty;
            return this;
        }

        /**
         * Sets the postures.
         *
         * @param values stowed, ready, work and any others, each name once
         * @return this builder
         */
        public Builder postures(Posture... values) {
            return postures(List.of(values));
        }

        /**
         * Sets the postures.
         *
         * @param values stowed, ready, work and any others, each name once
         * @return this builder
         */
        public Builder postures(List<Posture> values) {
            List<Posture> given = List.copyOf(values);
            postures.clear();
            postures.addAll(given);
            return this;
        }

        /**
         * Sets the transitions.
         *
         * @param values changes of posture whose sweep leaves the two postures
         * @return this builder
         */
        public Builder transitions(Transition... values) {
            return transitions(List.of(values));
        }

        /**
         * Sets the transitions.
         *
         * @param values changes of posture whose sweep leaves the two postures
         * @return this builder
         */
        public Builder transitions(List<Transition> values) {
            List<Transition> given = List.copyOf(values);
            transitions.clear();
            transitions.addAll(given);
            return this;
        }

        /**
         * Sets how long one action takes; a spot head needs it, a continuous head has none.
         *
         * @param value the action time
         * @return this builder
         */
        public Builder actionTime(ActionTime value) {
            this.actionTime = value;
            return this;
        }

        /**
         * Sets the electric power.
         *
         * @param value the power draw
         * @return this builder
         */
        public Builder power(PowerDraw value) {
            this.power = value;
            return this;
        }

        /**
         * Sets the forces between tool and soil or plant.
         *
         * @param value the forces
         * @return this builder
         */
        public Builder forces(Forces value) {
            this.forces = value;
            return this;
        }

        /**
         * Sets how well it puts its tool point.
         *
         * @param value the accuracy
         * @return this builder
         */
        public Builder accuracy(Accuracy value) {
            this.accuracy = value;
            return this;
        }

        /**
         * Sets the tasks that it is made for.
         *
         * @param value the work range
         * @return this builder
         */
        public Builder workRange(WorkRange value) {
            this.workRange = value;
            return this;
        }

        /**
         * Sets what it uses up.
         *
         * @param values the supplies
         * @return this builder
         */
        public Builder supplies(Supply... values) {
            supplies.clear();
            supplies.addAll(List.of(values));
            return this;
        }

        /**
         * Sets how it can hurt somebody.
         *
         * @param values the hazards
         * @return this builder
         */
        public Builder hazards(Hazard... values) {
            hazards.clear();
            hazards.addAll(List.of(values));
            return this;
        }

        /**
         * Says what it lets fall: everything that leaves the head and comes to lie on the ground beside the place where it was
         * taken. What stays where it stood does not fall.
         *
         * @param values its drops; none if it drops nothing
         * @return this builder
         */
        public Builder drops(Drop... values) {
            return drops(List.of(values));
        }

        /**
         * Says what it lets fall.
         *
         * @param values its drops; none if it drops nothing
         * @return this builder
         */
        public Builder drops(List<Drop> values) {
            this.drops = List.copyOf(values);
            return this;
        }

        /**
         * Sets the time to leave soil and canopy.
         *
         * @param value longest time from any point of an action, s; 0 to 60
         * @return this builder
         */
        public Builder withdrawTime(Figure value) {
            this.withdrawTime = value;
            return this;
        }

        /**
         * Sets what it does when its supply fails.
         *
         * @param value the state
         * @return this builder
         */
        public Builder onPowerLoss(PowerLossState value) {
            this.onPowerLoss = value;
            return this;
        }

        /**
         * Sets the hardware's revision.
         *
         * @param value the revision, 1 to 60 characters
         * @return this builder
         */
        public Builder hardwareRevision(String value) {
            this.hardwareRevision = value;
            return this;
        }

        /**
         * Makes the sheet.
         *
         * @return the sheet
         * @throws headgate.api.problem.InvalidValueException naming every field that is missing or out of bounds
         */
        public HeadSheet build() {
            ProblemCollector problems = new ProblemCollector("head sheet");
            problems.given("operation", operation);
            problems.given("plate", plate);
            checkMass(problems);
            checkPostures(problems);
            problems.given("power", power);
            problems.given("forces", forces);
            problems.given("accuracy", accuracy);
            problems.given("workRange", workRange);
            if (problems.given("withdrawTime", withdrawTime)) {
                problems.within(
                        "withdrawTime", Objects.requireNonNull(withdrawTime).value(), 0.0, 60.0, "s");
            }
            problems.given("onPowerLoss", onPowerLoss);
            if (problems.given("hardwareRevision", hardwareRevision)) {
                String revision = Objects.requireNonNull(hardwareRevision);
                problems.demand(
                        !revision.isBlank() && revision.length() <= 60,
                        "hardwareRevision",
                        '"' + revision + '"',
                        "must have 1 to 60 characters");
            }
            problems.throwIfAny();
            return new HeadSheet(this);
        }

        private void checkMass(ProblemCollector problems) {
            problems.given("mass empty", empty);
            problems.given("mass full", full);
            problems.given("mass soiled", soiled);
            if (empty != null && full != null && soiled != null) {
                double[] kg = {
                    empty.mass().value(), full.mass().value(), soiled.mass().value()
                };
                problems.demand(
                        kg[0] <= kg[1] && kg[1] <= kg[2],
                        "mass empty, full, soiled",
                        kg[0] + ", " + kg[1] + ", " + kg[2] + " kg",
                        "must be in rising order");
            }
        }

        private void checkPostures(ProblemCollector problems) {
            Set<PostureName> names = new HashSet<>();
            for (Posture posture : postures) {
                problems.demand(
                        names.add(posture.name()),
                        "postures",
                        "two named " + posture.name(),
                        "must each have a name of its own");
            }
            for (PostureName required : List.of(PostureName.STOWED, PostureName.READY, PostureName.WORK)) {
                problems.demand(names.contains(required), "postures", names, "must include " + required);
            }
            for (Transition t : transitions) {
                problems.demand(
                        names.contains(t.from()) && names.contains(t.to()),
                        "transitions",
                        t,
                        "must go from one of the sheet's postures to another");
            }
        }
    }
}
