package headgate.runtime.task;

import headgate.api.shape.Point3;
import headgate.api.task.RowTask;
import headgate.api.task.SpotTask;
import headgate.api.task.Velocity;
import headgate.api.unit.Micrometres;
import java.util.Locale;

/**
 * The grid that every figure of a task lies on, the same for the verifier and the carriage: what was asked in the check
 * is then exactly what is asked in the field. Steps: position 1 mm, velocity 1 mm/s, stem 0.5 mm, plant height, canopy
 * and gaps 5 mm, moisture 0.01. A tie goes to the even multiple.
 */
public enum TaskLattice {
    /** Stem diameter: 0.5 mm. */
    STEM(2000, 0.5),
    /** Height of a plant, height and width of a canopy: 5 mm. */
    HEIGHT(200, 5.0),
    /** Distance to the crop plant before or after: 5 mm. */
    GAP(200, 100.0),
    /** Water content of the soil by volume: 0.01. */
    MOISTURE(100, 1.0),
    /** Speed of the ground: 1 mm/s. */
    SPEED(1000, 100.0);

    private static final long MILLIMETRE = Micrometres.PER_METRE / 1000;

    private final double perUnit;
    private final double most;

    TaskLattice(double perUnit, double most) {
        this.perUnit = perUnit;
        this.most = most;
    }

    /** {@return the distance between two values, SI} */
    public double step() {
        return 1.0 / perUnit;
    }

    /** {@return the largest value, SI; the least is 0} */
    public double most() {
        return most;
    }

    /**
     * Goes to the nearest value.
     *
     * @param value any figure from 0 to {@link #most()}, SI
     * @return the nearest value on the lattice
     * @throws IllegalArgumentException if the figure is not finite or out of bounds
     */
    public double nearest(double value) {
        check(value);
        // Adding zero turns a negative zero into the positive one, so that equal tasks have equal bits.
        return Math.rint(value * perUnit) / perUnit + 0.0;
    }

    /**
     * Goes up, for the lower end of a range that must not be left.
     *
     * @param value any figure from 0 to {@link #most()}, SI
     * @return the least value on the lattice that is not below the figure
     * @throws IllegalArgumentException if the figure is not finite or out of bounds
     */
    public double up(double value) {
        double near = nearest(value);
        return near >= value ? near : (Math.rint(value * perUnit) + 1.0) / perUnit;
    }

    /**
     * Goes down, for the upper end of a range that must not be left.
     *
     * @param value any figure from 0 to {@link #most()}, SI
     * @return the largest value on the lattice that is not above the figure
     * @throws IllegalArgumentException if the figure is not finite or out of bounds
     */
    public double down(double value) {
        double near = nearest(value);
        return near <= value ? near : (Math.rint(value * perUnit) - 1.0) / perUnit;
    }

    /**
     * Says whether a figure lies on the lattice and in its bounds.
     *
     * @param value any double
     * @return true if it does
     */
    public boolean holds(double value) {
        return value >= 0.0 && value <= most && nearest(value) == value && !(value == 0.0 && 1.0 / value < 0.0);
    }

    private void check(double value) {
        if (!(value >= 0.0 && value <= most)) {
            throw new IllegalArgumentException(
                    name().toLowerCase(Locale.ROOT) + " must be from 0 to " + most + ", but is " + value);
        }
    }

    /**
     * Puts a position on the lattice.
     *
     * @param position any point
     * @return the nearest point with whole millimetres
     */
    public static Point3 nearest(Point3 position) {
        return new Point3(whole(position.x()), whole(position.y()), whole(position.z()));
    }

    /**
     * Puts a velocity on the lattice.
     *
     * @param velocity any velocity
     * @return the nearest velocity with whole millimetres per second
     */
    public static Velocity nearest(Velocity velocity) {
        return new Velocity(whole(velocity.x()), whole(velocity.y()));
    }

    /**
     * Puts a task on the lattice.
     *
     * @param task any task
     * @return the nearest task on the lattice
     * @throws IllegalArgumentException if a figure is not finite or out of bounds
     */
    public static LatticeSpotTask nearest(SpotTask task) {
        return task instanceof LatticeSpotTask already
                ? already
                : new LatticeSpotTask(
                        nearest(task.position()),
                        nearest(task.groundVelocity()),
                        task.plantClass(),
                        STEM.nearest(task.stemDiameter()),
                        HEIGHT.nearest(task.plantHeight()),
                        task.soil(),
                        MOISTURE.nearest(task.moisture()));
    }

    /**
     * Puts a task on the lattice.
     *
     * @param task any task
     * @return the nearest task on the lattice
     * @throws IllegalArgumentException if a figure is not finite or out of bounds
     */
    public static LatticeRowTask nearest(RowTask task) {
        return task instanceof LatticeRowTask already
                ? already
                : new LatticeRowTask(
                        nearest(task.groundVelocity()),
                        task.soil(),
                        HEIGHT.nearest(task.canopyHeight()),
                        HEIGHT.nearest(task.canopyWidth()),
                        GAP.nearest(task.gapBefore()),
                        GAP.nearest(task.gapAfter()));
    }

    static boolean holds(Point3 p) {
        return p.x() % MILLIMETRE == 0 && p.y() % MILLIMETRE == 0 && p.z() % MILLIMETRE == 0;
    }

    static boolean holds(Velocity v) {
        return v.x() % MILLIMETRE == 0 && v.y() % MILLIMETRE == 0;
    }

    private static long whole(long micrometres) {
        return (long) Math.rint((double) micrometres / MILLIMETRE) * MILLIMETRE;
    }

    static void demand(boolean onLattice, String field, Object value) {
        if (!onLattice) {
            throw new IllegalArgumentException(
                    field + " must lie on the task lattice, but is " + value + "; use TaskLattice to snap it");
        }
    }
}
