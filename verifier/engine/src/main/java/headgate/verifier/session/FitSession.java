package headgate.verifier.session;

import headgate.api.sheet.HeadSheet;
import headgate.runtime.carriage.Carriage;
import headgate.runtime.carriage.CarriageReader;
import headgate.runtime.cropplan.CropPlan;
import headgate.runtime.cropplan.CropPlanReader;
import headgate.runtime.fitting.Fitting;
import headgate.runtime.fitting.FittingReader;
import headgate.runtime.origin.FileProblem;
import headgate.runtime.origin.Loaded;
import headgate.runtime.origin.Place;
import headgate.runtime.pack.HeadPackage;
import headgate.runtime.pack.Inspection;
import headgate.runtime.policy.Policy;
import headgate.runtime.process.HeadLimits;
import headgate.runtime.process.HeadProcess;
import headgate.runtime.transcript.MemoAnswers;
import headgate.runtime.transcript.Transcript;
import headgate.verifier.check.Case;
import headgate.verifier.check.HeadUnderTest;
import headgate.verifier.fitting.FittingCase;
import headgate.verifier.fitting.FittingProblems;
import headgate.verifier.fitting.FittingSearch;
import headgate.verifier.judge.Judge;
import headgate.verifier.judge.Judgement;
import headgate.verifier.rules.RuleBook;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** Checks a whole fitting: several heads on one carriage, each in processes of its own. */
public final class FitSession {

    private final HeadLimits limits;

    /**
     * Makes a session.
     *
     * @param limits what each head process may use
     */
    public FitSession(HeadLimits limits) {
        this.limits = limits;
    }

    /** {@return a session with the standard limits} */
    public static FitSession standard() {
        return new FitSession(HeadLimits.STANDARD);
    }

    /** What a fitting names, read. */
    private record Files(Loaded<Carriage> carriage, Loaded<CropPlan> plan, Loaded<Policy> policy) {}

    /**
     * Checks a fitting.
     *
     * @param file the fitting's file; the files that it names lie relative to its folder
     * @return the judgement, or what is wrong with the files
     */
    public FitResult fit(Path file) {
        return run(file, Optional.empty());
    }

    /**
     * Searches which heads to put on the arms that a fitting does not name.
     *
     * @param file the fitting's file; the files that it names lie relative to its folder
     * @param goal what is wanted most
     * @return what was found, or what is wrong with the files
     */
    public FitResult search(Path file, FittingSearch.Goal goal) {
        return run(file, Optional.of(goal));
    }

    private FitResult run(Path file, Optional<FittingSearch.Goal> goal) {
        List<FileProblem> problems = new ArrayList<>();
        return with(
                        file,
                        goal.isEmpty(),
                        problems,
                        (inspected, process) ->
                                CheckSession.run(inspected, process, limits, CheckSession.StaticStage.BINDING),
                        (fitting, subject, heads) -> goal.isEmpty()
                                ? judge(fitting, subject, heads)
                                : search(fitting, subject, heads, goal.get()))
                .orElseGet(() -> new FitResult.Refused(problems));
    }

    /** How a head is run. */
    interface Runner {
        HeadUnderTest.Run run(Inspection.Inspected inspected, HeadProcess process);
    }

    /** What is done with a fitting while its heads run. */
    interface Use<R> {
        R use(Loaded<Fitting> fitting, Case subject, Map<String, HeadUnderTest> heads);
    }

    /** Opens a fitting, does something with its case, and ends its heads; empty if there are problems. */
    <R> Optional<R> with(Path file, boolean armsNeeded, List<FileProblem> problems, Runner runner, Use<R> use) {
        Loaded<Fitting> fitting = CheckSession.read(() -> FittingReader.read(file), problems);
        if (fitting == null) {
            return Optional.empty();
        }
        List<Runnable> ends = new ArrayList<>();
        try {
            Files files = files(file, fitting, problems);
            Map<String, HeadUnderTest> heads = heads(file, fitting, runner, ends, problems);
            if (files == null) {
                return Optional.empty();
            }
            problems.addAll(FittingProblems.of(
                    fitting, files.carriage().value(), files.plan().value(), sheets(heads)));
            if (armsNeeded && fitting.value().arms().isEmpty()) {
                problems.add(new FileProblem(
                        fitting.place("arms").orElseGet(() -> Place.ofFile(fitting.file())),
                        "arms",
                        "no arm with a head",
                        "the arms that carry a head",
                        "name them, or search for them"));
            }
            if (!problems.isEmpty()) {
                return Optional.empty();
            }
            Case subject = FittingCase.of(fitting.value(), heads, files.carriage(), files.plan(), files.policy());
            return Optional.of(use.use(fitting, subject, heads));
        } finally {
            ends.forEach(Runnable::run);
        }
    }

