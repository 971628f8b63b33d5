package headgate.verifier.plot;

import headgate.verifier.replay.ActionObserver;
import headgate.verifier.replay.ReplayOutcome;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What came of one plot.
 *
 * @param name what people call it
 * @param sha256 digest of the plot
 * @param madeUp true if it was made up from a seed
 * @param density weeds per square metre, if it was made up with a given density
 * @param asked how many different tasks the heads were asked for it
 * @param passes one for each speed, in the order of the speeds
 */
public record PlotResult(
        String name, String sha256, boolean madeUp, OptionalDouble density, long asked, List<Pass> passes) {

    /** Copies the list. */
    public PlotResult {
        passes = List.copyOf(passes);
    }

    /**
     * Adds passes at other speeds.
     *
     * @param more results of the same plot
     * @return both, in the order of the speeds
     */
    public PlotResult with(PlotResult more) {
        List<Pass> all = new ArrayList<>(passes);
        all.addAll(more.passes());
        all.sort(Comparator.comparingDouble(pass -> pass.outcome().speed()));
        return new PlotResult(name, sha256, madeUp, density, asked + more.asked(), all);
    }

    /**
     * One pass over it.
     *
     * @param outcome what came of it; it holds the speed
     * @param timeline the first actions, in the order in which they began; none if they were not asked for
     */
    public record Pass(ReplayOutcome outcome, List<ActionObserver.Done> timeline) {

        /** Copies the list. */
        public Pass {
            timeline = List.copyOf(timeline);
        }
    }
}
