package headgate.verifier.replay;

import headgate.verifier.dispatch.MostTreatable;
import java.util.ArrayList;
import java.util.List;

/**
 * Adds up the upper bound of {@link MostTreatable} over a plot, a batch of plants at a time: what can be treated of all
 * plants is at most the sum of what could be treated of each batch if the arms had nothing else to do.
 *
 * <p>An action can treat plants beside its own. A plant that stands so near to another that one action may treat both is
 * counted as if it cost no time. So the bound holds for all schedules whose actions take, for each plant, no less than the
 * least that the head answered for it in this replay, reach no wider, and treat no more ground than any answer did so far.
 */
final class BoundTally {

    private static final int BATCH = 256;

    private final List<List<MostTreatable.Chance>> batch = new ArrayList<>();
    private long sum;

    /** A plant that an action for another may treat. */
    void addFree() {
        sum++;
    }

    void add(List<MostTreatable.Chance> chances) {
        if (chances.isEmpty()) {
            return;
        }
        batch.add(chances);
        if (batch.size() == BATCH) {
            close();
        }
    }

    private void close() {
        sum += MostTreatable.of(batch);
        batch.clear();
    }

    long total() {
        close();
        return sum;
    }
}
