package headgate.verifier.report;

import headgate.verifier.interlock.Interlocks;
import headgate.verifier.setup.ArmStance;
import headgate.verifier.setup.PairGaps;
import java.util.List;
import java.util.Optional;

/**
 * The gaps between two arms in every pair of their stances.
 *
 * @param right the arm further to the right
 * @param left the other arm
 * @param required the gap that must stay between them, m
 * @param inTurn true if an interlock keeps them apart where they would be too near
 * @param gaps the gaps
 */
public record ArmGaps(String right, String left, double required, boolean inTurn, List<StanceGap> gaps) {

    /** Copies the list. */
    public ArmGaps {
        gaps = List.copyOf(gaps);
    }

    /** How high an arm is while the gap is measured: what a column of a table shows. */
    public enum Level {
        /** At work. */
        WORK("work"),
        /** Anywhere between work and lifted. */
        LIFTING("lifting"),
        /** Lifted: parked, waiting, or without a head. */
        LIFTED("lifted");

        private final String label;

        Level(String label) {
            this.label = label;
        }

        /** {@return how reports say it} */
        public String label() {
            return label;
        }

        private static Level of(ArmStance.Kind kind) {
            return switch (kind) {
                case WORK -> WORK;
                case LIFTING -> LIFTING;
                case PARKED, WAITING, EMPTY -> LIFTED;
            };
        }
    }

    /**
     * A gap.
     *
     * @param right how high the arm further to the right is
     * @param left how high the other arm is
     * @param gap the gap, m; empty if one of the two fills nothing
     */
    public record StanceGap(Level right, Level left, Optional<Double> gap) {}

    static ArmGaps of(PairGaps pair, Interlocks interlocks) {
        return new ArmGaps(
                Plain.line(pair.right()),
                Plain.line(pair.left()),
                pair.required(),
                interlocks.between(pair.right(), pair.left()).isPresent(),
                pair.gaps().stream()
                        .map(g -> new StanceGap(Level.of(g.right()), Level.of(g.left()), g.gap()))
                        .toList());
    }

    /** {@return the least of the gaps, m; empty if one of the arms fills nothing} */
    public Optional<Double> least() {
        return gaps.stream().flatMap(g -> g.gap().stream()).min(Double::compare);
    }

    /**
     * Finds a gap.
     *
     * @param ofRight how high the arm further to the right is
     * @param ofLeft how high the other arm is
     * @return the gap, m; empty if an arm is never so, or fills nothing
     */
    public Optional<Double> gap(Level ofRight, Level ofLeft) {
        return gaps.stream()
                .filter(g -> g.right() == ofRight && g.left() == ofLeft)
                .flatMap(g -> g.gap().stream())
                .findFirst();
    }

    /**
     * Says whether a gap is less than it must be.
     *
     * @param gap the gap, m
     * @return true if it is
     */
    public boolean isTooNear(double gap) {
        return gap < required;
    }
}
