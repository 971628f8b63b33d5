package headgate.api.task;

import headgate.api.annotation.ApiStatus;
import headgate.api.shape.Point3;
import headgate.api.vocabulary.PlantClass;
import headgate.api.vocabulary.SoilClass;

/**
 * One plant, or one position, for a spot head. The verifier and the carriage make tasks; a head only reads them. Every
 * figure lies on a published grid (position 1 mm, velocity 1 mm/s, stem 0.5 mm, height 5 mm, moisture 0.01), so that
 * the same task is asked in the same form everywhere.
 */
@ApiStatus(value = ApiStatus.Status.EXPERIMENTAL, since = "0.1.0")
public interface SpotTask {

    /**
     * Where the plant meets the ground at the instant the action starts (t = 0), head frame. At time t it is at this
     * point plus {@link #groundVelocity()} times t. It may lie outside the reach by what the approach takes.
     *
     * @return the position, whole millimetres
     */
    Point3 position();

    /** {@return how the ground moves in the head frame} */
    Velocity groundVelocity();

    /** {@return what kind of plant it is} */
    PlantClass plantClass();

    /** {@return the diameter of the stem, m; for a plug, of the plug} */
    double stemDiameter();

    /** {@return the height of the plant over the ground, m} */
    double plantHeight();

    /** {@return the soil's texture} */
    SoilClass soil();

    /** {@return the soil's water content by volume, 0 to 1} */
    double moisture();
}
