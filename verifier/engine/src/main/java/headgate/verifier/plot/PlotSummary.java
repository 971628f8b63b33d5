package headgate.verifier.plot;

import headgate.verifier.replay.Miss;
import headgate.verifier.replay.ReplayOutcome;
import headgate.verifier.trial.Bounds;
import headgate.verifier.trial.Standing;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What may be said from several plots: those that were recorded as one group, those that were made up by density.
 *
 * @param wanted what is wanted
 * @param grid the speeds that every group was run at, ascending, m/s; a group's others refine its best speed
 * @param groups the groups: recorded plots first, then by density, ascending
 */
public record PlotSummary(Wanted wanted, List<Double> grid, List<Group> groups) {

    /** Copies the lists. */
    public PlotSummary {
        grid = List.copyOf(grid);
        groups = List.copyOf(groups);
    }

    /**
     * What is wanted.
     *
     * @param speed m/s
     * @param coverage 0 to 1
     * @param confidence level of confidence of each bound, 0.5 to less than 1
     * @param density weeds per square metre that the plan expects; empty if it has no weeds
     * @param cropLoss largest share of crop plants that may be lost, 0 to 1
     */
    public record Wanted(double speed, double coverage, double confidence, OptionalDouble density, double cropLoss) {}

    /**
     * Plots of one kind.
     *
     * @param madeUp true if they were made up
     * @param density weeds per square metre, if they were made up with a given density
     * @param plots how many there are
     * @param judged true if the wish is held against them
     * @param cells one for each speed, ascending
     * @param best the largest speed up to which every speed that was run passes, m/s; empty if the first does not
     */
    public record Group(
            boolean madeUp,
            OptionalDouble density,
            int plots,
            boolean judged,
            List<Cell> cells,
            Optional<Double> best) {

        /** Copies the list. */
        public Group {
            cells = List.copyOf(cells);
        }

        /** {@return true if every speed passes, so that a higher one might, too} */
        public boolean toTheTop() {
            return best.isPresent() && best.get() == cells.get(cells.size() - 1).speed();
        }

        /**
         * Says whether a plot belongs to the group.
         *
         * @param plot what came of the plot
         * @return true if it does
         */
        public boolean holds(PlotResult plot) {
            return plot.madeUp() == madeUp && plot.density().equals(density);
        }

        /**
         * Finds a speed.
         *
         * @param speed m/s
         * @return what came of it; empty if it was not run
         */
        public Optional<Cell> at(double speed) {
            return cells.stream().filter(c -> c.speed() == speed).findFirst();
        }
    }

    /**
     * One speed.
     *
     * @param speed m/s
     * @param coverage its coverage, with bounds
     * @param standing how it stands to what is wanted, and to what may be lost of the crop
     * @param targets plants to be treated, over all plots
     * @param successful how many of them were treated with success
     * @param missed how many were missed for each reason
     * @param cropPlants plants of the crop
     * @param cropLost how many of them were lost
     * @param losesTooMuch true if that is more than may be; it fails then, whatever is treated
     */
    public record Cell(
            double speed,
            Bounds coverage,
            Standing standing,
            long targets,
            long successful,
            Map<Miss, Long> missed,
            long cropPlants,
            long cropLost,
            boolean losesTooMuch) {

        /** Copies the map. */
        public Cell {
            missed = missed.isEmpty() ? Map.of() : new EnumMap<>(missed);
        }

        /** {@return the share of the crop that was lost, 0 to 1} */
        public double cropLoss() {
            return cropPlants == 0 ? 0 : (double) cropLost / cropPlants;
        }
    }

