package headgate.runtime.carriage;

import headgate.api.shape.Interval;
import headgate.api.shape.Point3;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * A shape that the carriage takes, such as spread wide for work or folded for the road.
 *
 * @param name what its maker calls it
 * @param use whether it works or travels in it
 * @param rails rails that differ from the arms' own in this stance, by arm id, micrometres, carriage frame
 * @param poses where arms are that are not at their work place; arms not named stay there, lifted
 * @param steps the shapes between work and this stance, in order
 * @param structure frame parts that are elsewhere in this stance than at work; each stands in for the part of its name
 * @param wheels y of the middle of each wheel's tyre that is not set as for work, by the wheel's name, micrometres
 * @param suspensionTravel how far the frame may come down on its suspension, m
 */
public record Stance(
        String name,
        Use use,
        Map<String, Interval> rails,
        List<Pose> poses,
        List<Step> steps,
        List<Carriage.Part> structure,
        Map<String, Long> wheels,
        double suspensionTravel) {

    /** What a stance is for. */
    public enum Use {
        /** Work in the field. */
        WORK,
        /** Travel on the road. */
        TRANSPORT
    }

    /** Copies the collections. */
    public Stance {
        rails = Collections.unmodifiableMap(new TreeMap<>(rails));
        poses = List.copyOf(poses);
        steps = List.copyOf(steps);
        structure = List.copyOf(structure);
        wheels = Collections.unmodifiableMap(new TreeMap<>(wheels));
    }

    /**
     * A shape in which all wheels are set as for work.
     *
     * @param name what its maker calls it
     * @param use whether it works or travels in it
     * @param rails rails that differ from the arms' own, by arm id
     * @param poses where arms are that are not at their work place
     * @param steps the shapes between work and this stance, in order
     * @param structure frame parts that are elsewhere in this stance than at work
     * @param suspensionTravel how far the frame may come down on its suspension, m
     */
    public Stance(
            String name,
            Use use,
            Map<String, Interval> rails,
            List<Pose> poses,
            List<Step> steps,
            List<Carriage.Part> structure,
            double suspensionTravel) {
        this(name, use, rails, poses, steps, structure, Map.of(), suspensionTravel);
    }

    /**
     * A step at which the stance itself is reached.
     *
     * @return the stance's own shape
     */
    public Step reached() {
        return new Step(name, poses, structure);
    }

    /**
     * Changes the poses.
     *
     * @param changed where arms are that are not at their work place
     * @return the same stance with them
     */
    public Stance withPoses(List<Pose> changed) {
        return withPoses(changed, steps);
    }

    /**
     * Changes the poses, also those of the steps.
     *
     * @param changed where arms are that are not at their work place
     * @param changedSteps the shapes between work and this stance
     * @return the same stance with them
     */
    public Stance withPoses(List<Pose> changed, List<Step> changedSteps) {
        return new Stance(name, use, rails, changed, changedSteps, structure, wheels, suspensionTravel);
    }

    /**
     * Finds where an arm is.
     *
     * @param arm the arm's id
     * @return its pose, or empty if it stays at its work place
     */
    public Optional<Pose> pose(String arm) {
        return reached().pose(arm);
    }

    /**
     * Where an arm's mount is: first turned about the mount's origin, turn by turn, then moved.
     *
     * @param arm the arm's id
     * @param mount where the mount's origin is, carriage frame
     * @param turns turns about the axes of the carriage frame, in order; none if it only moves
     * @param latched true if the head's moving parts are held there
     * @param way how it gets there from the shape before, one move after the other; what no move names happens last, at once: the
     *     mount goes straight, and turns as it goes
     */
    public record Pose(String arm, Point3 mount, List<Turn> turns, boolean latched, List<Move> way) {

        /** Copies the lists. */
        public Pose {
            turns = List.copyOf(turns);
            way = List.copyOf(way);
        }

        /**
         * A pose to which the arm goes straight.
         *
         * @param arm the arm's id
         * @param mount where the mount's origin is, carriage frame
         * @param turns turns about the axes of the carriage frame, in order
         * @param latched true if the head's moving parts are held there
         */
        public Pose(String arm, Point3 mount, List<Turn> turns, boolean latched) {
            this(arm, mount, turns, latched, List.of());
        }

        /**
         * Changes the place.
         *
         * @param changed where the mount's origin is, carriage frame
         * @return the same pose there
         */
        public Pose withMount(Point3 changed) {
            return new Pose(arm, changed, turns, latched, way);
        }

        /** {@return the same pose with the head's moving parts held} */
        public Pose held() {
            return new Pose(arm, mount, turns, true, way);
        }
    }

    /** A part of a way from one pose to the next. */
    public enum Move {
        /** The mount goes along x until it is where the pose has it. */
        X,
        /** The mount goes along y. */
        Y,
        /** The mount goes along z. */
        Z,
        /** What the arm carries turns about the mount's origin. */
        TURN
    }

    /**
     * A turn by whole quarters about one axis.
     *
     * @param axis the axis
     * @param quarters quarters of a full turn, right-handed, 1 to 3
     */
    public record Turn(Axis axis, int quarters) {}

    /** An axis of the carriage frame. */
    public enum Axis {
        /** Forward. */
        X,
        /** Left. */
        Y,
        /** Up. */
        Z
    }

    /**
     * A shape between work and a stance.
     *
     * @param name what happens, such as "lift the outer arms"
     * @param poses where the arms are that have moved by then
     * @param structure frame parts that are elsewhere by then than at work; each stands in for the part of its name
     */
    public record Step(String name, List<Pose> poses, List<Carriage.Part> structure) {

        /** Copies the lists. */
        public Step {
            poses = List.copyOf(poses);
            structure = List.copyOf(structure);
        }

        /**
         * Finds where an arm is.
         *
         * @param arm the arm's id
         * @return its pose, or empty if it is still at its work place
         */
        public Optional<Pose> pose(String arm) {
            return poses.stream().filter(p -> p.arm().equals(arm)).findFirst();
        }
    }
}
