package headgate.verifier.stand;

import org.jspecify.annotations.Nullable;

/**
 * Rows as a drill or a planter leaves them: a plant in the middle of each step, off by a little, some missing, on lines
 * that wander. The rows lie evenly to both sides of y = 0.
 *
 * @param rows how many, at least 1
 * @param spacing from row to row, m
 * @param plantSpacing from plant to plant within a row, m
 * @param along standard deviation of a plant from the middle of its step, m; drawn again until the plant is in its step
 * @param across standard deviation of a plant from its row's line, m; drawn again until it is nearer to it than to the next
 * @param wander how far a row's line wanders to either side, m
 * @param gaps share of the places at which no plant stands, 0 to 1
 */
public record SownRows(
        int rows, double spacing, double plantSpacing, double along, double across, double wander, double gaps) {

    /** Length over which a row's line goes from one drawn offset straight to the next, m: invented. */
    private static final double WANDER_LENGTH = 10;

    private static final int MOST_ROWS = 10_000;

    /**
     * Checks.
     *
     * @throws IllegalArgumentException if a figure is out of its bounds
     */
    public SownRows {
        Figure.check("the number of rows", rows, 1, MOST_ROWS);
        Figure.check("a row spacing in metres", spacing, 0.001, 100);
        Figure.check("a plant spacing in metres", plantSpacing, 0.001, 100);
        Figure.check("a deviation along the row in metres", along, 0, plantSpacing);
        Figure.check("a deviation across the row in metres", across, 0, spacing);
        Figure.check("a row's wander in metres", wander, 0, spacing);
        Figure.check("the share of gaps", gaps, 0, 1);
    }

    /**
     * Rows without any error.
     *
     * @param rows how many, at least 1
     * @param spacing from row to row, m
     * @param plantSpacing from plant to plant within a row, m
     * @return the rows
     */
    public static SownRows exact(int rows, double spacing, double plantSpacing) {
        return new SownRows(rows, spacing, plantSpacing, 0, 0, 0, 0);
    }

    /**
     * Where the line of a row lies.
     *
     * @param row number of the row, from 0 at the right
     * @return y, m
     */
    public double line(int row) {
        return (row - (rows - 1) / 2.0) * spacing;
    }

    /** {@return the width that the rows take, m: rows times spacing} */
    public double width() {
        return rows * spacing;
    }

    /** The places of one row, in the order of travel. */
    Places row(int row, double length, Draws draws) {
        return new Row(line(row), length, draws)::next;
    }

    /** Goes along one row. */
    private final class Row {
        private final double line;
        private final double length;
        private final Draws draws;
        private long step;
        private double knot;
        private double offset;
        private double nextOffset;

        Row(double line, double length, Draws draws) {
            this.line = line;
            this.length = length;
            this.draws = draws;
            this.offset = drawOffset();
            this.nextOffset = drawOffset();
        }

        private double drawOffset() {
            return wander * (2 * draws.share() - 1);
        }

        Places.@Nullable Place next() {
            while ((step + 0.5) * plantSpacing < length) {
                double middle = (step + 0.5) * plantSpacing;
                step++;
                boolean stands = draws.share() >= gaps;
                double x = middle + draws.normal(along, plantSpacing / 2);
                double y = line + wandered(x) + draws.normal(across, spacing / 2);
                if (stands && x < length) {
                    return new Places.Place(x, y);
                }
            }
            return null;
        }

        private double wandered(double x) {
            while (x >= knot + WANDER_LENGTH) {
                knot += WANDER_LENGTH;
                offset = nextOffset;
                nextOffset = drawOffset();
            }
            return offset + (nextOffset - offset) * ((x - knot) / WANDER_LENGTH);
        }
    }
}
