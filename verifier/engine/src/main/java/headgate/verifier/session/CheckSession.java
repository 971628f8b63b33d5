package headgate.verifier.session;

import headgate.runtime.answers.HeadAnswers;
import headgate.runtime.carriage.Carriage;
import headgate.runtime.carriage.CarriageReader;
import headgate.runtime.cropplan.CropPlan;
import headgate.runtime.cropplan.CropPlanReader;
import headgate.runtime.origin.FileProblem;
import headgate.runtime.origin.InvalidFileException;
import headgate.runtime.origin.Loaded;
import headgate.runtime.origin.Place;
import headgate.runtime.pack.CleanJar;
import headgate.runtime.pack.HeadPackage;
import headgate.runtime.pack.Inspection;
import headgate.runtime.pack.PackageFacts;
import headgate.runtime.policy.Policy;
import headgate.runtime.policy.PolicyReader;
import headgate.runtime.process.HeadLimits;
import headgate.runtime.process.HeadProcess;
import headgate.runtime.process.HeadStart;
import headgate.runtime.process.Surroundings;
import headgate.runtime.transcript.MemoAnswers;
import headgate.verifier.check.Case;
import headgate.verifier.check.HeadUnderTest;
import headgate.verifier.check.HeadUnderTest.Run;
import headgate.verifier.check.Stand;
import headgate.verifier.judge.Judge;
import headgate.verifier.rules.RuleBook;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Checks one head on every arm that a crop plan needs. */
public final class CheckSession {

    /** What a package that the static stage objects to means for running it. */
    public enum StaticStage {
        /** It is not run. */
        BINDING,
        /** It is run all the same, if it can be loaded: for tests of the head process. */
        ADVISORY
    }

    private final HeadLimits limits;
    private final StaticStage staticStage;

    /**
     * Makes a session.
     *
     * @param limits what the head process may use
     * @param staticStage whether a package that the static stage objects to is run
     */
    public CheckSession(HeadLimits limits, StaticStage staticStage) {
        this.limits = limits;
        this.staticStage = staticStage;
    }

    /** {@return a session with the standard limits, which runs nothing that the static stage objects to} */
    public static CheckSession standard() {
        return new CheckSession(HeadLimits.STANDARD, StaticStage.BINDING);
    }

    /**
     * Checks. The head's process starts first, since a virtual machine takes longer to start than the files to read; it
     * is given the head only once the static stage has passed it.
     *
     * @param input the files
     * @return the judgement, or what is wrong with the files
     */
    public CheckResult check(CheckInput input) {
        List<FileProblem> problems = new ArrayList<>();
        return with(
                        input,
                        problems,
                        (inspected, process) -> run(inspected, process, limits, staticStage),
                        CheckSession::judge)
                .orElseGet(() -> new CheckResult.Refused(problems));
    }

    /** Opens the files, does something with the case while its head runs, and ends it; empty if there are problems. */
    <R> Optional<R> with(
            CheckInput input, List<FileProblem> problems, FitSession.Runner runner, Function<Case, R> use) {
        try (HeadProcess process = HeadProcess.open(limits);
                RecordedStands stands = new RecordedStands()) {
            Inspection inspection = HeadPackage.inspect(input.head());
            if (inspection instanceof Inspection.Inspected inspected) {
                runnable(inspected, staticStage).ifPresent(process::load);
            } else if (inspection instanceof Inspection.NotAJar notAJar) {
                problems.add(new FileProblem(
                        Place.ofFile(input.head().toString()),
                        "",
                        notAJar.found(),
                        "the JAR of a head",
                        notAJar.advice()));
            }
            Loaded<Carriage> carriage = read(() -> CarriageReader.read(input.carriage()), problems);
            Loaded<CropPlan> plan = read(() -> CropPlanReader.read(input.cropPlan()), problems);
            Loaded<Policy> policy = read(() -> policy(input.policy()), problems);
            Optional<Stand> stand = input.stand().flatMap(file -> stands.read(file, problems));
            if (!(inspection instanceof Inspection.Inspected inspected)
                    || stand.isPresent() != input.stand().isPresent()
                    || carriage == null
                    || plan == null
                    || policy == null) {
                return Optional.empty();
            }
            HeadUnderTest head = new HeadUnderTest(inspected.facts(), runner.run(inspected, process));
            try {
                Case subject = Case.ofOneHead(head, carriage, plan, policy);
                return Optional.of(use.apply(stand.map(subject::withStand).orElse(subject)));
            } finally {
                head.again().ifPresent(HeadAnswers::close);
            }
        }
    }

    private static CheckResult judge(Case subject) {
        HeadUnderTest head = subject.heads().get(0);
        return new CheckResult.Judged(
                new Judge(RuleBook.all()).judge(subject),
                head.answers()
                        .filter(MemoAnswers.class::isInstance)
                        .map(MemoAnswers.class::cast)
                        .map(memo -> memo.transcript(head.facts().sha256())));
    }

    /** The clean copy of a package, if it is to be run. */
    static Optional<CleanJar> runnable(Inspection.Inspected inspected, StaticStage staticStage) {
        PackageFacts facts = inspected.facts();
        boolean objected = !facts.problems().isEmpty();
        return objected && staticStage == StaticStage.BINDING ? Optional.empty() : inspected.clean();
    }

    /**
     * What came of running a head. Once it runs, a second process starts to ask it again, and is waited for only when
     * somebody does: two virtual machines that start at once only hold each other up. It runs in other surroundings, so that
     * a head which depends on them gives itself away.
     */
    static Run run(Inspection.Inspected inspected, HeadProcess process, HeadLimits limits, StaticStage staticStage) {
        Optional<CleanJar> jar = runnable(inspected, staticStage);
        if (jar.isEmpty()) {
            return new Run.NotRun("the package rules object to it");
        }
        HeadStart start = process.await();
        if (start instanceof HeadStart.Running running) {
            MemoAnswers memo = new MemoAnswers(running.head());
            HeadProcess again = HeadProcess.open(limits, Surroundings.OTHER);
            again.load(jar.get());
            return new Run.Answering(
                    memo.sheet(), memo, Optional.of(new MemoAnswers(new LateAnswers(again, running.head()))));
        }
        return new Run.Broke(((HeadStart.Refused) start).fault());
    }

    static Loaded<Policy> policy(Optional<Path> file) throws InvalidFileException {
        return file.isPresent() ? PolicyReader.read(file.get()) : PolicyReader.builtIn();
    }

    /** A file that may turn out to be unusable. */
    interface Source<T> {
        Loaded<T> read() throws InvalidFileException;
    }

    /** Reads a file, or adds what is wrong with it and gives null. */
    static <T> @Nullable Loaded<T> read(Source<T> source, List<FileProblem> problems) {
        try {
            return source.read();
        } catch (InvalidFileException invalid) {
            problems.addAll(invalid.problems());
            return null;
        }
    }
}
