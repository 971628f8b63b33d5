package headgate.verifier.session;

import headgate.runtime.cropplan.CropPlan;
import headgate.runtime.origin.Loaded;
import headgate.runtime.task.TaskLattice;
import headgate.verifier.check.Case;
import headgate.verifier.check.Edit;
import headgate.verifier.plot.DensityLadder;
import headgate.verifier.plot.MadeUpPlot;
import headgate.verifier.plot.Plot;
import headgate.verifier.plot.PlotResult;
import headgate.verifier.plot.PlotStudy;
import headgate.verifier.plot.PlotSummary;
import headgate.verifier.plot.Proposal;
import headgate.verifier.plot.Refinement;
import headgate.verifier.remedy.SetSpeed;
import headgate.verifier.replay.CaseSetting;
import headgate.verifier.rules.throughput.PaceRemedies;
import headgate.verifier.session.PlotRounds.EndedException;
import headgate.verifier.session.PlotRounds.Round;
import headgate.verifier.trial.Bounds;
import headgate.verifier.trial.Standing;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * One study: plots at the speeds of a grid, the best speed of each group refined, the density that the wanted speed can bear,
 * and, if that speed fails, what would do instead.
 */
final class PlotStudies {

    /** For what chance does beside the plants. */
    static final long CHANCE = 1;

    /** Densities that are tried if fewer than two are given, as shares of the plan's. */
    private static final double[] DENSITIES = {0.25, 0.5, 0.75, 1, 1.25, 1.5, 1.75, 2};

    /** Largest density that a crop plan may give, 1/m². */
    private static final double DENSEST = 10_000;

    /** Densities are tried in thousandths of a weed per square metre. */
    private static final double FINEST_DENSITY = 1000;

    private final Case subject;
    private final CaseSetting setting;
    private final ReplayInput input;
    private final PlotRounds rounds;
    private final PlotSummary.Wanted wanted;
    private final List<Double> grid;

    PlotStudies(Case subject, ReplayInput input, PlotRounds rounds, List<Double> grid) {
        this.subject = subject;
        this.setting = CaseSetting.of(subject, CHANCE);
        this.input = input;
        this.rounds = rounds;
        this.grid = grid;
        CropPlan plan = subject.plan().value();
        this.wanted = new PlotSummary.Wanted(
                TaskLattice.SPEED.down(plan.wanted().speed()),
                plan.wanted().coverage(),
                subject.policy().value().confidence().value(),
                plan.weeds().map(w -> OptionalDouble.of(w.density())).orElse(OptionalDouble.empty()),
                plan.wanted()
                        .cropLoss()
                        .orElse(subject.policy().value().cropLoss().value()));
    }

    /** {@return what the files do not say and the replay takes as perfect, as clauses} */
    List<String> missing() {
        return setting.missing();
    }

    PlotStudy of(List<? extends Plot> plots) throws IOException, EndedException {
        List<PlotResult> results =
                new ArrayList<>(rounds.run(new Round("each stand", setting, "", grid, wanted.speed()), plots));
        PlotSummary first = PlotSummary.of(results, wanted, grid);
        if (!input.search()) {
            return new PlotStudy(results, first, Optional.empty(), List.of(), rounds.asked());
        }
        for (PlotSummary.Group group : first.groups()) {
            refine(group, plots, results);
        }
        PlotSummary summary = PlotSummary.of(results, wanted, grid);
        Optional<DensityLadder> density = density(summary);
        List<Proposal> proposals =
                summary.standing() == Standing.FAILS ? proposals(summary, plots, results) : List.of();
        return new PlotStudy(results, summary, density, proposals, rounds.asked());
    }

    /** Replays the plots of a group between the last speed that passes and the first that does not. */
    private void refine(PlotSummary.Group group, List<? extends Plot> plots, List<PlotResult> results)
            throws IOException, EndedException {
        if (group.cells().get(0).targets() == 0) {
            return;
        }
        List<Double> finer = Refinement.of(
                group.cells().stream().map(PlotSummary.Cell::speed).toList(),
                group.cells().stream().map(PlotSummary.Cell::standing).toList(),
                TaskLattice.SPEED::down);
        if (finer.isEmpty()) {
            return;
        }
        List<Integer> numbers = new ArrayList<>();
        List<Plot> members = new ArrayList<>();
        for (int i = 0; i < plots.size(); i++) {
            if (group.holds(results.get(i))) {
                numbers.add(i);
                members.add(plots.get(i));
            }
        }
        List<PlotResult> more = rounds.run(new Round("looking for the best speed", setting, "", finer, 0), members);
        for (int i = 0; i < numbers.size(); i++) {
            results.set(numbers.get(i), results.get(numbers.get(i)).with(more.get(i)));
        }
    }

