package headgate.it.pattern;

import headgate.runtime.process.HeadLimits;
import headgate.verifier.plot.PlotResult;
import headgate.verifier.replay.ReplayOutcome;
import headgate.verifier.session.CheckInput;
import headgate.verifier.session.ReplayInput;
import headgate.verifier.session.ReplayResult;
import headgate.verifier.session.ReplaySession;
import headgate.verifier.session.ReplayWatch;
import headgate.verifier.trial.Bounds;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.LongStream;

/**
 * How many plants of a pattern the sample gripper treats.
 *
 * @param cells one for each speed
 */
record Treated(List<Cell> cells) {

    /** Random plots of each density. */
    static final int SEEDS = 8;

    private static final double CONFIDENCE = 0.95;

    Treated {
        cells = List.copyOf(cells);
    }

    /**
     * One speed.
     *
     * @param speed m/s
     * @param targets plants
     * @param coverage share that was treated, with its bounds
     */
    record Cell(double speed, long targets, Bounds coverage) {}

    Cell at(double speed) {
        return cells.stream().filter(c -> c.speed() == speed).findFirst().orElseThrow();
    }

    /** One plot: its metres of travel, each over all passes since clumps lie across them, are drawn anew. */
    static Treated real(Pattern pattern, List<Double> speeds, Path work) throws Exception {
        List<PlotResult> passes = run(List.of(pattern), speeds, work).get(0);
        List<Cell> cells = new ArrayList<>();
        for (int s = 0; s < speeds.size(); s++) {
            List<ReplayOutcome> outcomes = outcomes(passes, speeds.get(s));
            cells.add(new Cell(speeds.get(s), targets(outcomes), Bounds.ofBlocks(across(outcomes), CONFIDENCE, 1)));
        }
        return new Treated(cells);
    }

    /** Plots at random from seeds 1 to {@link #SEEDS}. */
    static Treated random(double side, double density, List<Double> speeds, Path work) throws Exception {
        List<List<PlotResult>> plots = run(
                LongStream.rangeClosed(1, SEEDS)
                        .mapToObj(seed -> Pattern.random(side, density, seed))
                        .toList(),
                speeds,
                work);
        List<Cell> cells = new ArrayList<>();
        for (int s = 0; s < speeds.size(); s++) {
            List<ReplayOutcome.Block> seeds = new ArrayList<>();
            for (List<PlotResult> passes : plots) {
                List<ReplayOutcome> outcomes = outcomes(passes, speeds.get(s));
                long successful =
                        outcomes.stream().mapToLong(ReplayOutcome::successful).sum();
                seeds.add(new ReplayOutcome.Block(targets(outcomes), successful));
            }
            long all = seeds.stream().mapToLong(ReplayOutcome.Block::targets).sum();
            cells.add(new Cell(speeds.get(s), all, Bounds.ofSeeds(seeds, CONFIDENCE)));
        }
        return new Treated(cells);
    }

    private static List<ReplayOutcome> outcomes(List<PlotResult> passes, double speed) {
        return passes.stream()
                .map(p -> p.passes().stream()
                        .map(PlotResult.Pass::outcome)
                        .filter(o -> o.speed() == speed)
                        .findFirst()
                        .orElseThrow())
                .toList();
    }

    private static long targets(List<ReplayOutcome> outcomes) {
        return outcomes.stream().mapToLong(ReplayOutcome::targets).sum();
    }

    private static List<ReplayOutcome.Block> across(List<ReplayOutcome> outcomes) {
        int metres = outcomes.stream().mapToInt(o -> o.blocks().size()).max().orElse(0);
        List<ReplayOutcome.Block> blocks = new ArrayList<>();
        for (int m = 0; m < metres; m++) {
            long targets = 0;
            long successful = 0;
            for (ReplayOutcome outcome : outcomes) {
                if (m < outcome.blocks().size()) {
                    targets += outcome.blocks().get(m).targets();
                    successful += outcome.blocks().get(m).successful();
                }
            }
            blocks.add(new ReplayOutcome.Block(targets, successful));
        }
        return blocks;
    }

    /** Replays all passes of all plots in one session; one list of passes for each plot. */
    private static List<List<PlotResult>> run(List<Pattern> patterns, List<Double> speeds, Path work) throws Exception {
        Path folder = Files.createTempDirectory(work, "stands");
        List<List<Path>> files = new ArrayList<>();
        for (Pattern pattern : patterns) {
            files.add(Combed.write(pattern, Files.createTempDirectory(folder, "plot")));
        }
        ReplayInput input = new ReplayInput(
                new ReplayInput.Heads.One(heads()),
                files.stream().flatMap(List::stream).toList(),
                List.of(),
                OptionalDouble.empty(),
                List.of(),
                speeds,
                false,
                1_000_000,
                1);
        ReplayResult result =
                new ReplaySession(HeadLimits.STANDARD, "test", Optional.empty(), folder).replay(input, new Quiet());
        if (!(result instanceof ReplayResult.Replayed replayed)) {
            throw new AssertionError(result.toString());
        }
        if (!replayed.missing().isEmpty()) {
            throw new AssertionError("something was taken as perfect: " + replayed.missing());
        }
        List<List<PlotResult>> plots = new ArrayList<>();
        int first = 0;
        for (List<Path> passes : files) {
            plots.add(replayed.study().plots().subList(first, first + passes.size()));
            first += passes.size();
        }
        return plots;
    }

    private static CheckInput heads() throws URISyntaxException {
        Path demo = Path.of(System.getProperty("headgate.dist", "")).resolve("demo");
        Path plan = Path.of(Objects.requireNonNull(Treated.class.getResource("weeding.json"))
                .toURI());
        return new CheckInput(demo.resolve("gripper.jar"), demo.resolve("carriage.json"), plan, Optional.empty());
    }

    private static final class Quiet implements ReplayWatch {
        @Override
        public void reads(int number, int of, String name) {}

        @Override
        public void round(String what) {}

        @Override
        public void begins(int number, int of, String name) {}

        @Override
        public void passed(long plants) {}

        @Override
        public void done(boolean kept) {}
    }
}