    /**
     * Sums up.
     *
     * @param results results of one case, those of one group at the same speeds; at least one
     * @param wanted what is wanted
     * @param grid the speeds that every group was run at, ascending, m/s
     * @return what may be said
     */
    public static PlotSummary of(List<PlotResult> results, Wanted wanted, List<Double> grid) {
        Map<String, List<PlotResult>> byKind = new LinkedHashMap<>();
        results.stream()
                .sorted((a, b) -> a.madeUp() != b.madeUp()
                        ? Boolean.compare(a.madeUp(), b.madeUp())
                        : Double.compare(a.density().orElse(0), b.density().orElse(0)))
                .forEach(r -> byKind.computeIfAbsent(r.madeUp() + " " + r.density(), k -> new ArrayList<>())
                        .add(r));
        boolean expected = results.stream().anyMatch(r -> !r.madeUp() || isExpected(r, wanted));
        List<Group> groups = new ArrayList<>();
        for (List<PlotResult> kind : byKind.values()) {
            PlotResult first = kind.get(0);
            groups.add(group(kind, wanted, !expected || !first.madeUp() || isExpected(first, wanted)));
        }
        return new PlotSummary(wanted, grid, groups);
    }

    private static boolean isExpected(PlotResult result, Wanted wanted) {
        return result.madeUp() && result.density().equals(wanted.density());
    }

    private static Group group(List<PlotResult> plots, Wanted wanted, boolean judged) {
        List<Cell> cells = new ArrayList<>();
        for (int i = 0; i < plots.get(0).passes().size(); i++) {
            int speed = i;
            cells.add(cell(
                    plots.stream().map(p -> p.passes().get(speed).outcome()).toList(),
                    plots.get(0).madeUp(),
                    wanted));
        }
        Optional<Double> best = Optional.empty();
        for (Cell cell : cells) {
            if (cell.standing() != Standing.PASSES) {
                break;
            }
            best = Optional.of(cell.speed());
        }
        PlotResult first = plots.get(0);
        return new Group(first.madeUp(), first.density(), plots.size(), judged, cells, best);
    }

    private static Cell cell(List<ReplayOutcome> outcomes, boolean madeUp, Wanted wanted) {
        Bounds bounds = madeUp && outcomes.size() > 1
                ? Bounds.ofSeeds(outcomes.stream().map(ReplayOutcome::all).toList(), wanted.confidence())
                : ofBlocks(outcomes, wanted.confidence());
        Map<Miss, Long> missed = new EnumMap<>(Miss.class);
        outcomes.forEach(o -> o.missed().forEach((why, count) -> missed.merge(why, count, Long::sum)));
        long targets = outcomes.stream().mapToLong(ReplayOutcome::targets).sum();
        long cropPlants = outcomes.stream().mapToLong(o -> o.crop().plants()).sum();
        long cropLost = outcomes.stream().mapToLong(o -> o.crop().lost()).sum();
        boolean losesTooMuch = cropLost > wanted.cropLoss() * cropPlants;
        return new Cell(
                outcomes.get(0).speed(),
                bounds,
                losesTooMuch ? Standing.FAILS : bounds.against(wanted.coverage()),
                targets,
                outcomes.stream().mapToLong(ReplayOutcome::successful).sum(),
                missed,
                cropPlants,
                cropLost,
                losesTooMuch);
    }

    /** A plot has no seeds that could be drawn anew: its blocks of travel are. */
    private static Bounds ofBlocks(List<ReplayOutcome> outcomes, double confidence) {
        List<ReplayOutcome.Block> blocks =
                outcomes.stream().flatMap(o -> o.blocks().stream()).toList();
        Bounds bounds = Bounds.ofBlocks(blocks, confidence, 1);
        if (bounds.equals(Bounds.NO_PLANTS)) {
            return bounds;
        }
        String plots = outcomes.size() == 1 ? "one plot" : outcomes.size() + " plots";
        return new Bounds(
                bounds.mean(),
                bounds.lower(),
                bounds.upper(),
                plots + ", " + blocks.size() + (blocks.size() == 1 ? " block" : " blocks"));
    }

    /** {@return how the plots that are judged stand at the wanted speed: fails before undecided before passes} */
    public Standing standing() {
        Standing worst = Standing.PASSES;
        for (Group group : groups) {
            for (Cell cell : group.cells()) {
                if (group.judged() && cell.speed() == wanted.speed()) {
                    worst = graver(worst, cell.standing());
                }
            }
        }
        return worst;
    }

    private static Standing graver(Standing one, Standing other) {
        if (one == Standing.FAILS || other == Standing.FAILS) {
            return Standing.FAILS;
        }
        return one == Standing.UNDECIDED ? one : other;
    }
}
