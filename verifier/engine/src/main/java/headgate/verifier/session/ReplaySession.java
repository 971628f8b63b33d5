package headgate.verifier.session;

import headgate.runtime.cropplan.CropPlan;
import headgate.runtime.origin.FileProblem;
import headgate.runtime.origin.InvalidFileException;
import headgate.runtime.origin.Loaded;
import headgate.runtime.origin.Place;
import headgate.runtime.pack.Inspection;
import headgate.runtime.process.HeadLimits;
import headgate.runtime.process.HeadProcess;
import headgate.runtime.process.HeadStart;
import headgate.runtime.task.TaskLattice;
import headgate.verifier.check.Case;
import headgate.verifier.check.HeadUnderTest;
import headgate.verifier.plot.Digest;
import headgate.verifier.plot.KeptResults;
import headgate.verifier.plot.MadeUpPlot;
import headgate.verifier.plot.Plot;
import headgate.verifier.plot.RecordedPlot;
import headgate.verifier.replay.CaseSetting;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Replays plots under a carriage with its heads: files in, what became of the plants out. */
public final class ReplaySession {

    /** Speeds that are run if none is given, as shares of the wanted one. */
    private static final double[] SPEEDS = {0.5, 0.75, 1, 1.25, 1.5};

    /** Most stands of one run. */
    private static final int MOST_PLOTS = 10_000;

    private final HeadLimits limits;
    private final String version;
    private final Optional<KeptResults> kept;
    private final Path scratch;

    /**
     * Makes a session.
     *
     * @param limits what each head process may use
     * @param version version of the program: results of another one are not taken
     * @param kept where results are kept from one run to the next; empty if nowhere
     * @param scratch a folder for what is put in order on the way
     */
    public ReplaySession(HeadLimits limits, String version, Optional<KeptResults> kept, Path scratch) {
        this.limits = limits;
        this.version = version;
        this.kept = kept;
        this.scratch = scratch;
    }

    /**
     * Replays.
     *
     * @param input what is to be replayed
     * @param watch is told how it goes on
     * @return what came of it
     * @throws IOException if results cannot be kept, or a stand not be put in order
     */
    public ReplayResult replay(ReplayInput input, ReplayWatch watch) throws IOException {
        List<FileProblem> problems = new ArrayList<>();
        List<RecordedPlot> stands = recorded(stands(input.stands(), problems), problems, watch);
        IOException[] broken = new IOException[1];
        Optional<ReplayResult> result = open(input, problems, (subject, others) -> {
            try {
                return problems.isEmpty()
                        ? replay(input, stands, subject, others, watch)
                        : new ReplayResult.Refused(problems);
            } catch (IOException failed) {
                broken[0] = failed;
                return new ReplayResult.Undecided("a file could not be read or written");
            }
        });
        if (broken[0] != null) {
            throw broken[0];
        }
        return result.orElseGet(() -> new ReplayResult.Refused(problems));
    }

    /** What is done while the heads run. */
    private interface Use {
        ReplayResult use(Case subject, Map<String, String> others);
    }

    private Optional<ReplayResult> open(ReplayInput input, List<FileProblem> problems, Use use) {
        if (input.heads() instanceof ReplayInput.Heads.One one) {
            return new CheckSession(limits, CheckSession.StaticStage.BINDING)
                    .with(one.input(), problems, ReplaySession::run, subject -> use.use(subject, Map.of()));
        }
        Path file = ((ReplayInput.Heads.Fitted) input.heads()).file();
        return new FitSession(limits)
                .with(
                        file,
                        true,
                        problems,
                        ReplaySession::run,
                        (fitting, subject, heads) -> use.use(
                                subject,
                                Map.of("fitting " + Path.of(fitting.file()).getFileName(), fitting.sha256())));
    }

    /** Runs a head once: whether it answers alike in another process is what a check asks. */
    private static HeadUnderTest.Run run(Inspection.Inspected inspected, HeadProcess process) {
        if (CheckSession.runnable(inspected, CheckSession.StaticStage.BINDING).isEmpty()) {
            return new HeadUnderTest.Run.NotRun("the package rules object to it");
        }
        HeadStart start = process.await();
        return start instanceof HeadStart.Running running
                ? new HeadUnderTest.Run.Answering(running.head().sheet(), running.head(), Optional.empty())
                : new HeadUnderTest.Run.Broke(((HeadStart.Refused) start).fault());
    }

