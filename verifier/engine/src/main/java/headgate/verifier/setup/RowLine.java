package headgate.verifier.setup;

import headgate.api.shape.Interval;
import headgate.api.unit.Micrometres;
import headgate.runtime.cropplan.CropPlan;
import java.util.List;
import java.util.stream.LongStream;

/**
 * The line along which a row stands. Rows go on beside those of the pass.
 *
 * @param number from 0 at the right-hand side of the pass; less than 0, or as many as the pass has rows or more, for rows beside
 *     it
 * @param y where it is, micrometres, carriage frame
 * @param mayBeOff how far the row may really be from it, m: it wanders, and if its place is a guess, by the guess-row error too
 */
public record RowLine(long number, long y, double mayBeOff) {

    /**
     * A row by its number.
     *
     * @param rows the rows
     * @param number the number
     * @return its line
     */
    public static RowLine of(CropPlan.Rows rows, long number) {
        boolean guessed = Lane.spansPlanterPasses(rows) || number < 0 || number >= rows.perPass();
        return new RowLine(number, at(rows, number), rows.wander() + (guessed ? rows.guessRowError() : 0));
    }

    /**
     * The rows on which something stands, and the next row to either side of it.
     *
     * @param rows the rows
     * @param y the extent of it across travel, micrometres, carriage frame
     * @return the lines, from the right to the left
     */
    public static List<RowLine> near(CropPlan.Rows rows, Interval y) {
        return LongStream.rangeClosed(rightOf(rows, y.least()), rightOf(rows, y.most()) + 1)
                .mapToObj(n -> of(rows, n))
                .toList();
    }

    /** The number of the last row that is not to the left of a place. */
    static long rightOf(CropPlan.Rows rows, long y) {
        // Twice the y of a row is a whole number of spacings; so the search goes by the row to the right.
        long spacing = Micrometres.nearest(rows.spacing());
        return Math.floorDiv(2 * y + (rows.perPass() - 1) * spacing, 2 * spacing);
    }

    static long at(CropPlan.Rows rows, long number) {
        return Math.round((2 * number - (rows.perPass() - 1)) * rows.spacing() * Micrometres.PER_METRE / 2.0);
    }
}
