package headgate.verifier.fitting;

import headgate.runtime.carriage.Arm;
import headgate.runtime.fitting.Fitting;
import headgate.verifier.check.Case;
import headgate.verifier.check.HeadUnderTest;
import headgate.verifier.setup.Setup;
import headgate.verifier.setup.Station;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Finds which heads to put on which arms. Arms that the fitting names keep their head; each other arm may get any head, one
 * way round or the other if it can be turned, or none, as far as there are enough of them. Every head that is put on an arm
 * must suit it, and keep the pace on as many lanes as it gets; of what is left the assignment with the fewest lanes for the
 * busiest arm and then with the most margin is taken. That is one exact search over all heads, arms and lanes at once; if it
 * takes too many steps it ends, and the proposal says what no other choice exceeds.
 *
 * <p>A head that is too slow for so many lanes in one place is not tried with as many in another.
 */
public final class FittingSearch {

    /** Speeds are searched on a grid, m/s, up to one that no carriage with heads in the soil reaches. */
    public static final double SPEED_STEP = 0.01;

    private static final int MOST_SPEED_STEPS = 300;

    /** Most lanes that one head may get. */
    private static final int MOST_LANES = 3;

    /** What is wanted most. */
    public enum Goal {
        /** As much room as there can be, at the speed that the plan wants. */
        MARGIN,
        /** As high a speed, and with it an area rate, as there can be; then as much room. */
        RATE
    }

    /** What the rules say of heads. */
    public interface Opinion {

        /**
         * Says whether a head suits an arm, whatever is on the other arms.
         *
         * @param alone a case with one head on one arm, at the speed that is looked at
         * @return true if it does
         */
        boolean suits(Case alone);

        /**
         * Finds the arms that do not keep the pace.
         *
         * @param subject a case that can be set up
         * @return the arms
         */
        List<Station> tooSlow(Case subject);
    }

    /**
     * A proposal.
     *
     * @param arms the arms that carry a head, in the order of the carriage
     * @param speed the speed at which every arm keeps the pace, m/s
     * @param setup how it is set up; its margins say what was found and what no other choice exceeds
     */
    public record Proposal(List<Fitting.Place> arms, double speed, Setup setup) {

        /** Copies the list. */
        public Proposal {
            arms = List.copyOf(arms);
        }

        /** {@return true if no other choice of heads has more margin} */
        public boolean isProvenBest() {
            return setup.margin().equals(setup.mostMargin());
        }
    }

    /** A head, one way round. */
    private record Way(String head, boolean turned) {}

    private final Case base;
    private final Fitting fitting;
    private final Map<String, HeadUnderTest> heads;
    private final Opinion opinion;

    private FittingSearch(Case base, Fitting fitting, Map<String, HeadUnderTest> heads, Opinion opinion) {
        this.base = base;
        this.fitting = fitting;
        this.heads = new LinkedHashMap<>(heads);
        this.opinion = opinion;
    }

    /**
     * Searches.
     *
     * @param base the case of the fitting as it stands: arms that it names keep their heads
     * @param fitting the fitting
     * @param heads its heads, by what it calls them
     * @param goal what is wanted most
     * @param opinion what the rules say of heads
     * @return the best that was found; empty if no choice of heads serves every lane, keeps every gap and keeps the pace
     */
    public static Optional<Proposal> of(
            Case base, Fitting fitting, Map<String, HeadUnderTest> heads, Goal goal, Opinion opinion) {
        FittingSearch search = new FittingSearch(base, fitting, heads, opinion);
        return goal == Goal.MARGIN ? search.at(base.plan().value().wanted().speed()) : search.fastest();
    }

