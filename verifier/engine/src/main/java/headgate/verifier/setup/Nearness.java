package headgate.verifier.setup;

import headgate.api.unit.Micrometres;
import headgate.runtime.policy.Policy;
import headgate.verifier.check.Case;
import headgate.verifier.geometry.Box;
import headgate.verifier.geometry.Gap;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * How near the arms of a case come to each other, every stance of one against every stance of every other.
 *
 * @param arms how many arms there are
 * @param examined how many pairs of stances were looked at
 * @param tightest the pair with the least margin; empty if there are no two arms with material
 * @param tooNear the pairs that do not keep their gap, neighbours first
 */
public record Nearness(int arms, int examined, Optional<Measured> tightest, List<Measured> tooNear) {

    /** Copies the list. */
    public Nearness {
        tooNear = List.copyOf(tooNear);
    }

    /**
     * A pair with its gap.
     *
     * @param pair the pair
     * @param gap its gap
     */
    public record Measured(StancePair pair, Gap gap) {

        /** {@return the gap less the required one, m; less than 0 if it is too near} */
        public double margin() {
            return gap.metres() - pair.required();
        }
    }

    /** All stances of an arm, and a box around all of them. */
    private record Swept(List<ArmStance> stances, Optional<Box> box, double allowance) {

        static Swept of(List<ArmStance> stances) {
            return new Swept(
                    stances,
                    stances.stream().flatMap(s -> s.space().bounds().stream()).reduce(Box::hull),
                    stances.stream()
                            .mapToDouble(s -> s.allowance().total())
                            .max()
                            .orElse(0));
        }

        /** A lower bound of the margin of any pair of stances. */
        double leastMargin(Swept other, double policyGap) {
            if (box.isEmpty() || other.box.isEmpty()) {
                return Double.POSITIVE_INFINITY;
            }
            return Math.sqrt((double) box.get().squaredGapTo(other.box.get())) / Micrometres.PER_METRE
                    - policyGap
                    - allowance
                    - other.allowance;
        }
    }

    /**
     * Measures a case. Pairs of arms, and of stances, whose boxes alone leave more margin than the tightest so far are left
     * out: they can be neither tighter nor too near.
     *
     * @param subject the case
     * @return what comes near
     */
    public static Nearness of(Case subject) {
        return subject.derived(Nearness.class, s -> of(s, pair -> true));
    }

    /**
     * Measures some pairs of a case.
     *
     * @param subject the case
     * @param counts which pairs of stances count
     * @return what comes near
     */
    public static Nearness of(Case subject, Predicate<StancePair> counts) {
        Setup setup = Setup.of(subject);
        Policy policy = subject.policy().value();
        double gap = policy.armGap().value();
        List<Swept> arms = ArmStance.all(setup, policy.coverageFactor().value()).stream()
                .map(Swept::of)
                .toList();
        List<Measured> tooNear = new ArrayList<>();
        Optional<Measured> tightest = Optional.empty();
        int examined = 0;
        // Neighbours first: they are the tightest, and prune the rest.
        for (int apart = 1; apart < arms.size(); apart++) {
            for (int i = 0; i + apart < arms.size(); i++) {
                Swept right = arms.get(i);
                Swept left = arms.get(i + apart);
                examined += right.stances().size() * left.stances().size();
                if (canDecideNothing(right.leastMargin(left, gap), tightest)) {
                    continue;
                }
                for (ArmStance r : right.stances()) {
                    for (ArmStance l : left.stances()) {
                        Optional<Measured> measured = Optional.of(new StancePair(r, l, gap))
                                .filter(counts)
                                .flatMap(measuredUnlessFar(tightest));
                        if (measured.isPresent()) {
                            Measured m = measured.get();
                            if (m.margin() < 0) {
                                tooNear.add(m);
                            }
                            if (tightest.isEmpty()
                                    || m.margin() < tightest.get().margin()) {
                                tightest = measured;
                            }
                        }
                    }
                }
            }
        }
        return new Nearness(arms.size(), examined, tightest, tooNear);
    }

    private static Function<StancePair, Optional<Measured>> measuredUnlessFar(Optional<Measured> tightest) {
        return pair -> canDecideNothing(pair.leastMargin(), tightest)
                ? Optional.empty()
                : pair.gap().map(g -> new Measured(pair, g));
    }

    private static boolean canDecideNothing(double leastMargin, Optional<Measured> tightest) {
        return leastMargin == Double.POSITIVE_INFINITY
                || (tightest.isPresent()
                        && leastMargin > Math.max(0, tightest.get().margin()));
    }
}