    private static FitResult search(
            Loaded<Fitting> fitting, Case base, Map<String, HeadUnderTest> heads, FittingSearch.Goal goal) {
        return FittingSearch.of(base, fitting.value(), heads, goal, RuleOpinion.INSTANCE)
                .<FitResult>map(p -> new FitResult.Found(fitting.value().withArms(p.arms()), p))
                .orElseGet(FitResult.NoneFound::new);
    }

    private static FitResult judge(Loaded<Fitting> fitting, Case subject, Map<String, HeadUnderTest> heads) {
        Judgement judgement = new Judge(RuleBook.all()).judge(subject);
        SortedMap<String, Transcript> transcripts = new TreeMap<>();
        heads.forEach((id, head) -> head.answers()
                .filter(MemoAnswers.class::isInstance)
                .map(MemoAnswers.class::cast)
                .ifPresent(
                        memo -> transcripts.put(id, memo.transcript(head.facts().sha256()))));
        return new FitResult.Judged(fitting, judgement, transcripts);
    }

    private static @Nullable Files files(Path file, Loaded<Fitting> fitting, List<FileProblem> problems) {
        Fitting named = fitting.value();
        Optional<Path> carriageFile = beside(file, fitting, "carriage", named.carriage(), problems);
        Optional<Path> planFile = beside(file, fitting, "cropPlan", named.cropPlan(), problems);
        Optional<Path> policyFile = named.policy().flatMap(p -> beside(file, fitting, "policy", p, problems));
        if (carriageFile.isEmpty() || planFile.isEmpty()) {
            return null;
        }
        Loaded<Carriage> carriage = CheckSession.read(() -> CarriageReader.read(carriageFile.get()), problems);
        Loaded<CropPlan> plan = CheckSession.read(() -> CropPlanReader.read(planFile.get()), problems);
        Loaded<Policy> policy = CheckSession.read(() -> CheckSession.policy(policyFile), problems);
        return carriage == null || plan == null || policy == null ? null : new Files(carriage, plan, policy);
    }

    private Map<String, HeadUnderTest> heads(
            Path file, Loaded<Fitting> fitting, Runner runner, List<Runnable> ends, List<FileProblem> problems) {
        Map<String, HeadUnderTest> heads = new LinkedHashMap<>();
        for (int i = 0; i < fitting.value().heads().size(); i++) {
            Fitting.Head head = fitting.value().heads().get(i);
            Optional<Path> jar = beside(file, fitting, "heads[" + i + "].package", head.file(), problems);
            if (jar.isEmpty()) {
                continue;
            }
            Inspection inspection = HeadPackage.inspect(jar.get());
            if (inspection instanceof Inspection.Inspected inspected) {
                HeadProcess process = HeadProcess.open(limits);
                ends.add(process::close);
                CheckSession.runnable(inspected, CheckSession.StaticStage.BINDING)
                        .ifPresent(process::load);
                HeadUnderTest tested = new HeadUnderTest(inspected.facts(), runner.run(inspected, process));
                tested.again().ifPresent(again -> ends.add(again::close));
                heads.put(head.id(), tested);
            } else if (inspection instanceof Inspection.NotAJar notAJar) {
                problems.add(new FileProblem(
                        fitting.place("heads[" + i + "].package").orElseGet(() -> Place.ofFile(fitting.file())),
                        "heads[" + i + "].package",
                        notAJar.found() + " at " + jar.get(),
                        "the JAR of a head",
                        notAJar.advice()));
            }
        }
        return heads;
    }

    private static Map<String, HeadSheet> sheets(Map<String, HeadUnderTest> heads) {
        Map<String, HeadSheet> sheets = new LinkedHashMap<>();
        heads.forEach((id, head) -> head.sheet().ifPresent(sheet -> sheets.put(id, sheet)));
        return sheets;
    }

    /** A file that the fitting names, relative to the folder that the fitting lies in. */
    private static Optional<Path> beside(
            Path file, Loaded<Fitting> fitting, String field, String name, List<FileProblem> problems) {
        try {
            return Optional.of(file.toAbsolutePath().resolveSibling(name).normalize());
        } catch (InvalidPathException invalid) {
            problems.add(new FileProblem(
                    fitting.place(field).orElseGet(() -> Place.ofFile(fitting.file())),
                    field,
                    "a name that no file can have",
                    "the name of a file, relative to this one",
                    ""));
            return Optional.empty();
        }
    }
}
