package headgate.verifier.fitting;

import java.util.List;
import java.util.stream.Collectors;

/**
 * How arms are moved from one set-up to another: all are lifted, then shifted step by step, then lowered. What is said
 * holds at every instant: in each step the whole course of every arm against every other is clear.
 *
 * @param lifting time until every arm is lifted, s
 * @param steps the steps, one after the other
 * @param lowering time until every arm that works is down again, s
 */
public record ChangeOver(double lifting, List<Step> steps, double lowering) {

    /** Copies the list. */
    public ChangeOver {
        steps = List.copyOf(steps);
    }

    /**
     * Arms that are shifted at the same time.
     *
     * @param moves the shifts, from the right to the left
     * @param time until the last of them rests, s
     */
    public record Step(List<Move> moves, double time) {

        /** Copies the list. */
        public Step {
            moves = List.copyOf(moves);
        }

        /** {@return the arms' ids} */
        public String arms() {
            return moves.stream().map(Move::arm).collect(Collectors.joining(", "));
        }
    }

    /**
     * One arm's shift.
     *
     * @param arm its id
     * @param from y of its mount before, micrometres
     * @param to y of its mount after, micrometres
     */
    public record Move(String arm, long from, long to) {}

    /** {@return the time of the whole, s} */
    public double time() {
        return lifting + steps.stream().mapToDouble(Step::time).sum() + lowering;
    }
}
