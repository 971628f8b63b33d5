package headgate.verifier.setup;

import headgate.api.unit.Micrometres;
import headgate.verifier.check.Dimension;
import headgate.verifier.check.Term;
import headgate.verifier.geometry.Box;
import headgate.verifier.geometry.ForbiddenOffsets;
import headgate.verifier.geometry.Gap;
import headgate.verifier.geometry.Rounding;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Two arms in two stances, and the gap that must stay between them.
 *
 * @param right the arm further to the right
 * @param left the other arm
 * @param policyGap the least gap by policy, m
 */
public record StancePair(ArmStance right, ArmStance left, double policyGap) {

    private static final double NANOMETRES_PER_METRE = 1e9;

    /** {@return true if both arms are on one beam} */
    public boolean onOneBeam() {
        return right.arm().beam().equals(left.arm().beam());
    }

    /** {@return true if at least one of the two is at work} */
    public boolean someWorks() {
        return right.kind() == ArmStance.Kind.WORK || left.kind() == ArmStance.Kind.WORK;
    }

    /**
     * The required gap. Side shifts are locked while anybody works or lifts, so none adds its overshoot. What a lift may run
     * past its set-point counts along z, where it acts: the heights that a lifting arm sweeps go that much further.
     *
     * @return the gap, m, rounded to the nearest nanometre, as gaps are: a sum of decimal figures is then at its limit
     *     exactly when it says so on paper
     */
    public double required() {
        return rounded(policyGap + right.allowance().total() + left.allowance().total());
    }

    private static double rounded(double metres) {
        return Math.rint(metres * NANOMETRES_PER_METRE) / NANOMETRES_PER_METRE;
    }

    /** {@return a lower bound of the margin that needs no exact measurement, m} */
    public double leastMargin() {
        Optional<Box> a = right.space().bounds();
        Optional<Box> b = left.space().bounds();
        if (a.isEmpty() || b.isEmpty()) {
            return Double.POSITIVE_INFINITY;
        }
        return Math.sqrt((double) a.get().squaredGapTo(b.get())) / Micrometres.PER_METRE - required();
    }

    /** {@return the gap; empty if one of the two fills nothing} */
    public Optional<Gap> gap() {
        return Gap.between(right.space(), left.space());
    }

    /**
     * How much further apart the two mounts must stand across travel for the gap to hold there and at every larger
     * distance.
     *
     * @return micrometres; 0 if it holds
     */
    public long shortfall() {
        return ForbiddenOffsets.alongY(right.space(), left.space(), leastGap()).leastPitch();
    }

    /**
     * How much higher the left arm, or the right one, must stand for the gap to hold there and at every larger height.
     *
     * @param raiseRight true to raise the right arm
     * @return micrometres; 0 if it holds
     */
    public long shortfallUpward(boolean raiseRight) {
        ArmStance raised = raiseRight ? right : left;
        ArmStance still = raiseRight ? left : right;
        return ForbiddenOffsets.alongZ(still.space(), raised.space(), leastGap())
                .leastPitch();
    }

    private long leastGap() {
        return Math.max(1, Rounding.up(required()));
    }

    /** {@return the terms of the required gap, and what the heights of a lifting arm hold besides} */
    public List<Term> terms() {
        List<Term> terms = new ArrayList<>();
        terms.add(Term.of("gap by policy", policyGap, Dimension.LENGTH));
        for (ArmStance stance : List.of(right, left)) {
            terms.addAll(stance.allowance().terms("arm " + stance.arm().id()));
        }
        for (ArmStance stance : List.of(right, left)) {
            terms.add(Term.of(
                    "overshoot of the side shift of arm " + stance.arm().id() + ", locked", 0.0, Dimension.LENGTH));
        }
        for (ArmStance stance : List.of(right, left)) {
            terms.addAll(upAndDown(stance));
        }
        return terms;
    }

    /** The lift of an arm that moves: no part of the sum, since it acts along z alone and is swept there. */
    private static List<Term> upAndDown(ArmStance stance) {
        if (stance.kind() != ArmStance.Kind.LIFTING) {
            return List.of();
        }
        RunOut runOut = stance.station().orElseThrow().liftRunOut();
        String of = " of arm " + stance.arm().id() + ", in the heights that it sweeps";
        return List.of(
                Term.of("overshoot of the lift" + of, runOut.overshoot(), Dimension.LENGTH),
                Term.of("stopping distance v t_r + v² / 2b of the lift" + of, runOut.stopping(), Dimension.LENGTH));
    }

    /** {@return how reports name it} */
    public String label() {
        return right.label() + " and " + left.label();
    }
}
