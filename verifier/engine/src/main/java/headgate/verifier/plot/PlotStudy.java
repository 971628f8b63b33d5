package headgate.verifier.plot;

import java.util.List;
import java.util.Optional;

/**
 * All that came of replaying plots under one case.
 *
 * @param plots what came of each plot, in the order of the stands
 * @param summary what may be said from them
 * @param density what density the wanted speed can bear; empty if no stands were made up, or the plan has no weeds
 * @param proposals changes that would do, if the case does not
 * @param asked how many different tasks the heads were asked for all of it
 */
public record PlotStudy(
        List<PlotResult> plots,
        PlotSummary summary,
        Optional<DensityLadder> density,
        List<Proposal> proposals,
        long asked) {

    /** Copies the lists. */
    public PlotStudy {
        plots = List.copyOf(plots);
        proposals = List.copyOf(proposals);
    }
}