    private ReplayResult replay(
            ReplayInput input, List<RecordedPlot> recorded, Case subject, Map<String, String> others, ReplayWatch watch)
            throws IOException {
        Optional<String> obstacle = CaseSetting.obstacle(subject);
        if (obstacle.isPresent()) {
            return new ReplayResult.Undecided("This cannot be replayed: " + obstacle.get() + ".");
        }
        CropPlan plan = subject.plan().value();
        double wanted = TaskLattice.SPEED.down(plan.wanted().speed());
        if (!(wanted > 0)) {
            return new ReplayResult.Undecided("The crop plan wants less than 1 mm/s.");
        }
        List<Plot> plots = new ArrayList<>(recorded);
        try {
            plots.addAll(madeUp(input, subject.plan()));
        } catch (IllegalArgumentException impossible) {
            return new ReplayResult.Undecided("No stand can be made up: " + impossible.getMessage() + ".");
        }
        try {
            PlotRounds rounds = new PlotRounds(kept, key(subject, others), input, watch);
            PlotStudies studies = new PlotStudies(subject, input, rounds, speeds(input.speeds(), wanted));
            return new ReplayResult.Replayed(subject, studies.of(plots), studies.missing(), others);
        } catch (PlotRounds.EndedException ended) {
            return ended.result();
        }
    }

    private String key(Case subject, Map<String, String> others) {
        Digest digest = new Digest()
                .add("version", version)
                .add("carriage", subject.carriage().sha256())
                .add("plan", subject.plan().sha256())
                .add("policy", subject.policy().sha256());
        subject.heads().forEach(head -> digest.add("head", head.facts().sha256()));
        others.forEach((kind, sha256) -> digest.add("other", sha256));
        return digest.add("chance", PlotStudies.CHANCE).hex();
    }

    private static List<Double> speeds(List<Double> given, double wanted) {
        TreeSet<Double> speeds = new TreeSet<>();
        speeds.add(wanted);
        if (given.isEmpty()) {
            for (double share : SPEEDS) {
                speeds.add(Math.max(TaskLattice.SPEED.down(share * wanted), TaskLattice.SPEED.down(0.001)));
            }
        }
        given.forEach(speed -> speeds.add(TaskLattice.SPEED.down(speed)));
        speeds.removeIf(speed -> !(speed > 0));
        return List.copyOf(speeds);
    }

    private static List<MadeUpPlot> madeUp(ReplayInput input, Loaded<CropPlan> plan) {
        List<Double> densities = plan.value().weeds().isEmpty()
                ? List.of(0.0)
                : input.densities().isEmpty()
                        ? List.of(plan.value().weeds().get().density())
                        : List.copyOf(new TreeSet<>(input.densities()));
        List<MadeUpPlot> plots = new ArrayList<>();
        for (double density : densities) {
            plots.addAll(PlotStudies.madeUp(input, plan, density));
        }
        return plots;
    }

    /** Reads every stand to its end, so that what is wrong with any of them is told before the first is replayed. */
    private List<RecordedPlot> recorded(List<Path> stands, List<FileProblem> problems, ReplayWatch watch) {
        List<RecordedPlot> plots = new ArrayList<>();
        int number = 0;
        for (Path stand : stands) {
            watch.reads(++number, stands.size(), String.valueOf(stand.getFileName()));
            try {
                plots.add(RecordedPlot.of(stand, scratch));
            } catch (InvalidFileException invalid) {
                problems.addAll(invalid.problems());
            }
        }
        return plots;
    }

    /** The stands that are named, and those in folders that are named, in the order of their names. */
    private static List<Path> stands(List<Path> named, List<FileProblem> problems) {
        List<Path> stands = new ArrayList<>();
        for (Path each : named) {
            if (!Files.isDirectory(each)) {
                stands.add(each);
                continue;
            }
            try (Stream<Path> found = Files.list(each)) {
                List<Path> inside = found.filter(p -> isStand(String.valueOf(p.getFileName())))
                        .filter(Files::isRegularFile)
                        .sorted()
                        .toList();
                if (inside.isEmpty()) {
                    problems.add(problem(each, "no file that ends in .csv, .geojson or .json", "stands in the folder"));
                }
                stands.addAll(inside);
            } catch (IOException unreadable) {
                problems.add(problem(each, "a folder that cannot be read", "a folder of stands"));
            }
        }
        if (stands.size() > MOST_PLOTS) {
            problems.add(problem(named.get(0), stands.size() + " stands", "at most " + MOST_PLOTS + " in one run"));
        }
        return stands;
    }

    private static boolean isStand(String name) {
        return !name.startsWith(".") && (name.endsWith(".csv") || name.endsWith(".geojson") || name.endsWith(".json"));
    }

    private static FileProblem problem(Path path, String found, String expected) {
        return new FileProblem(Place.ofFile(path.toString()), "", found, expected, "");
    }
}
