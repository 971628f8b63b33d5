package headgate.testkit;

import headgate.api.task.RowTask;
import headgate.api.task.Velocity;
import headgate.api.vocabulary.SoilClass;
import headgate.runtime.task.LatticeRowTask;

/**
 * Makes tasks for continuous heads, as the verifier and the carriage do: every figure goes to the nearest value of the task
 * lattice. A new builder asks for medium soil without a canopy, a plant 0.15 m away either way, and the ground at rest.
 */
public final class RowTaskBuilder {

    private Velocity ground = Velocity.ZERO;
    private SoilClass soil = SoilClass.MEDIUM;
    private double canopyHeight;
    private double canopyWidth;
    private double before = 0.15;
    private double after = 0.15;

    /** Makes a builder. */
    public RowTaskBuilder() {}

    /**
     * Sets how the ground moves in the head frame.
     *
     * @param x forward, m/s; the negative speed for a head fitted at 0 degrees
     * @param y left, m/s
     * @return this builder
     */
    public RowTaskBuilder groundMoving(double x, double y) {
        this.ground = Velocity.ofMetresPerSecond(x, y);
        return this;
    }

    /**
     * Sets the soil.
     *
     * @param texture its texture
     * @return this builder
     */
    public RowTaskBuilder soil(SoilClass texture) {
        this.soil = texture;
        return this;
    }

    /**
     * Sets the crop's canopy.
     *
     * @param height over the ground, m
     * @param width across the row, m
     * @return this builder
     */
    public RowTaskBuilder canopy(double height, double width) {
        this.canopyHeight = height;
        this.canopyWidth = width;
        return this;
    }

    /**
     * Sets the distances to the crop plants.
     *
     * @param behind to the plant just passed, m
     * @param ahead to the next plant, m
     * @return this builder
     */
    public RowTaskBuilder gaps(double behind, double ahead) {
        this.before = behind;
        this.after = ahead;
        return this;
    }

    /**
     * Makes the task.
     *
     * @return the task on the lattice
     * @throws IllegalArgumentException if a figure is not finite or out of bounds
     */
    public RowTask build() {
        return LatticeRowTask.nearest(ground, soil, canopyHeight, canopyWidth, before, after);
    }
}
