package headgate.verifier.setup;

import headgate.verifier.check.Case;
import headgate.verifier.geometry.Gap;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The gaps between two arms, each stance of one against each stance of the other.
 *
 * @param right the arm further to the right
 * @param left the other arm
 * @param required the gap that must stay between them, m
 * @param gaps the gaps, in the order of the stances
 */
public record PairGaps(String right, String left, double required, List<StanceGap> gaps) {

    /** Copies the list. */
    public PairGaps {
        gaps = List.copyOf(gaps);
    }

    /**
     * A gap.
     *
     * @param right the stance of the arm further to the right
     * @param left the stance of the other arm
     * @param gap the gap, m; empty if one of the two fills nothing
     */
    public record StanceGap(ArmStance.Kind right, ArmStance.Kind left, Optional<Double> gap) {}

    /**
     * Measures every pair of arms of a case, whatever its gap.
     *
     * @param subject the case
     * @return the pairs, arm by arm from the right to the left; none if the case cannot be set up
     */
    public static List<PairGaps> of(Case subject) {
        double k = subject.policy().value().coverageFactor().value();
        double policyGap = subject.policy().value().armGap().value();
        List<List<ArmStance>> arms = ArmStance.all(Setup.of(subject), k);
        List<PairGaps> all = new ArrayList<>();
        for (int i = 0; i < arms.size(); i++) {
            for (int j = i + 1; j < arms.size(); j++) {
                all.add(of(arms.get(i), arms.get(j), policyGap));
            }
        }
        return List.copyOf(all);
    }

    private static PairGaps of(List<ArmStance> right, List<ArmStance> left, double policyGap) {
        List<StanceGap> gaps = new ArrayList<>();
        for (ArmStance r : right) {
            for (ArmStance l : left) {
                Optional<Double> gap = new StancePair(r, l, policyGap).gap().map(Gap::metres);
                gaps.add(new StanceGap(r.kind(), l.kind(), gap));
            }
        }
        double required = new StancePair(right.get(0), left.get(0), policyGap).required();
        return new PairGaps(right.get(0).arm().id(), left.get(0).arm().id(), required, gaps);
    }

    /** {@return the least of the gaps, m; empty if one of the arms fills nothing} */
    public Optional<Double> least() {
        return gaps.stream().flatMap(g -> g.gap().stream()).min(Comparator.naturalOrder());
    }
}
