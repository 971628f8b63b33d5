package headgate.runtime.carriage;

import headgate.api.shape.Body;
import headgate.api.shape.Interval;
import java.util.List;
import java.util.Optional;

/**
 * The machine that carries the arms. Carriage frame: x forward, y left, z up; origin on the ground under the middle of
 * the foremost beam.
 *
 * @param name what its maker calls it
 * @param serial serial number
 * @param beams lateral bars, front to rear
 * @param arms stations on the beams
 * @param structure frame parts that do not move with an arm, each a body in the carriage frame
 * @param ground how the ground under an arm moves against the frame
 * @param stopping how the carriage stops
 * @param turning what a turn on the headland costs
 * @param wheels its wheels; none if the file does not say
 * @param links groups of arms that move as one; none if every arm moves by itself
 * @param sensors what finds the plants; none if the file does not say
 * @param errors how well it knows where its tools are; empty if the file does not say
 * @param stances the shapes that it takes beside plain work, such as folded for the road
 * @param stores what it carries for the heads and refills them from
 * @param drive what moves it; empty if the file does not say
 * @param energy where its energy comes from; empty if the file does not say
 */
public record Carriage(
        String name,
        String serial,
        List<Beam> beams,
        List<Arm> arms,
        List<Part> structure,
        GroundMotion ground,
        Stopping stopping,
        Turning turning,
        List<Wheel> wheels,
        List<Link> links,
        List<Sensor> sensors,
        Optional<PositionErrors> errors,
        List<Stance> stances,
        List<Store> stores,
        Optional<Drive> drive,
        Optional<Energy> energy) {

    /** Copies the lists. */
    public Carriage {
        beams = List.copyOf(beams);
        arms = List.copyOf(arms);
        structure = List.copyOf(structure);
        wheels = List.copyOf(wheels);
        links = List.copyOf(links);
        sensors = List.copyOf(sensors);
        stances = List.copyOf(stances);
        stores = List.copyOf(stores);
    }

    /**
     * A carriage of which only the arms, the frame and the way it stops and turns are known.
     *
     * @param name what its maker calls it
     * @param serial serial number
     * @param beams lateral bars, front to rear
     * @param arms stations on the beams
     * @param structure frame parts that do not move with an arm
     * @param ground how the ground under an arm moves against the frame
     * @param stopping how the carriage stops
     * @param turning what a turn on the headland costs
     */
    public Carriage(
            String name,
            String serial,
            List<Beam> beams,
            List<Arm> arms,
            List<Part> structure,
            GroundMotion ground,
            Stopping stopping,
            Turning turning) {
        this(
                name,
                serial,
                beams,
                arms,
                structure,
                ground,
                stopping,
                turning,
                List.of(),
                List.of(),
                List.of(),
                Optional.empty(),
                List.of(),
                List.of(),
                Optional.empty(),
                Optional.empty());
    }

    /**
     * Finds an arm.
     *
     * @param id the arm's id
     * @return the arm, or empty if there is none of that id
     */
    public Optional<Arm> arm(String id) {
        return arms.stream().filter(a -> a.id().equals(id)).findFirst();
    }

    /**
     * Finds a beam.
     *
     * @param id the beam's id
     * @return the beam, or empty if there is none of that id
     */
    public Optional<Beam> beam(String id) {
        return beams.stream().filter(b -> b.id().equals(id)).findFirst();
    }

    /**
     * Changes the arms.
     *
     * @param changed the arms
     * @return the same carriage with them
     */
    public Carriage withArms(List<Arm> changed) {
        return new Carriage(
                name, serial, beams, changed, structure, ground, stopping, turning, wheels, links, sensors, errors,
                stances, stores, drive, energy);
    }

    /**
     * Changes the wheels.
     *
     * @param changed the wheels
     * @return the same carriage with them
     */
    public Carriage withWheels(List<Wheel> changed) {
        return new Carriage(
                name, serial, beams, arms, structure, ground, stopping, turning, changed, links, sensors, errors,
                stances, stores, drive, energy);
    }

    /**
     * Changes the stances.
     *
     * @param changed the stances
     * @return the same carriage with them
     */
    public Carriage withStances(List<Stance> changed) {
        return new Carriage(
                name, serial, beams, arms, structure, ground, stopping, turning, wheels, links, sensors, errors,
                changed, stores, drive, energy);
    }

    /**
     * Changes the frame.
     *
     * @param changed frame parts that do not move with an arm
     * @return the same carriage with them
     */
    public Carriage withStructure(List<Part> changed) {
        return new Carriage(
                name, serial, beams, arms, changed, ground, stopping, turning, wheels, links, sensors, errors, stances,
                stores, drive, energy);
    }

    /**
     * Changes the sensors.
     *
     * @param changed what finds the plants
     * @return the same carriage with them
     */
    public Carriage withSensors(List<Sensor> changed) {
        return new Carriage(
                name, serial, beams, arms, structure, ground, stopping, turning, wheels, links, changed, errors,
                stances, stores, drive, energy);
    }

    /**
     * A lateral bar.
     *
     * @param id its id
     * @param x where the mounts of its arms are along travel, micrometres, carriage frame; 0 for the foremost
     */
    public record Beam(String id, long x) {}

    /**
     * A part of the frame.
     *
     * @param name what it is, such as "left leg"
     * @param body its material, carriage frame
     */
    public record Part(String name, Body body) {}

    /**
     * How the ground under an arm moves against the frame.
     *
     * @param roll largest roll of the frame against the ground, rad
     * @param pitch largest pitch of the frame against the ground, rad
     * @param wheelSink how far the wheels sink, m
     */
    public record GroundMotion(double roll, double pitch, double wheelSink) {}

    /**
     * How the carriage stops.
     *
     * @param reactionTime from the command to braking, s
     * @param deceleration while braking, m/s²
     */
    public record Stopping(double reactionTime, double deceleration) {}

    /**
     * What a turn on the headland costs.
     *
     * @param turnTime one turn, from the last row worked to the next, s
     * @param liftTime lifting and lowering that does not overlap the turn, s
     */
    public record Turning(double turnTime, double liftTime) {}

    /**
     * A wheel.
     *
     * @param name what it is, such as "left front"
     * @param x where its axle is along travel, micrometres, carriage frame
     * @param y where the middle of its tyre may be set across travel, micrometres, carriage frame; a single value if it
     *     cannot be moved
     * @param tyreWidth width of the tyre where it stands on the ground, m
     * @param fromSteeredPoint distance along travel from the point that is steered along the row, m
     * @param diameter outer diameter of the tyre, m; empty if the file does not say
     * @param steering largest angle to either side to which it is steered, about the middle of its tyre, rad; 0 if it is not
     */
    public record Wheel(
            String name,
            long x,
            Interval y,
            double tyreWidth,
            double fromSteeredPoint,
            Optional<Double> diameter,
            double steering) {

        /**
         * A wheel whose diameter the file does not say.
         *
         * @param name what it is
         * @param x where its axle is along travel, micrometres, carriage frame
         * @param y where the middle of its tyre may be set across travel, micrometres, carriage frame
         * @param tyreWidth width of the tyre where it stands on the ground, m
         * @param fromSteeredPoint distance along travel from the point that is steered along the row, m
         */
        public Wheel(String name, long x, Interval y, double tyreWidth, double fromSteeredPoint) {
            this(name, x, y, tyreWidth, fromSteeredPoint, Optional.empty(), 0.0);
        }

        /**
         * Changes where it may be set.
         *
         * @param changed y of the middle of its tyre, micrometres
         * @return the same wheel with it
         */
        public Wheel withY(Interval changed) {
            return new Wheel(name, x, changed, tyreWidth, fromSteeredPoint, diameter, steering);
        }

        /**
         * Changes its tyre.
         *
         * @param changed width of the tyre, m
         * @return the same wheel with it
         */
        public Wheel withTyreWidth(double changed) {
            return new Wheel(name, x, y, changed, fromSteeredPoint, diameter, steering);
        }
    }

    /**
     * Arms that move as one: one set-point for all, locked while any of them is in contact.
     *
     * @param id its id
     * @param members the arms
     */
    public record Link(String id, List<Member> members) {

        /** Copies the list. */
        public Link {
            members = List.copyOf(members);
        }

        /**
         * An arm of a link group.
         *
         * @param arm the arm's id
         * @param offset y of its mount less the group's set-point, micrometres
         */
        public record Member(String arm, long offset) {}
    }

    /**
     * Where the energy for a day comes from.
     *
     * @param capacity energy in the full pack, J
     * @param usableShare share of it that may be used, 0 to 1
     * @param baseLoad power that computers, lights and cooling take all the time, W
     * @param chargedAtNight true if the pack is full every morning
     * @param sun panels on the carriage; empty if there are none
     */
    public record Energy(
            double capacity, double usableShare, double baseLoad, boolean chargedAtNight, Optional<Panels> sun) {}

    /**
     * Panels that turn sunlight into electric energy.
     *
     * @param area their area, m²
     * @param efficiency share of the sun's energy that reaches the pack, 0 to 1
     */
    public record Panels(double area, double efficiency) {}
}
