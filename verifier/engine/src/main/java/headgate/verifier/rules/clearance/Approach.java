package headgate.verifier.rules.clearance;

import headgate.api.unit.Micrometres;
import headgate.verifier.check.Comparison;
import headgate.verifier.check.Dimension;
import headgate.verifier.check.Finding;
import headgate.verifier.check.RuleInfo;
import headgate.verifier.check.Term;
import headgate.verifier.check.Witness;
import headgate.verifier.geometry.ForbiddenOffsets;
import headgate.verifier.geometry.Gap;
import headgate.verifier.geometry.Occupied;
import headgate.verifier.geometry.Rounding;
import headgate.verifier.remedy.Side;
import headgate.verifier.remedy.TrimHead;
import headgate.verifier.setup.ArmStance;
import headgate.verifier.setup.RunOut;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * An arm in one stance, an obstacle, and the gap between the two.
 *
 * @param stance the arm
 * @param obstacle the obstacle
 * @param gap the gap
 * @param policyGap the least gap by policy, m
 */
record Approach(ArmStance stance, Obstacle obstacle, Gap gap, double policyGap) {

    /** What a change is rounded up to, micrometres: nobody works finer than a millimetre. */
    private static final long STEP = 1000;

    /** The gap that must stay, m, to the nearest nanometre as gaps are: nothing but the arm can be off. */
    static double required(ArmStance stance, double policyGap) {
        return GapSearch.nearestNanometre(policyGap + stance.allowance().total());
    }

    double required() {
        return required(stance, policyGap);
    }

    /** The gap less the required one, m. */
    double margin() {
        return gap.metres() - required();
    }

    String label() {
        return stance.label() + " and " + obstacle.label();
    }

    /** Every term of the required gap, and what the heights of a lifting arm hold besides. */
    private List<Term> terms() {
        List<Term> terms = new ArrayList<>();
        String of = "arm " + stance.arm().id();
        terms.add(Term.of("gap by policy", policyGap, Dimension.LENGTH));
        terms.addAll(stance.allowance().terms(of));
        terms.add(Term.of("overshoot of the side shift of " + of + ", locked", 0.0, Dimension.LENGTH));
        if (stance.kind() == ArmStance.Kind.LIFTING) {
            RunOut runOut = stance.station().orElseThrow().liftRunOut();
            String swept = " of " + of + ", in the heights that it sweeps";
            terms.add(Term.of("overshoot of the lift" + swept, runOut.overshoot(), Dimension.LENGTH));
            terms.add(Term.of(
                    "stopping distance v t_r + v² / 2b of the lift" + swept, runOut.stopping(), Dimension.LENGTH));
        }
        return terms;
    }

    /** A finding about this place, still to be ended. */
    Finding.Builder finding(RuleInfo rule, String policyField) {
        return Finding.of(rule, label())
                .comparison(Comparison.atLeast(gap.metres(), required(), Dimension.LENGTH))
                .terms(terms())
                .field(policyField)
                .witness(new Witness(gap.first(), gap.second(), Dimension.LENGTH.text(gap.metres())));
    }

    /** {@return where a lift would have to stop for the gap to hold, micrometres; empty if lifting is not what is wrong} */
    Optional<Long> lowerTop() {
        if (stance.kind() == ArmStance.Kind.WORK
                || gap.second().z() < gap.first().z()) {
            return Optional.empty();
        }
        long lower = ForbiddenOffsets.alongZ(stance.space(), obstacle.space(), needed())
                .leastPitch();
        long top = Math.floorDiv(stance.arm().lift().most() - lower, STEP) * STEP;
        return Optional.of(top).filter(t -> t > stance.arm().lift().least());
    }

    /** {@return the trim of the head that would mend it, on the side where the obstacle is; empty if there is no head} */
    Optional<TrimHead> trim() {
        long x = gap.second().x() - gap.first().x();
        long y = gap.second().y() - gap.first().y();
        boolean along = Math.abs(x) >= Math.abs(y);
        boolean ahead = along ? x >= 0 : y >= 0;
        Side side = along ? (ahead ? Side.FRONT : Side.REAR) : ahead ? Side.LEFT : Side.RIGHT;
        Occupied behind = ahead ? stance.space() : obstacle.space();
        Occupied before = ahead ? obstacle.space() : stance.space();
        ForbiddenOffsets forbidden = along
                ? ForbiddenOffsets.alongX(behind, before, needed())
                : ForbiddenOffsets.alongY(behind, before, needed());
        long amount = -Math.floorDiv(-forbidden.leastPitch(), STEP) * STEP;
        return stance.station()
                .filter(s -> amount > 0)
                .map(s -> new TrimHead(s.head().id(), s.turned() ? side.turned() : side, amount));
    }

    private long needed() {
        return Math.max(1, Rounding.up(required()));
    }

    static String text(long micrometres) {
        return Dimension.LENGTH.text(Micrometres.toMetres(micrometres));
    }
}
