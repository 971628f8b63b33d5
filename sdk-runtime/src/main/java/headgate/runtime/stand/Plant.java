package headgate.runtime.stand;

import headgate.api.shape.Point;
import headgate.api.vocabulary.PlantClass;

/**
 * One plant of a stand.
 *
 * @param position where it stands: x along travel, y to the left, micrometres from the plot's own origin
 * @param kind its class; {@link #CROP} for a plant of the crop
 * @param stem stem diameter, m; 0 if it was not recorded
 * @param height height over the ground, m; 0 if it was not recorded
 * @param canopy diameter of its leaves seen from above, m; 0 if it was not recorded
 */
public record Plant(Position position, PlantClass kind, double stem, double height, double canopy) {

    /** The class of a plant of the crop. */
    public static final PlantClass CROP = PlantClass.of("crop");

    /**
     * A position in a plot. Plots are longer than the 100 m that a {@link Point} spans.
     *
     * @param x along travel, micrometres
     * @param y to the left, micrometres
     */
    public record Position(long x, long y) {}

    /** {@return true if it is a plant of the crop} */
    public boolean isCrop() {
        return kind.equals(CROP);
    }
}
