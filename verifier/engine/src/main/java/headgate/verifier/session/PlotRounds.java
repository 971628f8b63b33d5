package headgate.verifier.session;

import headgate.verifier.plot.Digest;
import headgate.verifier.plot.KeptResults;
import headgate.verifier.plot.Plot;
import headgate.verifier.plot.PlotResult;
import headgate.verifier.plot.PlotRunner;
import headgate.verifier.replay.CaseSetting;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Runs plots round after round: at other speeds, other densities, with another setting. What is kept is not run again. */
final class PlotRounds {

    private final Optional<KeptResults> kept;
    private final String base;
    private final ReplayInput input;
    private final ReplayWatch watch;
    private long asked;

    /**
     * Rounds of one case.
     *
     * @param kept where results are kept; empty if nowhere
     * @param base digest of the case
     * @param input budget and threads
     * @param watch is told how it goes on
     */
    PlotRounds(Optional<KeptResults> kept, String base, ReplayInput input, ReplayWatch watch) {
        this.kept = kept;
        this.base = base;
        this.input = input;
        this.watch = watch;
    }

    /** A plot could not be run to its end. */
    static final class EndedException extends Exception {

        private static final long serialVersionUID = 1;

        private final transient ReplayResult.Undecided result;

        EndedException(ReplayResult.Undecided result) {
            super(result.reason());
            this.result = result;
        }

        ReplayResult.Undecided result() {
            return result;
        }
    }

    /**
     * One round.
     *
     * @param what what it is for, as people are told
     * @param setting the setting
     * @param change how the setting differs from the case's own; empty if it does not
     * @param speeds speeds, m/s; whole mm/s, ascending
     * @param shown the speed whose first actions are kept, m/s
     */
    record Round(String what, CaseSetting setting, String change, List<Double> speeds, double shown) {}

    /** Runs plots; one result for each, in their order. */
    List<PlotResult> run(Round round, List<? extends Plot> plots) throws IOException, EndedException {
        PlotRunner runner =
                new PlotRunner(round.setting(), round.speeds(), round.shown(), input.budget(), input.threads());
        List<PlotResult> results = new ArrayList<>();
        watch.round(round.what());
        for (Plot each : plots) {
            watch.begins(results.size() + 1, plots.size(), each.name());
            try (Plot plot = each) {
                PlotResult result = result(plot, key(round, plot), runner);
                asked += result.asked();
                results.add(result);
            }
        }
        return results;
    }

    private String key(Round round, Plot plot) {
        Digest digest = new Digest().add("case", base).add("change", round.change());
        round.speeds().forEach(speed -> digest.add("speed", speed));
        return digest.add("shown", round.shown()).add("plot", plot.sha256()).hex();
    }

    private PlotResult result(Plot plot, String key, PlotRunner runner) throws IOException, EndedException {
        Optional<PlotResult> known = kept.isPresent() ? kept.get().find(key) : Optional.empty();
        if (known.isPresent()) {
            // The same plants may lie in a file of another name.
            PlotResult found = known.get();
            watch.done(true);
            return new PlotResult(
                    plot.name(), found.sha256(), found.madeUp(), found.density(), found.asked(), found.passes());
        }
        PlotRunner.Run run = runner.run(plot, watch::passed);
        if (run instanceof PlotRunner.Run.Broke broke) {
            throw new EndedException(ReplayResult.Undecided.of(plot.name(), broke.fault()));
        }
        if (!(run instanceof PlotRunner.Run.Done done)) {
            throw new EndedException(new ReplayResult.Undecided("The heads would have to be asked more than "
                    + runner.budget() + " times for " + plot.name() + "."));
        }
        if (kept.isPresent()) {
            kept.get().keep(key, done.result());
        }
        watch.done(false);
        return done.result();
    }

    /** {@return how many tasks the heads were asked in all rounds, in this run or in one whose results were kept} */
    long asked() {
        return asked;
    }
}
