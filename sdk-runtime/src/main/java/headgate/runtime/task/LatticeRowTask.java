package headgate.runtime.task;

import headgate.api.task.RowTask;
import headgate.api.task.Velocity;
import headgate.api.vocabulary.SoilClass;

/**
 * A row task on the {@link TaskLattice}.
 *
 * @param groundVelocity how the ground moves in the head frame, whole mm/s
 * @param soil texture of the soil
 * @param canopyHeight height of the crop's canopy, m; 0 to 5 in steps of 5 mm
 * @param canopyWidth width of the crop's canopy across the row, m; 0 to 5 in steps of 5 mm
 * @param gapBefore distance to the crop plant just passed, m; 0 to 100 in steps of 5 mm
 * @param gapAfter distance to the next crop plant, m; 0 to 100 in steps of 5 mm
 */
public record LatticeRowTask(
        Velocity groundVelocity,
        SoilClass soil,
        double canopyHeight,
        double canopyWidth,
        double gapBefore,
        double gapAfter)
        implements RowTask {

    /**
     * Checks that the task lies on the lattice.
     *
     * @throws IllegalArgumentException if a figure does not, naming it
     */
    public LatticeRowTask {
        TaskLattice.demand(TaskLattice.holds(groundVelocity), "groundVelocity", groundVelocity);
        TaskLattice.demand(TaskLattice.HEIGHT.holds(canopyHeight), "canopyHeight", canopyHeight);
        TaskLattice.demand(TaskLattice.HEIGHT.holds(canopyWidth), "canopyWidth", canopyWidth);
        TaskLattice.demand(TaskLattice.GAP.holds(gapBefore), "gapBefore", gapBefore);
        TaskLattice.demand(TaskLattice.GAP.holds(gapAfter), "gapAfter", gapAfter);
    }

    /**
     * Makes the nearest task on the lattice.
     *
     * @param groundVelocity how the ground moves in the head frame
     * @param soil texture of the soil
     * @param canopyHeight height of the crop's canopy, m; 0 to 5
     * @param canopyWidth width of the crop's canopy across the row, m; 0 to 5
     * @param gapBefore distance to the crop plant just passed, m; 0 to 100
     * @param gapAfter distance to the next crop plant, m; 0 to 100
     * @return the task
     * @throws IllegalArgumentException if a figure is not finite or out of bounds
     */
    public static LatticeRowTask nearest(
            Velocity groundVelocity,
            SoilClass soil,
            double canopyHeight,
            double canopyWidth,
            double gapBefore,
            double gapAfter) {
        return new LatticeRowTask(
                TaskLattice.nearest(groundVelocity),
                soil,
                TaskLattice.HEIGHT.nearest(canopyHeight),
                TaskLattice.HEIGHT.nearest(canopyWidth),
                TaskLattice.GAP.nearest(gapBefore),
                TaskLattice.GAP.nearest(gapAfter));
    }
}
