package headgate.verifier.assignment;

import headgate.api.shape.Interval;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;

/** Tries every choice of every slider at every whole set-point. For small problems only. */
final class BruteForce {

    private final Problem problem;
    private boolean exists;
    private boolean keeps;
    private int lanes;
    private long margin;

    record Best(boolean exists, int lanes, long margin) {}

    private BruteForce(Problem problem) {
        this.problem = problem;
    }

    static Best best(Problem problem) {
        BruteForce search = new BruteForce(problem);
        search.go(new ArrayList<>(), new ArrayList<>());
        return new Best(search.exists, search.lanes, search.margin);
    }

    private void go(List<Integer> choices, List<Long> at) {
        int i = choices.size();
        if (i == problem.sliders().size()) {
            consider(choices, at);
            return;
        }
        List<Choice> all = problem.sliders().get(i).choices();
        for (int c = 0; c < all.size(); c++) {
            for (Interval rail : all.get(c).allowed()) {
                for (long y = rail.least(); y <= rail.most(); y++) {
                    choices.add(c);
                    at.add(y);
                    go(choices, at);
                    choices.remove(i);
                    at.remove(i);
                }
            }
        }
    }

    private void consider(List<Integer> choices, List<Long> at) {
        OptionalLong found = margin(problem, choices, at);
        if (found.isEmpty()) {
            return;
        }
        int busiest = 0;
        for (int i = 0; i < choices.size(); i++) {
            busiest = Math.max(
                    busiest,
                    problem.sliders().get(i).choices().get(choices.get(i)).lanes());
        }
        boolean nowKeeps = found.getAsLong() >= 0;
        boolean better = !exists
                || (nowKeeps && !keeps)
                || (nowKeeps == keeps && (busiest < lanes || (busiest == lanes && found.getAsLong() > margin)));
        if (better) {
            exists = true;
            keeps = nowKeeps;
            lanes = busiest;
            margin = found.getAsLong();
        }
    }

    /** The margin of an assignment; empty if it is none. */
    static OptionalLong margin(Problem problem, List<Integer> choices, List<Long> at) {
        int[] served = new int[problem.needs().size()];
        int[] taken = new int[problem.stock().size()];
        long best = Assigner.PLENTY;
        for (int i = 0; i < choices.size(); i++) {
            Slider slider = problem.sliders().get(i);
            Choice choice = slider.choices().get(choices.get(i));
            for (int k = 0; k < choice.lanes(); k++) {
                served[choice.firstLane() + k]++;
            }
            choice.item().ifPresent(item -> taken[item]++);
            long y = at.get(i);
            if (choice.cover().isPresent()) {
                long inside = Math.min(
                        y - choice.cover().get().least(), choice.cover().get().most() - y);
                if (inside < 0) {
                    return OptionalLong.empty();
                }
                // As far inside as it can be is no limit.
                if (inside < choice.mostCover().orElseThrow()) {
                    best = Math.min(best, inside);
                }
            }
            for (int j = 0; j < i; j++) {
                Slider other = problem.sliders().get(j);
                long offset = y - at.get(j);
                if (slider.link().isPresent()
                        && other.link().isPresent()
                        && offset
                                != slider.link().get().offset()
                                        - other.link().get().offset()) {
                    return OptionalLong.empty();
                }
                Optional<Interval> forbidden = problem.pitch()
                        .forbidden(j, other.choices().get(choices.get(j)).stance(), i, choice.stance());
                boolean oneBeam = slider.beam() == other.beam();
                if (oneBeam && offset < 1) {
                    return OptionalLong.empty();
                }
                if (forbidden.isPresent()) {
                    long beyond = offset - forbidden.get().most();
                    best = Math.min(
                            best,
                            oneBeam ? beyond : Math.max(beyond, forbidden.get().least() - offset));
                }
            }
        }
        for (int item = 0; item < taken.length; item++) {
            if (taken[item] > problem.stock().get(item)) {
                return OptionalLong.empty();
            }
        }
        for (int lane = 0; lane < served.length; lane++) {
            if (served[lane] != problem.needs().get(lane)) {
                return OptionalLong.empty();
            }
        }
        return OptionalLong.of(best);
    }
}
