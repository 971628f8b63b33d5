package headgate.verifier.setup;

import headgate.runtime.cropplan.CropPlan;
import headgate.verifier.check.Case;
import java.util.List;
import java.util.stream.Stream;

/**
 * The last pass of a field, where fewer rows are left than the carriage works at once. It drives on as before, set-points
 * unchanged, with the arms lifted that would work beyond the field.
 *
 * @param passes passes of the field, this one among them
 * @param rows rows that are left for it, at least 1 and fewer than those of a whole pass
 * @param side where they lie
 * @param working the arms that work
 * @param lifted the arms that stay lifted
 * @param across the arms that work on both sides of the field's edge; they work beyond it, too
 */
public record EdgePass(
        int passes, int rows, Side side, List<Station> working, List<Station> lifted, List<Station> across) {

    /** On which side of the carriage the rows lie that are left. */
    public enum Side {
        /** To the right. */
        RIGHT("right"),
        /** To the left. */
        LEFT("left");

        private final String label;

        Side(String label) {
            this.label = label;
        }

        /** {@return how reports say it} */
        public String label() {
            return label;
        }
    }

    /** Copies the lists. */
    public EdgePass {
        working = List.copyOf(working);
        lifted = List.copyOf(lifted);
        across = List.copyOf(across);
    }

    /**
     * The rows of a field.
     *
     * @param plan the plan
     * @return as many as lie in the field's width
     */
    public static int rowsOfField(CropPlan plan) {
        // A width that is a whole number of rows on paper may be a hair less in binary.
        return (int) Math.floor(plan.field().width() / plan.rows().spacing() + 1e-9);
    }

    /**
     * Finds the narrower pass of a case, for rows that are left on either side.
     *
     * @param subject a case that can be set up
     * @return the pass, once for each side; none if the passes are all whole
     */
    public static List<EdgePass> of(Case subject) {
        CropPlan plan = subject.plan().value();
        int perPass = plan.rows().perPass();
        int left = rowsOfField(plan) % perPass;
        return left == 0
                ? List.of()
                : Stream.of(Side.values()).map(side -> of(subject, left, side)).toList();
    }

    private static EdgePass of(Case subject, int rows, Side side) {
        Setup setup = Setup.of(subject);
        int lanes = setup.lanes().size();
        // Between rows there is a lane more than there are rows: the last one lies beside the last row.
        int own = rows + lanes - subject.plan().value().rows().perPass();
        int first = side == Side.RIGHT ? 1 : lanes - own + 1;
        int last = side == Side.RIGHT ? own : lanes;
        List<Station> working = setup.stations().stream()
                .filter(s -> s.lanes().stream().anyMatch(l -> first <= l.number() && l.number() <= last))
                .toList();
        return new EdgePass(
                rowsOfField(subject.plan().value())
                                / subject.plan().value().rows().perPass()
                        + 1,
                rows,
                side,
                working,
                setup.stations().stream().filter(s -> !working.contains(s)).toList(),
                working.stream()
                        .filter(s -> s.lanes().stream().anyMatch(l -> l.number() < first || l.number() > last))
                        .toList());
    }
}