    /** Whatever keeps the pace keeps a slower one too: so the search halves. */
    private Optional<Proposal> fastest() {
        Optional<Proposal> best = at(SPEED_STEP);
        int can = 1;
        int cannot = MOST_SPEED_STEPS;
        while (best.isPresent() && cannot - can > 1) {
            int tried = (can + cannot) / 2;
            Optional<Proposal> found = at(tried * SPEED_STEP);
            if (found.isPresent()) {
                best = found;
                can = tried;
            } else {
                cannot = tried;
            }
        }
        return best;
    }

    /** The most margin at one speed. What turns out to be too slow is taken away until nothing is. */
    private Optional<Proposal> at(double speed) {
        Map<Way, Integer> most = new HashMap<>();
        while (true) {
            Case tried = withHeads(speed, most);
            Setup setup = Setup.of(tried);
            if (!setup.servesEveryLane() || setup.margin().orElse(0L) < 0) {
                return Optional.empty();
            }
            List<Station> slow = opinion.tooSlow(tried);
            List<Station> open =
                    slow.stream().filter(s -> !isNamed(s.arm().id())).toList();
            if (open.size() < slow.size()) {
                return Optional.empty();
            }
            if (open.isEmpty()) {
                return Optional.of(new Proposal(places(setup), speed, setup));
            }
            open.forEach(s -> most.merge(way(s), s.lanes().size() - 1, Math::min));
        }
    }

    private boolean isNamed(String arm) {
        return fitting.arms().stream().anyMatch(p -> p.arm().equals(arm));
    }

    private Case withHeads(double speed, Map<Way, Integer> most) {
        Case atSpeed = base.withPlan(p -> p.withWanted(p.wanted().withSpeed(speed)));
        List<Case.Mounting> all = new ArrayList<>(atSpeed.mountings());
        for (Arm arm : base.carriage().value().arms()) {
            if (isNamed(arm.id())) {
                continue;
            }
            for (Fitting.Head head : fitting.heads()) {
                Optional<HeadUnderTest> tested = Optional.ofNullable(heads.get(head.id()))
                        .filter(h -> h.sheet().isPresent());
                tested.ifPresent(h -> ways(head.id(), h).stream()
                        .filter(way -> most.getOrDefault(way, MOST_LANES) > 0)
                        .map(way -> new Case.Mounting(
                                arm.id(),
                                h,
                                way.turned(),
                                new Case.Duty.UpTo(most.getOrDefault(way, MOST_LANES), left(head))))
                        .filter(m -> opinion.suits(atSpeed.withMountings(List.of(m))))
                        .forEach(all::add));
            }
        }
        return atSpeed.withMountings(all);
    }

    private static List<Way> ways(String id, HeadUnderTest head) {
        boolean canTurn = head.sheet().orElseThrow().turnable();
        return canTurn ? List.of(new Way(id, false), new Way(id, true)) : List.of(new Way(id, false));
    }

    /** How many of a head are not yet on an arm. */
    private int left(Fitting.Head head) {
        int all = head.count().orElse(base.carriage().value().arms().size());
        return all
                - (int) fitting.arms().stream()
                        .filter(p -> p.head().equals(head.id()))
                        .count();
    }

    private Way way(Station station) {
        return new Way(name(station), station.turned());
    }

    private String name(Station station) {
        return heads.entrySet().stream()
                .filter(e -> e.getValue().equals(station.head()))
                .map(Map.Entry::getKey)
                .findFirst()
                .orElseThrow();
    }

    private List<Fitting.Place> places(Setup setup) {
        List<Fitting.Place> places = new ArrayList<>();
        for (Arm arm : base.carriage().value().arms()) {
            Optional<Fitting.Place> named = fitting.arms().stream()
                    .filter(p -> p.arm().equals(arm.id()))
                    .findFirst();
            named.or(() -> setup.stations().stream()
                            .filter(s -> s.arm().id().equals(arm.id()))
                            .findFirst()
                            .map(s -> new Fitting.Place(arm.id(), name(s), s.turned(), false, List.of())))
                    .ifPresent(places::add);
        }
        return places;
    }
}
