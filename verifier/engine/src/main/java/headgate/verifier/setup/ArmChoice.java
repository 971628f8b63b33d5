package headgate.verifier.setup;

import headgate.runtime.carriage.Arm;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Chooses which arm serves which lane. Arms keep their order across the carriage; each lane gets one arm whose rail
 * reaches it. Of all such choices the one with the largest least distance between neighbours on one beam is taken, then
 * the one whose mounts stand nearest to the middle of their rails, then the one that uses the arms named first.
 */
final class ArmChoice {

    /** How good a partial choice is: larger pitch first, then smaller displacement. */
    private record Worth(long leastPitch, long displacement) implements Comparable<Worth> {
        static final Worth PERFECT = new Worth(Long.MAX_VALUE, 0);

        @Override
        public int compareTo(Worth other) {
            int byPitch = Long.compare(leastPitch, other.leastPitch);
            return byPitch != 0 ? byPitch : Long.compare(other.displacement, displacement);
        }
    }

    private record Choice(Worth worth, Map<Integer, Arm> armOfLane) {}

    /** Which arm and lane come next, and where on each beam the last mount was set. */
    private record State(int arm, int lane, Map<String, Long> lastOnBeam) {}

    private final List<Arm> arms;
    private final List<Lane> lanes;
    private final Map<State, Optional<Choice>> known = new HashMap<>();

    private ArmChoice(List<Arm> arms, List<Lane> lanes) {
        this.arms = arms.stream()
                .sorted(Comparator.comparingLong(
                                (Arm a) -> a.shift().least() + a.shift().most())
                        .thenComparing(Arm::id))
                .toList();
        this.lanes = lanes;
    }

    /**
     * Chooses.
     *
     * @param arms the arms that carry a head
     * @param lanes the lanes, from the right to the left
     * @return the arm of each lane, by the lane's number; empty if not every lane can have one
     */
    static Optional<Map<Integer, Arm>> choose(List<Arm> arms, List<Lane> lanes) {
        return new ArmChoice(arms, lanes).best(new State(0, 0, Map.of())).map(Choice::armOfLane);
    }

    private Optional<Choice> best(State state) {
        if (state.lane() == lanes.size()) {
            return Optional.of(new Choice(Worth.PERFECT, Map.of()));
        }
        if (arms.size() - state.arm() < lanes.size() - state.lane()) {
            return Optional.empty();
        }
        Optional<Choice> seen = known.get(state);
        if (seen == null) {
            seen = better(use(state), best(new State(state.arm() + 1, state.lane(), state.lastOnBeam())));
            known.put(state, seen);
        }
        return seen;
    }

    private Optional<Choice> use(State state) {
        Arm arm = arms.get(state.arm());
        Lane lane = lanes.get(state.lane());
        if (!arm.shift().contains(lane.y())) {
            return Optional.empty();
        }
        Long last = state.lastOnBeam().get(arm.beam());
        long pitch = last == null ? Long.MAX_VALUE : lane.y() - last;
        long middle = (arm.shift().least() + arm.shift().most()) / 2;
        Map<String, Long> after = new HashMap<>(state.lastOnBeam());
        after.put(arm.beam(), lane.y());
        return best(new State(state.arm() + 1, state.lane() + 1, Map.copyOf(after)))
                .map(rest -> {
                    Map<Integer, Arm> all = new HashMap<>(rest.armOfLane());
                    all.put(lane.number(), arm);
                    return new Choice(
                            new Worth(
                                    Math.min(pitch, rest.worth().leastPitch()),
                                    rest.worth().displacement() + Math.abs(lane.y() - middle)),
                            Map.copyOf(all));
                });
    }

    private static Optional<Choice> better(Optional<Choice> first, Optional<Choice> second) {
        if (first.isEmpty() || second.isEmpty()) {
            return first.isPresent() ? first : second;
        }
        return first.get().worth().compareTo(second.get().worth()) >= 0 ? first : second;
    }
}
