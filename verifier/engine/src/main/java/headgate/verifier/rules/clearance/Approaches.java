package headgate.verifier.rules.clearance;

import headgate.verifier.check.Case;
import headgate.verifier.check.Edit;
import headgate.verifier.remedy.Side;
import headgate.verifier.remedy.StopLifts;
import headgate.verifier.remedy.TrimHead;
import headgate.verifier.setup.ArmStance;
import headgate.verifier.setup.Setup;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * How near the arms of a case come to obstacles.
 *
 * @param examined how many pairs of a stance and an obstacle were looked at
 * @param tightest the pair with the least margin; empty if one side fills nothing
 * @param tooNear the pairs that do not keep their gap
 */
record Approaches(int examined, Optional<Approach> tightest, List<Approach> tooNear) {

    Approaches {
        tooNear = List.copyOf(tooNear);
    }

    /** Every arm of a case in every stance against every obstacle. */
    static Approaches of(Case subject, List<Obstacle> obstacles, double policyGap) {
        double k = subject.policy().value().coverageFactor().value();
        List<ArmStance> stances = ArmStance.all(Setup.of(subject), k).stream()
                .flatMap(List::stream)
                .toList();
        return of(stances, obstacles, policyGap);
    }

    static Approaches of(List<ArmStance> stances, List<Obstacle> obstacles, double policyGap) {
        GapSearch<Met> search = new GapSearch<>();
        for (ArmStance stance : stances) {
            double required = Approach.required(stance, policyGap);
            for (Obstacle obstacle : obstacles) {
                search.look(new Met(stance, obstacle), stance.space(), obstacle.space(), required);
            }
        }
        return new Approaches(
                search.examined(),
                search.tightest().map(f -> approach(f, policyGap)),
                search.tooNear().stream().map(f -> approach(f, policyGap)).toList());
    }

    private record Met(ArmStance stance, Obstacle obstacle) {}

    private static Approach approach(GapSearch.Found<Met> found, double policyGap) {
        return new Approach(found.pair().stance(), found.pair().obstacle(), found.gap(), policyGap);
    }

    /** The pairs of both. */
    Approaches and(Approaches other) {
        List<Approach> both = new ArrayList<>(tooNear);
        both.addAll(other.tooNear);
        boolean mine = other.tightest.isEmpty()
                || (tightest.isPresent()
                        && tightest.get().margin() <= other.tightest.get().margin());
        return new Approaches(examined + other.examined, mine ? tightest : other.tightest, both);
    }

    /**
     * What would mend it: lifts that stop lower, if that is what is wrong everywhere; and less of a head on the side where it
     * is too near, as much as its worst place asks for. Whether it really does is for the judge.
     */
    List<Edit> changes() {
        List<Edit> changes = new ArrayList<>();
        SortedMap<String, Long> tops = new TreeMap<>();
        tooNear.forEach(
                a -> a.lowerTop().ifPresent(top -> tops.merge(a.stance().arm().id(), top, Math::min)));
        if (!tops.isEmpty() && tooNear.stream().allMatch(a -> a.lowerTop().isPresent())) {
            changes.add(new StopLifts(tops));
        }
        Map<Trimmed, TrimHead> trims = new LinkedHashMap<>();
        tooNear.forEach(a -> a.trim()
                .ifPresent(t ->
                        trims.merge(new Trimmed(t.headId(), t.side()), t, (p, q) -> p.amount() >= q.amount() ? p : q)));
        changes.addAll(trims.values());
        return changes;
    }

    private record Trimmed(String headId, Side side) {}
}
