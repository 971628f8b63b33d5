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
 */
public record Setup(
        List<Lane> lanes, List<Station> stations, List<Station> waiting, List<EmptyArm> empty, Optional<Long> margin) {

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

    /** {@return true if every lane has an arm} */
    public boolean servesEveryLane() {
        return !stations.isEmpty();
    }
}
