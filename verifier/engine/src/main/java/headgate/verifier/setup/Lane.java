package headgate.verifier.setup;

import headgate.api.unit.Micrometres;
import headgate.runtime.cropplan.CropPlan;
import java.util.ArrayList;
import java.util.List;

/**
 * Ground to be treated in one pass, centred on a row.
 *
 * @param number from 1 at the right-hand side (least y)
 * @param y the row's line, micrometres, carriage frame
 */
public record Lane(int number, long y) {

    /**
     * The lanes of a plan, symmetrical about the carriage's middle.
     *
     * @param plan the plan
     * @return one lane a row, from the right to the left
     */
    public static List<Lane> of(CropPlan plan) {
        int rows = plan.rows().perPass();
        List<Lane> lanes = new ArrayList<>(rows);
        for (int i = 0; i < rows; i++) {
            // Twice the offset is a whole number of spacings, so the halving stays exact on the grid of half a spacing.
            long y = Math.round((2L * i - (rows - 1)) * plan.rows().spacing() * Micrometres.PER_METRE / 2.0);
            lanes.add(new Lane(i + 1, y));
        }
        return List.copyOf(lanes);
    }
}
