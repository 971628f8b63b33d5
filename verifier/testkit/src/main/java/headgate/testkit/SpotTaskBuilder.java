package headgate.testkit;

import headgate.api.shape.Point3;
import headgate.api.task.SpotTask;
import headgate.api.task.Velocity;
import headgate.api.vocabulary.PlantClass;
import headgate.api.vocabulary.SoilClass;
import headgate.runtime.task.LatticeSpotTask;

/**
 * Makes tasks for spot heads, as the verifier and the carriage do: every figure goes to the nearest value of the task
 * lattice. A new builder asks for a broad-leaved weed 50 mm high with a stem of 4 mm, in medium soil of 0.25 moisture, at
 * the origin, with the ground at rest.
 */
public final class SpotTaskBuilder {

    private Point3 position = Point3.ORIGIN;
    private Velocity ground = Velocity.ZERO;
    private PlantClass plant = PlantClass.BROADLEAF;
    private double stem = 0.004;
    private double height = 0.05;
    private SoilClass soil = SoilClass.MEDIUM;
    private double moisture = 0.25;

    /** Makes a builder. */
    public SpotTaskBuilder() {}

    /**
     * Sets where the plant meets the ground at t = 0.
     *
     * @param x forward, m
     * @param y left, m
     * @param z up, m; below the mount, so negative
     * @return this builder
     */
    public SpotTaskBuilder at(double x, double y, double z) {
        this.position = Point3.ofMetres(x, y, z);
        return this;
    }

    /**
     * Sets how the ground moves in the head frame.
     *
     * @param x forward, m/s; the negative speed for a head fitted at 0 degrees
     * @param y left, m/s
     * @return this builder
     */
    public SpotTaskBuilder groundMoving(double x, double y) {
        this.ground = Velocity.ofMetresPerSecond(x, y);
        return this;
    }

    /**
     * Sets the plant.
     *
     * @param kind what it is
     * @param stemDiameter diameter of the stem, or of the plug, m
     * @param plantHeight height over the ground, m
     * @return this builder
     */
    public SpotTaskBuilder plant(PlantClass kind, double stemDiameter, double plantHeight) {
        this.plant = kind;
        this.stem = stemDiameter;
        this.height = plantHeight;
        return this;
    }

    /**
     * Sets the soil.
     *
     * @param texture its texture
     * @param waterContent its water content by volume, 0 to 1
     * @return this builder
     */
    public SpotTaskBuilder soil(SoilClass texture, double waterContent) {
        this.soil = texture;
        this.moisture = waterContent;
        return this;
    }

    /**
     * Makes the task.
     *
     * @return the task on the lattice
     * @throws IllegalArgumentException if a figure is not finite or out of bounds
     */
    public SpotTask build() {
        return LatticeSpotTask.nearest(position, ground, plant, stem, height, soil, moisture);
    }
}
