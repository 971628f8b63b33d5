package headgate.runtime.task;

import headgate.api.shape.Point3;
import headgate.api.task.SpotTask;
import headgate.api.task.Velocity;
import headgate.api.vocabulary.PlantClass;
import headgate.api.vocabulary.SoilClass;

/**
 * A spot task on the {@link TaskLattice}: two tasks are equal if a head cannot tell them apart, so an answer can be
 * remembered by its task.
 *
 * @param position where the plant is at t = 0, head frame, whole millimetres
 * @param groundVelocity how the ground moves in the head frame, whole mm/s
 * @param plantClass kind of plant
 * @param stemDiameter stem, or plug, m; 0 to 0.5 in steps of 0.5 mm
 * @param plantHeight height over the ground, m; 0 to 5 in steps of 5 mm
 * @param soil texture of the soil
 * @param moisture water content by volume; 0 to 1 in steps of 0.01
 */
public record LatticeSpotTask(
        Point3 position,
        Velocity groundVelocity,
        PlantClass plantClass,
        double stemDiameter,
        double plantHeight,
        SoilClass soil,
        double moisture)
        implements SpotTask {

    /**
     * Checks that the task lies on the lattice.
     *
     * @throws IllegalArgumentException if a figure does not, naming it
     */
    public LatticeSpotTask {
        TaskLattice.demand(TaskLattice.holds(position), "position", position);
        TaskLattice.demand(TaskLattice.holds(groundVelocity), "groundVelocity", groundVelocity);
        TaskLattice.demand(TaskLattice.STEM.holds(stemDiameter), "stemDiameter", stemDiameter);
        TaskLattice.demand(TaskLattice.HEIGHT.holds(plantHeight), "plantHeight", plantHeight);
        TaskLattice.demand(TaskLattice.MOISTURE.holds(moisture), "moisture", moisture);
    }

    /**
     * Makes the nearest task on the lattice.
     *
     * @param position where the plant is at t = 0, head frame
     * @param groundVelocity how the ground moves in the head frame
     * @param plantClass kind of plant
     * @param stemDiameter stem, or plug, m; 0 to 0.5
     * @param plantHeight height over the ground, m; 0 to 5
     * @param soil texture of the soil
     * @param moisture water content by volume, 0 to 1
     * @return the task
     * @throws IllegalArgumentException if a figure is not finite or out of bounds
     */
    public static LatticeSpotTask nearest(
            Point3 position,
            Velocity groundVelocity,
            PlantClass plantClass,
            double stemDiameter,
            double plantHeight,
            SoilClass soil,
            double moisture) {
        return new LatticeSpotTask(
                TaskLattice.nearest(position),
                TaskLattice.nearest(groundVelocity),
                plantClass,
                TaskLattice.STEM.nearest(stemDiameter),
                TaskLattice.HEIGHT.nearest(plantHeight),
                soil,
                TaskLattice.MOISTURE.nearest(moisture));
    }

    /**
     * Moves the plant.
     *
     * @param to where the plant is at t = 0 instead, head frame; snapped
     * @return the task at that place
     */
    public LatticeSpotTask at(Point3 to) {
        return new LatticeSpotTask(
                TaskLattice.nearest(to), groundVelocity, plantClass, stemDiameter, plantHeight, soil, moisture);
    }

    /**
     * Changes how the ground moves.
     *
     * @param velocity the ground's velocity in the head frame instead; snapped
     * @return the task with that velocity
     */
    public LatticeSpotTask moving(Velocity velocity) {
        return new LatticeSpotTask(
                position, TaskLattice.nearest(velocity), plantClass, stemDiameter, plantHeight, soil, moisture);
    }
}
