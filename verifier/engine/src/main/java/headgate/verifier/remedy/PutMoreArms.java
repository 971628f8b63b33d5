package headgate.verifier.remedy;

import headgate.verifier.check.Case;
import headgate.verifier.check.Edit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Let more arms work on lanes that have one already. The arms at work stay on their lanes.
 *
 * @param more the arms to be added and their lanes, at least one
 * @param atWork the arms at work and their lanes
 */
public record PutMoreArms(List<Put> more, List<Put> atWork) implements Edit {

    /** Copies the lists. */
    public PutMoreArms {
        more = List.copyOf(more);
        atWork = List.copyOf(atWork);
    }

    /**
     * An arm on lanes.
     *
     * @param mounting the arm and its head, as the case has them
     * @param lanes the numbers of its lanes, ascending, one next to the other
     */
    public record Put(Case.Mounting mounting, List<Integer> lanes) {

        /** Copies the list. */
        public Put {
            lanes = List.copyOf(lanes);
        }

        private Case.Mounting onLanes() {
            return new Case.Mounting(
                    mounting.armId(), mounting.head(), mounting.turned(), new Case.Duty.OnLanes(lanes));
        }

        private String text() {
            return "arm " + mounting.armId() + " on "
                    + (lanes.size() == 1 ? "lane " : "lanes ")
                    + lanes.stream().map(String::valueOf).collect(Collectors.joining(" and "));
        }
    }

    @Override
    public Case apply(Case before) {
        List<Put> puts = new ArrayList<>(atWork);
        puts.addAll(more);
        List<String> arms = puts.stream().map(p -> p.mounting().armId()).toList();
        List<Case.Mounting> mountings = new ArrayList<>(before.mountings().stream()
                .filter(m -> !arms.contains(m.armId()))
                .toList());
        puts.forEach(p -> mountings.add(p.onLanes()));
        return before.withMountings(mountings);
    }

    @Override
    public String text() {
        return "let one more arm help: " + more.stream().map(Put::text).collect(Collectors.joining(", "));
    }

    @Override
    public String kind() {
        return "put-more-arms";
    }

    @Override
    public Map<String, Object> figures() {
        return Map.of("arms", more.stream().map(p -> p.mounting().armId()).toList());
    }
}