    /** Climbs over densities at the wanted speed; what was run there already is not run again. */
    private Optional<DensityLadder> density(PlotSummary summary) throws IOException, EndedException {
        OptionalDouble expected = wanted.density();
        if (expected.isEmpty() || input.seeds().isEmpty() || !(expected.getAsDouble() > 0)) {
            return Optional.empty();
        }
        Map<Double, PlotSummary.Cell> known = new HashMap<>();
        for (PlotSummary.Group group : summary.groups()) {
            if (group.madeUp() && group.density().isPresent()) {
                group.at(wanted.speed())
                        .ifPresent(cell -> known.put(group.density().getAsDouble(), cell));
            }
        }
        TreeSet<Double> coarse = new TreeSet<>(input.densities());
        if (coarse.size() < 2) {
            for (double share : DENSITIES) {
                coarse.add(round(share * expected.getAsDouble()));
            }
            coarse.add(expected.getAsDouble());
        }
        coarse.removeIf(density -> !(density > 0 && density <= DENSEST));
        List<DensityLadder.Rung> rungs = rungs(List.copyOf(coarse), known);
        if (rungs.isEmpty()) {
            return Optional.empty();
        }
        rungs.addAll(rungs(new DensityLadder(wanted.speed(), rungs).finer(PlotStudies::round), known));
        return Optional.of(new DensityLadder(wanted.speed(), rungs));
    }

    private static double round(double density) {
        return Math.round(density * FINEST_DENSITY) / FINEST_DENSITY;
    }

    private List<DensityLadder.Rung> rungs(List<Double> densities, Map<Double, PlotSummary.Cell> known)
            throws IOException, EndedException {
        List<MadeUpPlot> plots = new ArrayList<>();
        for (double density : densities) {
            if (!known.containsKey(density)) {
                plots.addAll(madeUp(input, subject.plan(), density));
            }
        }
        if (!plots.isEmpty()) {
            List<Double> speeds = List.of(wanted.speed());
            List<PlotResult> results =
                    rounds.run(new Round("looking for the density that can be borne", setting, "", speeds, 0), plots);
            for (PlotSummary.Group group :
                    PlotSummary.of(results, wanted, speeds).groups()) {
                known.put(group.density().getAsDouble(), group.cells().get(0));
            }
        }
        List<DensityLadder.Rung> rungs = new ArrayList<>();
        for (double density : densities) {
            PlotSummary.Cell cell = known.get(density);
            if (cell != null) {
                rungs.add(new DensityLadder.Rung(density, cell));
            }
        }
        return rungs;
    }

    static List<MadeUpPlot> madeUp(ReplayInput input, Loaded<CropPlan> plan, double density) {
        double length = input.length().orElse(plan.value().field().length());
        return new TreeSet<>(input.seeds())
                .stream()
                        .map(seed -> MadeUpPlot.of(plan.value(), plan.sha256(), density, length, seed))
                        .toList();
    }

    /** What would do: slower, one more arm on a lane, a shorter action. Each is replayed over the plots that are judged. */
    private List<Proposal> proposals(PlotSummary summary, List<? extends Plot> plots, List<PlotResult> results)
            throws IOException, EndedException {
        List<Proposal> proposals = new ArrayList<>();
        slower(summary).ifPresent(proposals::add);
        List<Plot> judged = new ArrayList<>();
        for (int i = 0; i < plots.size(); i++) {
            PlotResult result = results.get(i);
            if (summary.groups().stream().anyMatch(g -> g.judged() && g.holds(result))) {
                judged.add(plots.get(i));
            }
        }
        Map<Edit, Bounds> tried = new HashMap<>();
        Predicate<Edit> does = edit -> passes(edit, judged, tried);
        try {
            Stream.of(PaceRemedies.oneMoreArm(subject, does), PaceRemedies.shorterAction(subject, does))
                    .flatMap(Optional::stream)
                    .forEach(edit -> proposals.add(new Proposal(edit, tried.getOrDefault(edit, Bounds.NO_PLANTS))));
        } catch (UncheckedIOException broken) {
            throw broken.getCause();
        }
        return proposals;
    }

    private static Optional<Proposal> slower(PlotSummary summary) {
        return summary.groups().stream()
                .filter(PlotSummary.Group::judged)
                .min(Comparator.comparing(group -> group.best().orElse(0.0)))
                .flatMap(group -> group.best().flatMap(speed -> group.at(speed)
                        .map(cell -> new Proposal(new SetSpeed(speed), cell.coverage()))));
    }

    private boolean passes(Edit edit, List<Plot> judged, Map<Edit, Bounds> tried) {
        Case changed = edit.apply(subject);
        if (CaseSetting.obstacle(changed).isPresent()) {
            return false;
        }
        try {
            List<Double> speeds = List.of(wanted.speed());
            PlotSummary summary = PlotSummary.of(
                    rounds.run(
                            new Round("trying a remedy", CaseSetting.of(changed, CHANCE), edit.text(), speeds, 0),
                            judged),
                    wanted,
                    speeds);
            summary.groups().stream()
                    .map(group -> group.cells().get(0).coverage())
                    .min(Comparator.comparingDouble(Bounds::lower))
                    .ifPresent(least -> tried.put(edit, least));
            return summary.standing() == Standing.PASSES;
        } catch (EndedException ended) {
            // A change that cannot be replayed to its end is none to propose.
            return false;
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
