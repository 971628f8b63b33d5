package headgate.verifier.rules.clearance;

import headgate.api.unit.Micrometres;
import headgate.verifier.check.Dimension;
import headgate.verifier.check.Term;
import headgate.verifier.geometry.Box;
import headgate.verifier.geometry.ForbiddenOffsets;
import headgate.verifier.geometry.Gap;
import headgate.verifier.geometry.Rounding;
import headgate.verifier.setup.ArmStance;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Two arms in two stances, and the gap that must stay between them. */
final class ArmPair {

    private static final double NANOMETRES_PER_METRE = 1e9;

    private final ArmStance right;
    private final ArmStance left;
    private final double policyGap;

    ArmPair(ArmStance right, ArmStance left, double policyGap) {
        this.right = right;
        this.left = left;
        this.policyGap = policyGap;
    }

    ArmStance right() {
        return right;
    }

    ArmStance left() {
        return left;
    }

    boolean onOneBeam() {
        return right.arm().beam().equals(left.arm().beam());
    }

    /**
     * The required gap, m. The side shifts are locked during work, so no overshoot across travel is added. Rounded to the
     * nearest nanometre, as gaps are: a sum of decimal figures is then at its limit exactly when it says so on paper.
     */
    double required() {
        double sum = policyGap + right.allowance().total() + left.allowance().total();
        return Math.rint(sum * NANOMETRES_PER_METRE) / NANOMETRES_PER_METRE;
    }

    /** A lower bound of the margin that needs no exact measurement, m. */
    double leastMargin() {
        Optional<Box> a = right.space().bounds();
        Optional<Box> b = left.space().bounds();
        if (a.isEmpty() || b.isEmpty()) {
            return Double.POSITIVE_INFINITY;
        }
        return Math.sqrt((double) a.get().squaredGapTo(b.get())) / Micrometres.PER_METRE - required();
    }

    Optional<Gap> gap() {
        return Gap.between(right.space(), left.space());
    }

    /**
     * How much further apart the two mounts must stand across travel for the gap to hold there and at every larger
     * distance, micrometres.
     */
    long shortfall() {
        return ForbiddenOffsets.alongY(right.space(), left.space(), Math.max(1, Rounding.up(required())))
                .leastPitch();
    }

    List<Term> terms() {
        List<Term> terms = new ArrayList<>();
        terms.add(Term.of("gap by policy", policyGap, Dimension.LENGTH));
        terms.addAll(right.allowance().terms("arm " + right.arm().id()));
        terms.addAll(left.allowance().terms("arm " + left.arm().id()));
        terms.add(Term.of("overshoot of the side shifts, locked at work", 0.0, Dimension.LENGTH));
        return terms;
    }
}
