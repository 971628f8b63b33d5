package headgate.verifier.setup;

import headgate.verifier.check.Case;
import java.util.List;
import java.util.Optional;

/**
 * The set-up of a case.
 *
 * @param lanes the lanes of the plan, from the right to the left
 * @param stations the arms at work, from the right to the left; empty if not every lane can have an arm
 * @param waiting the arms that carry a head and wait lifted, from the right to the left
 * @param empty the arms without a head, from the right to the left
 * @param margin how much further apart the arms are than they must be, or how far each lane lies inside what its head
 *     reaches if that is less, micrometres; less than 0 if no set-up keeps every arm off its neighbours; empty if nothing
 *     limits it or there is no set-up
 * @param mostMargin what no other choice of arms and lanes exceeds, with as few lanes for the busiest arm, micrometres;
 *     equal to the margin if it is proven to be the best; empty if nothing limits it
 */
public record Setup(
        List<Lane> lanes,
        List<Station> stations,
        List<Station> waiting,
        List<EmptyArm> empty,
        Optional<Long> margin,
        Optional<Long> mostMargin) {

    /** Copies the lists. */
    public Setup {
        lanes = List.copyOf(lanes);
        stations = List.copyOf(stations);
        waiting = List.copyOf(waiting);
        empty = List.copyOf(empty);
    }

    /**
     * Sets a case up. Heads that gave no sheet are left out.
     *
     * @param subject the case
     * @return the set-up
     */
    public static Setup of(Case subject) {
        return subject.derived(Setup.class, SetupMaker::make);
    }

    /**
     * How many lanes an arm has to itself: each lane that it serves counts by one over the arms that serve it. Arms that
     * share a lane can always take its plants in turn.
     *
     * @param station an arm of this set-up
     * @return the number of lanes
     */
    public double lanesOf(Station station) {
        return station.lanes().stream()
                .mapToDouble(lane -> 1.0
                        / stations.stream()
                                .filter(s -> s.lanes().contains(lane))
                                .count())
                .sum();
    }

    /** {@return true if every lane has an arm} */
    public boolean servesEveryLane() {
        return !stations.isEmpty();
    }
}
