package headgate.app.command;

import headgate.app.check.ReplayFiles;
import headgate.app.check.Replayer;
import headgate.app.console.Complaint;
import headgate.app.console.Console;
import headgate.app.console.ExitCode;
import headgate.app.console.RefusedInputException;
import headgate.app.output.ReplayFolder;
import headgate.verifier.report.ReplayReport;
import headgate.verifier.report.json.ReplayJson;
import headgate.verifier.report.text.ReplayText;
import headgate.verifier.session.CheckInput;
import headgate.verifier.session.ReplayInput;
import headgate.verifier.session.ReplayResult;
import headgate.verifier.trial.Standing;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.concurrent.Callable;
import java.util.stream.LongStream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Replays stands under the carriage. */
@Command(
        name = "replay",
        description =
                "Replays stands, recorded or made up, under the moving carriage: how many plants are treated at which"
                        + " speed, and why the others are missed.",
        mixinStandardHelpOptions = true)
final class ReplayCommand implements Callable<Integer> {

    /** Seeds of the stands that are made up if neither stands nor seeds are given. */
    private static final List<Quantity.SeedRange> SEEDS = List.of(new Quantity.SeedRange(1, 8));

    private static final long MOST_ANSWERS = 2_000_000;

    private final Console console;

    @Mixin
    private OutputOptions output = new OutputOptions();

    @Parameters(
            paramLabel = "HEAD.jar|FITTING.json",
            description = "The head that is on every arm that is needed, or a whole fitting.")
    private Path heads = Path.of("");

    @Option(names = "--carriage", paramLabel = "FILE", description = "The carriage; for a head, not for a fitting.")
    private @Nullable Path carriage;

    @Option(names = "--crop", paramLabel = "FILE", description = "The crop plan; for a head, not for a fitting.")
    private @Nullable Path crop;

    @Option(names = "--policy", paramLabel = "FILE", description = "The limits; the built-in ones if not given.")
    private @Nullable Path policy;

    @Option(
            names = "--stand",
            paramLabel = "FILE|DIR",
            description = "A recorded stand, or a folder of them. May be given more than once.")
    private List<Path> stands = new ArrayList<>();

    @Option(
            names = "--seed",
            paramLabel = "N|N-M",
            split = ",",
            converter = Quantity.Seeds.class,
            description = "Makes up a stand from the crop plan for each seed; 1-8 if no stand is given.")
    private List<Quantity.SeedRange> seeds = new ArrayList<>();

    @Option(
            names = "--length",
            paramLabel = "LENGTH",
            converter = Quantity.PlotLength.class,
            description = "Length of the stands that are made up; the field's if not given.")
    private @Nullable Double length;

    @Option(
            names = "--density",
            paramLabel = "DENSITY",
            split = ",",
            converter = Quantity.Density.class,
            description = "Weeds per square metre of the stands that are made up; the crop plan's if not given.")
    private List<Double> densities = new ArrayList<>();

    @Option(
            names = "--speed",
            paramLabel = "SPEED",
            split = ",",
            converter = Quantity.Speed.class,
            description = "Speeds beside the one that is wanted; from half of it to one and a half if not given.")
    private List<Double> speeds = new ArrayList<>();

    @Option(
            names = "--speeds-only",
            description =
                    "Replays at these speeds only, and looks for no best speed, no density that can be borne and no"
                            + " remedies.")
    private boolean speedsOnly;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "Where the results go: a new or empty folder, or the one of a replay that was stopped.")
    private @Nullable Path out;

    @Option(
            names = "--answers",
            paramLabel = "N",
            description = "How often heads may be asked for one stand; ${DEFAULT-VALUE} if not given.")
    private long answers = MOST_ANSWERS;

    @Option(
            names = "--threads",
            paramLabel = "N",
            description = "Threads that work on it, 1 to 64; the results do not depend on them.")
    private int threads = Math.min(64, Runtime.getRuntime().availableProcessors());

    ReplayCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        ReplayInput input = input();
        Optional<ReplayFolder> folder = Optional.ofNullable(out).map(ReplayFolder::at);
        ReplayResult result = new Replayer(BuildVersion.read())
                .replay(input, folder.map(ReplayFolder::kept), new ReplayTalk(console));
        if (result instanceof ReplayResult.Undecided undecided) {
            return undecided(undecided.reason()).number();
        }
        ReplayReport report = Replayer.report((ReplayResult.Replayed) result, BuildVersion.read());
        SortedMap<String, byte[]> files = ReplayFiles.of(report);
        folder.ifPresent(each -> each.put(files));
        if (output.json) {
            console.out().print(ReplayJson.of(report));
        } else {
            console.out().print(ReplayText.of(report, written(files)));
        }
        return (report.standing() == Standing.PASSES ? ExitCode.FITS : ExitCode.REFUSED).number();
    }

    private ExitCode undecided(String reason) {
        if (output.json) {
            console.out().print(ReplayJson.undecided(reason));
        } else {
            console.say("undecided: " + reason);
        }
        return ExitCode.REFUSED;
    }

    private List<String> written(SortedMap<String, byte[]> files) {
        return out == null
                ? List.of()
                : files.keySet().stream()
                        .map(name -> out.resolve(name).toString())
                        .toList();
    }

    private ReplayInput input() {
        if (threads < 1 || threads > 64) {
            throw refused("--threads", "found " + threads + ", but expected 1 to 64.", "Leave it out for the usual.");
        }
        if (answers < 1) {
            throw refused(
                    "--answers", "found " + answers + ", but expected at least 1.", "Leave it out for the usual.");
        }
        List<Quantity.SeedRange> ranges = seeds.isEmpty() && stands.isEmpty() ? SEEDS : seeds;
        if (ranges.isEmpty() && (length != null || !densities.isEmpty())) {
            throw refused(
                    length != null ? "--length" : "--density",
                    "is for stands that are made up, but only recorded ones are given.",
                    "Leave it out, or add --seed.");
        }
        return new ReplayInput(
                headsOf(),
                stands,
                ranges.stream()
                        .flatMapToLong(r -> LongStream.rangeClosed(r.first(), r.last()))
                        .boxed()
                        .toList(),
                length == null ? OptionalDouble.empty() : OptionalDouble.of(length),
                densities,
                speeds,
                !speedsOnly,
                answers,
                threads);
    }

    private ReplayInput.Heads headsOf() {
        boolean fitting = heads.toString().toLowerCase(Locale.ROOT).endsWith(".json");
        if (fitting) {
            if (carriage != null || crop != null || policy != null) {
                throw refused(
                        carriage != null ? "--carriage" : crop != null ? "--crop" : "--policy",
                        "is named by the fitting already.",
                        "Leave it out.");
            }
            return new ReplayInput.Heads.Fitted(heads);
        }
        if (carriage == null || crop == null) {
            throw refused(
                    carriage == null ? "--carriage" : "--crop",
                    "is missing: a head alone does not say what carries it over which crop.",
                    "Name a file, or replay a fitting (a file that ends in .json).");
        }
        return new ReplayInput.Heads.One(new CheckInput(heads, carriage, crop, Optional.ofNullable(policy)));
    }

    private static RefusedInputException refused(String option, String what, String advice) {
        return new RefusedInputException(Complaint.about(option, what, advice));
    }
}
