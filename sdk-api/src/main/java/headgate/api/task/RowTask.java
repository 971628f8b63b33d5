package headgate.api.task;

import headgate.api.annotation.ApiStatus;
import headgate.api.vocabulary.SoilClass;

/**
 * A stretch of row for a continuous head. The verifier and the carriage make tasks; a head only reads them. Every
 * figure lies on a published grid (velocity 1 mm/s, canopy and gaps 5 mm), so that the same task is asked in the same
 * form everywhere.
 */
@ApiStatus(value = ApiStatus.Status.EXPERIMENTAL, since = "0.1.0")
public interface RowTask {

    /** {@return how the ground moves in the head frame} */
    Velocity groundVelocity();

    /** {@return the soil's texture} */
    SoilClass soil();

    /** {@return the height of the crop's canopy over the ground, m; 0 if there is none} */
    double canopyHeight();

    /** {@return the width of the crop's canopy across the row, m; 0 if there is none} */
    double canopyWidth();

    /** {@return the distance along the row from the tool to the crop plant just passed, m} */
    double gapBefore();

    /** {@return the distance along the row from the tool to the next crop plant, m} */
    double gapAfter();
}
