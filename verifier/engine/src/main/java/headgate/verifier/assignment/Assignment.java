package headgate.verifier.assignment;

import java.util.List;

/**
 * What each slider does, and where.
 *
 * @param choices index of each slider's choice
 * @param setPoints each slider's set-point, micrometres
 * @param margin the margin: the largest m such that every two sliders are at least m further apart than their pitch asks,
 *     and every lane lies at least m inside what covers it, or as far inside as it can; micrometres; less than 0 if some
 *     pitch is not kept; {@link Assigner#PLENTY} if nothing limits it
 * @param mostMargin no assignment with as few lanes for the busiest slider has more margin than this, micrometres; equal to the margin if that is proven to be the
 *     best
 * @param mostLanes the most lanes that one slider may serve here; if the margin is proven to be the best, no assignment
 *     that keeps as many pitches makes do with less
 */
public record Assignment(List<Integer> choices, List<Long> setPoints, long margin, long mostMargin, int mostLanes) {

    /** Copies the lists. */
    public Assignment {
        choices = List.copyOf(choices);
        setPoints = List.copyOf(setPoints);
    }

    /** {@return true if every pitch is kept} */
    public boolean keepsPitches() {
        return margin >= 0;
    }

    /** {@return true if no assignment has more margin} */
    public boolean isProvenBest() {
        return margin == mostMargin;
    }
}
