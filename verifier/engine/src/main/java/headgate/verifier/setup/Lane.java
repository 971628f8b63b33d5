package headgate.verifier.setup;

import headgate.api.shape.Interval;
import headgate.api.unit.Micrometres;
import headgate.api.vocabulary.Operation;
import headgate.runtime.cropplan.CropPlan;
import headgate.verifier.geometry.Rounding;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Ground to be treated in one pass. Lanes never overlap.
 *
 * @param number from 1 at the right-hand side (least y)
 * @param kind where it lies
 * @param ground from its right-hand edge to its left-hand one, micrometres, carriage frame
 */
public record Lane(int number, Kind kind, Interval ground) {

    /** Where a lane lies. */
    public enum Kind {
        /** Along a row, to both sides of it. */
        ON_ROW("on the row"),
        /** From one row to the next, but for what is protected. */
        BETWEEN_ROWS("between rows"),
        /** Beside an outermost row, half as wide as between rows. */
        EDGE("beside the outermost row"),
        /** A row's share of the whole surface. */
        FULL_SURFACE("the whole surface");

        private final String label;

        Kind(String label) {
            this.label = label;
        }

        /** {@return how reports say it} */
        public String label() {
            return label;
        }
    }

    /** {@return the middle of the lane, micrometres, carriage frame; rounded down} */
    public long y() {
        return Math.floorDiv(ground.least() + ground.most(), 2L);
    }

    /** {@return the width of the lane, m} */
    public double width() {
        return Micrometres.toMetres(ground.length());
    }

    /**
     * The lanes of a plan, symmetrical about the carriage's middle. On the row a lane is as wide as the weed band, or as
     * the canopy if the canopy is trimmed, or has no width of its own; to it comes how far the row may wander, and the
     * guess-row error if one pass spans several of the planter's. It is never wider than the row spacing. Between rows,
     * what is protected and as far as the row may wander is left out.
     *
     * @param plan the plan
     * @return the lanes, from the right to the left; none if there is no ground between rows to be treated
     */
    public static List<Lane> of(CropPlan plan) {
        CropPlan.Rows rows = plan.rows();
        long spacing = Micrometres.nearest(rows.spacing());
        long off = up(rowsMayBeOff(rows));
        List<Long> lines = lines(rows);
        CropPlan.Ground ground =
                plan.wanted().ground().orElseGet(() -> usual(plan.wanted().operation()));
        return switch (ground) {
            case ON_ROW -> strips(lines, Kind.ON_ROW, Math.min(spacing / 2, up(halfWidth(plan)) + off));
            case FULL_SURFACE -> strips(lines, Kind.FULL_SURFACE, spacing / 2);
            case BETWEEN_ROWS -> between(lines, spacing, up(plan.crop().protectedRadius()) + off);
        };
    }

    /**
     * How far a row may be from its line: it wanders, and where a pass spans several of the planter's, the gap between
     * those is a guess.
     *
     * @param rows the rows
     * @return m
     */
    public static double rowsMayBeOff(CropPlan.Rows rows) {
        return rows.wander() + (spansPlanterPasses(rows) ? rows.guessRowError() : 0);
    }

    /**
     * Says whether one pass spans rows of more than one of the planter's passes: it does unless as many rows are worked as
     * the planter set, or a number that divides it.
     *
     * @param rows the rows
     * @return true if it does; false also if nobody knows how many rows the planter set
     */
    public static boolean spansPlanterPasses(CropPlan.Rows rows) {
        return rows.planterRows().map(p -> p % rows.perPass() != 0).orElse(false);
    }

    private static CropPlan.Ground usual(Operation operation) {
        return operation.equals(Operation.HOE) ? CropPlan.Ground.BETWEEN_ROWS : CropPlan.Ground.ON_ROW;
    }

    private static double halfWidth(CropPlan plan) {
        Operation operation = plan.wanted().operation();
        if (operation.equals(Operation.TRIM)) {
            return plan.crop().canopyWidth() / 2;
        }
        Optional<CropPlan.Weeds> weeds = operation.equals(Operation.SET_PLUGS) ? Optional.empty() : plan.weeds();
        return weeds.map(w -> w.bandWidth() / 2).orElse(0.0);
    }

    private static List<Long> lines(CropPlan.Rows rows) {
        List<Long> lines = new ArrayList<>(rows.perPass());
        for (int i = 0; i < rows.perPass(); i++) {
            // Twice the offset is a whole number of spacings, so the halving stays exact on the grid of half a spacing.
            lines.add(Math.round((2L * i - (rows.perPass() - 1)) * rows.spacing() * Micrometres.PER_METRE / 2.0));
        }
        return lines;
    }

    private static List<Lane> strips(List<Long> lines, Kind kind, long half) {
        List<Lane> lanes = new ArrayList<>();
        for (long line : lines) {
            lanes.add(new Lane(lanes.size() + 1, kind, new Interval(line - half, line + half)));
        }
        return List.copyOf(lanes);
    }

    private static List<Lane> between(List<Long> lines, long spacing, long kept) {
        if (2 * kept >= spacing) {
            return List.of();
        }
        List<Lane> lanes = new ArrayList<>();
        long first = lines.get(0);
        lanes.add(new Lane(1, Kind.EDGE, new Interval(first - spacing / 2, first - kept)));
        for (int i = 1; i < lines.size(); i++) {
            lanes.add(new Lane(
                    lanes.size() + 1, Kind.BETWEEN_ROWS, new Interval(lines.get(i - 1) + kept, lines.get(i) - kept)));
        }
        long last = lines.get(lines.size() - 1);
        lanes.add(new Lane(lanes.size() + 1, Kind.EDGE, new Interval(last + kept, last + spacing / 2)));
        return List.copyOf(lanes);
    }

    private static long up(double metres) {
        return Rounding.up(metres);
    }
}
