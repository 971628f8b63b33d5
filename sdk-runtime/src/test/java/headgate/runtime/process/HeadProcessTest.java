package headgate.runtime.process;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.api.shape.Point3;
import headgate.api.task.Velocity;
import headgate.api.vocabulary.Operation;
import headgate.api.vocabulary.PlantClass;
import headgate.api.vocabulary.SoilClass;
import headgate.runtime.answers.HeadAnswers;
import headgate.runtime.answers.HeadFault;
import headgate.runtime.answers.HeadKind;
import headgate.runtime.answers.HeadStage;
import headgate.runtime.answers.RowAnswer;
import headgate.runtime.answers.SpotAnswer;
import headgate.runtime.pack.CleanJar;
import headgate.runtime.pack.HeadPackage;
import headgate.runtime.pack.Inspection;
import headgate.runtime.pack.UnscannedJar;
import headgate.runtime.task.LatticeRowTask;
import headgate.runtime.task.LatticeSpotTask;
import headgate.runtime.testing.Heads;
import headgate.runtime.testing.Jars;
import headgate.runtime.transcript.MemoAnswers;
import headgate.runtime.transcript.Transcript;
import headgate.runtime.transcript.TranscriptAnswers;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Heads in a process of their own, with the static scan passed by: nothing but the process itself holds them. */
class HeadProcessTest {

    private static final Duration SHORT = Duration.ofSeconds(2);
    /** Loading may take long on a busy machine; only heads that never end shall wait for the short limit. */
    private static final HeadLimits LIMITS = new HeadLimits(
            Duration.ofSeconds(60),
            Duration.ofSeconds(30),
            SHORT,
            Duration.ofMillis(10),
            Duration.ofSeconds(60),
            32,
            32,
            512,
            40,
            20_000);

    private static final HeadLimits HASTY = LIMITS.answeringWithin(SHORT);

    private Set<Long> processesBefore = Set.of();
    private Set<Path> filesBefore = Set.of();

    @BeforeEach
    void lookAround() throws IOException {
        processesBefore = processes();
        filesBefore = files();
    }

    /** Whatever a head did, nothing of it is left. */
    @AfterEach
    void nothingIsLeft() throws IOException {
        assertThat(processes()).isSubsetOf(processesBefore);
        assertThat(files()).isSubsetOf(filesBefore);
    }

    private static Set<Long> processes() {
        Set<Long> ids = new TreeSet<>();
        ProcessHandle.current().descendants().forEach(p -> ids.add(p.pid()));
        return ids;
    }

    private static Set<Path> files() throws IOException {
        try (Stream<Path> all = Files.list(Path.of(System.getProperty("java.io.tmpdir")))) {
            Set<Path> ours = new TreeSet<>();
            all.filter(p -> p.getFileName().toString().startsWith("headgate-head-"))
                    .forEach(ours::add);
            return ours;
        }
    }

    /** The copy that the inspection writes; where it refuses, the file as it is, since the process must hold alone. */
    static CleanJar jar(String source) {
        byte[] bytes = Jars.of(Heads.NAME, source);
        return ((Inspection.Inspected) HeadPackage.inspect(bytes))
                .clean()
                .orElseGet(() -> UnscannedJar.of("test.head", Heads.NAME, bytes));
    }

    private static HeadFault refused(String source) {
        return refused(source, LIMITS);
    }

    private static HeadFault refused(String source, HeadLimits limits) {
        HeadStart start = HeadProcess.start(jar(source), limits);
        if (start instanceof HeadStart.Running running) {
            running.head().close();
        }
        assertThat(start).isInstanceOf(HeadStart.Refused.class);
        return ((HeadStart.Refused) start).fault();
    }

    private static HeadAnswers running(String source) {
        HeadStart start = HeadProcess.start(jar(source), LIMITS);
        assertThat(start).isInstanceOf(HeadStart.Running.class);
        return ((HeadStart.Running) start).head();
    }

    static LatticeSpotTask task(int millimetres) {
        return LatticeSpotTask.nearest(
                Point3.ofMetres(millimetres / 1000.0, 0, -0.4),
                Velocity.ofMetresPerSecond(-0.5, 0),
                PlantClass.BROADLEAF,
                0.004,
                0.1,
                SoilClass.MEDIUM,
                0.25);
    }

    private static List<LatticeSpotTask> tasks(int count) {
        return IntStream.range(0, count).mapToObj(HeadProcessTest::task).toList();
    }

    private static HeadFault faultOf(SpotAnswer answer) {
        assertThat(answer).isInstanceOf(SpotAnswer.Failed.class);
        return ((SpotAnswer.Failed) answer).fault();
    }

    /** What the head does with its second task, with the fault that follows. */
    private static HeadFault acting(String act) {
        return acting("", act);
    }

    private static HeadFault acting(String members, String act) {
        String source = Heads.acting(
                members, "if (task.position().x() != 1000) { return plain(task); }\n" + act + "\nreturn plain(task);");
        try (HeadAnswers head = running(source)) {
            List<SpotAnswer> answers = head.act(tasks(3));
            assertThat(answers).hasSize(3);
            assertThat(answers.get(0)).isInstanceOf(SpotAnswer.Answered.class);
            HeadFault fault = faultOf(answers.get(1));
            if (fault.ended()) {
                assertThat(faultOf(answers.get(2))).isEqualTo(fault);
                assertThat(faultOf(head.act(task(7)))).isEqualTo(fault);
            } else {
                assertThat(answers.get(2)).isInstanceOf(SpotAnswer.Answered.class);
            }
            return fault;
        }
    }

    @Test
    void aGoodHeadGivesItsSheetAndItsActions() {
        try (HeadAnswers head = running(Heads.spot(""))) {
            assertThat(head.kind()).isEqualTo(HeadKind.SPOT);
            assertThat(head.sheet().operation()).isEqualTo(Operation.PULL_WEEDS);
            assertThat(head.sheet().reach().height().least()).isEqualTo(-500_000);
            SpotAnswer answer = head.act(task(12));
            assertThat(answer).isInstanceOf(SpotAnswer.Answered.class);
            assertThat(((SpotAnswer.Answered) answer).action().phases()).hasSize(3);
            assertThat(((SpotAnswer.Answered) answer).action().phases().get(0).toolPoint())
                    .isEqualTo(Point3.ofMetres(0.012, 0, -0.4));
            assertThat(faultlessRow(head)).isEqualTo(new HeadFault.WrongKind(HeadStage.ENGAGE));
        }
    }

    private static HeadFault faultlessRow(HeadAnswers head) {
        RowAnswer answer = head.engage(LatticeRowTask.nearest(Velocity.ZERO, SoilClass.MEDIUM, 0.1, 0.1, 0.2, 0.2));
        return ((RowAnswer.Failed) answer).fault();
    }

    @Test
    void aContinuousHeadEngagesAndDeclines() {
        try (HeadAnswers head = running(Heads.continuous())) {
            assertThat(head.kind()).isEqualTo(HeadKind.CONTINUOUS);
            List<RowAnswer> answers = head.engage(List.of(row(1.0), row(4.0)));
            assertThat(answers.get(0)).isInstanceOfSatisfying(RowAnswer.Answered.class, a -> assertThat(
                            a.engagement().draft())
                    .isEqualTo(160.0));
            assertThat(answers.get(1)).isInstanceOfSatisfying(RowAnswer.Answered.class, a -> assertThat(
                            a.engagement().declined())
                    .contains("too fast"));
        }
    }

    private static LatticeRowTask row(double speed) {
        return LatticeRowTask.nearest(Velocity.ofMetresPerSecond(-speed, 0), SoilClass.MEDIUM, 0.1, 0.1, 0.2, 0.2);
    }

    @Test
    void aTranscriptDoesNotDependOnOrderOrBatchesAndReplaysWithoutAProcess() {
        List<LatticeSpotTask> forward = new ArrayList<>(tasks(1500));
        List<LatticeSpotTask> backward = new ArrayList<>(forward);
        Collections.reverse(backward);
        Transcript first;
        Transcript second;
        try (MemoAnswers head = new MemoAnswers(running(Heads.spot("")))) {
            head.act(forward);
            first = head.transcript("ab");
        }
        try (MemoAnswers head = new MemoAnswers(running(Heads.spot("")))) {
            for (int i = 0; i < backward.size(); i += 700) {
                head.act(backward.subList(i, Math.min(backward.size(), i + 700)));
                head.act(backward.get(i));
            }
            assertThat(head.asked()).isEqualTo(1500);
            second = head.transcript("ab");
        }
        assertThat(second.toBytes()).isEqualTo(first.toBytes());
        assertThat(second.digest()).isEqualTo(first.digest()).hasSize(64);

        Transcript read = Transcript.read(first.toBytes());
        assertThat(read).isEqualTo(first);
        try (HeadAnswers replay = new TranscriptAnswers(read)) {
            assertThat(replay.sheet()).isEqualTo(first.sheet());
            assertThat(replay.act(task(3))).isEqualTo(first.spots().get(task(3)));
            assertThat(faultOf(replay.act(task(1501)))).isEqualTo(new HeadFault.NotRecorded(HeadStage.ACT));
        }
    }

    @ParameterizedTest
    @CsvSource({"0", "3", "77"})
    void anExitIsOneFault(int code) {
        assertThat(acting("System.exit(" + code + ");")).isEqualTo(new HeadFault.Exited(HeadStage.ACT, code));
    }

    @Test
    void aHaltIsAnExit() {
        assertThat(acting("Runtime.getRuntime().halt(9);")).isEqualTo(new HeadFault.Exited(HeadStage.ACT, 9));
    }

    @Test
    void aLoopIsEndedAtTheLimit() {
        assertThat(acting("while (on()) { try { while (on()) {} } catch (Throwable t) {} }"))
                .isEqualTo(new HeadFault.TimedOut(HeadStage.ACT, SHORT));
    }

    @Test
    void anExitThatNeverEndsIsEndedAtTheLimit() {
        assertThat(acting(
                        "Runtime.getRuntime().addShutdownHook(new Thread(() -> { while (on()) {} })); System.exit(0);"))
                .isEqualTo(new HeadFault.TimedOut(HeadStage.ACT, SHORT));
    }

    @Test
    void filledMemoryIsOneFault() {
        assertThat(acting("List<long[]> all = new ArrayList<>(); while (on()) { all.add(new long[100000]); }"))
                .isEqualTo(new HeadFault.OutOfMemory(HeadStage.ACT));
    }

    @Test
    void filledMemoryIsOneFaultThoughTheHeadCatchesIt() {
        assertThat(acting("List<long[]> all = new ArrayList<>();"
                        + " while (on()) { try { all.add(new long[100000]); } catch (Throwable t) {} }"))
                .isEqualTo(new HeadFault.OutOfMemory(HeadStage.ACT));
    }

    @Test
    void endlessRecursionIsOneFaultAndTheHeadGoesOn() {
        assertThat(acting("int deep(int n) { return deep(n + 1) + 1; }", "deep(0);"))
                .isEqualTo(new HeadFault.StackOverflow(HeadStage.ACT));
    }

    @Test
    void aFloodOnTheStreamsIsOneFault() {
        assertThat(acting("while (on()) { System.out.println(\"more and more\"); }"))
                .isEqualTo(new HeadFault.OutputFlood(HeadStage.ACT, 20_000));
        assertThat(acting("while (on()) { System.err.println(\"more and more\"); }"))
                .isEqualTo(new HeadFault.OutputFlood(HeadStage.ACT, 20_000));
    }

    @ParameterizedTest
    @CsvSource({"out", "err"})
    void aFloodPastTheStreamsIsOneFault(String descriptor) {
        assertThat(acting("try { java.io.OutputStream o = new java.io.FileOutputStream(java.io.FileDescriptor."
                        + descriptor + "); while (on()) { o.write(new byte[4096]); } }"
                        + " catch (java.io.IOException e) { throw new RuntimeException(e); }"))
                .isEqualTo(new HeadFault.OutputFlood(HeadStage.ACT, 20_000));
    }

    @Test
    void aFewWordsOnTheStreamsAreSkipped() {
        String noise = "System.out.println(\"hello\"); try { new java.io.FileOutputStream(java.io.FileDescriptor.out)"
                + ".write(\"HGF1HGF1 hello\".getBytes()); } catch (java.io.IOException e) {}";
        try (HeadAnswers head = running(Heads.acting("", noise + "return plain(task);"))) {
            assertThat(head.act(tasks(50))).allMatch(a -> a instanceof SpotAnswer.Answered);
        }
    }

    @Test
    void aClosedOutputIsOneFault() {
        assertThat(acting("try { new java.io.FileOutputStream(java.io.FileDescriptor.out).close(); }"
                        + " catch (java.io.IOException e) {}"))
                .isIn(
                        new HeadFault.Exited(HeadStage.ACT, 0),
                        new HeadFault.BadFrame(HeadStage.ACT, "it closed its output and went on running"));
    }

    @Test
    void aThreadLeftBehindIsOneFault() {
        assertThat(acting("Thread t = new Thread(() -> { while (on()) {} }, \"my worker\"); t.start();"))
                .isEqualTo(new HeadFault.LeftThread(HeadStage.ACT, "my worker"));
        assertThat(
                        acting(
                                "Thread t = new Thread(() -> { while (on()) {} }, \"my daemon\"); t.setDaemon(true); t.start();"))
                .isEqualTo(new HeadFault.LeftThread(HeadStage.ACT, "my daemon"));
    }

    @Test
    void aProcessLeftBehindIsEndedToo() {
        assertThat(acting("try { new ProcessBuilder(\"sleep\", \"60\").start(); } catch (java.io.IOException e) {}"
                        + " while (on()) {}"))
                .isEqualTo(new HeadFault.TimedOut(HeadStage.ACT, SHORT));
    }

    @Test
    void whatIsThrownIsNamedAndItsMessageCut() {
        assertThat(acting("if (on()) throw new IllegalStateException(\"bad \" + \"x\".repeat(600));"))
                .isEqualTo(new HeadFault.Threw(
                        HeadStage.ACT, "java.lang.IllegalStateException", "bad " + "x".repeat(496)));
        assertThat(acting(
                        "static class Evil extends RuntimeException {"
                                + " public String getMessage() { throw new Evil(); } }",
                        "if (on()) throw new Evil();"))
                .isEqualTo(new HeadFault.Threw(HeadStage.ACT, "partner.TestHead$Evil", ""));
        assertThat(acting("if (on()) throw new ThreadDeath();"))
                .isEqualTo(new HeadFault.Threw(HeadStage.ACT, "java.lang.ThreadDeath", ""));
    }

    @Test
    void nullIsNoAnswer() {
        assertThat(acting("if (true) { return null; }")).isEqualTo(new HeadFault.ReturnedNull(HeadStage.ACT));
        assertThat(refused(Heads.sheet("return null;"))).isEqualTo(new HeadFault.ReturnedNull(HeadStage.SHEET));
    }

    @Test
    void anOutlineThatIsTooLongToSendIsTheHeadsOwnError() {
        String hull =
                "List<Point> all = new ArrayList<>(); for (long i = 0; i < 600; i++) { all.add(new Point(i, i * i)); }"
                        + " if (on()) { return Action.of(Phase.named(\"x\").lasting(1).endingAt(Point3.ORIGIN).in(PostureName.WORK)"
                        + ".touching(Contact.FREE).treating(Outline.hullOf(all)).build()); }";
        assertThat(acting(hull)).isInstanceOfSatisfying(HeadFault.Threw.class, f -> assertThat(f.message())
                .isEqualTo("an outline must have at most 512 corners, but has 600"));
    }

    @Test
    void anInterruptedThreadAnswersOn() {
        try (HeadAnswers head = running(Heads.acting("", "Thread.currentThread().interrupt(); return plain(task);"))) {
            assertThat(head.act(task(1))).isInstanceOf(SpotAnswer.Answered.class);
            assertThat(head.act(task(2))).isInstanceOf(SpotAnswer.Answered.class);
        }
    }

    @Test
    void faultsWhileLoading() {
        assertThat(refused(Heads.spot("public TestHead() { if (on()) throw new IllegalStateException(\"no\"); }")))
                .isEqualTo(new HeadFault.Threw(HeadStage.LOAD, "java.lang.IllegalStateException", "no"));
        assertThat(refused(Heads.spot("static int n = Integer.parseInt(\"many\");")))
                .isEqualTo(new HeadFault.Threw(
                        HeadStage.LOAD, "java.lang.NumberFormatException", "For input string: \"many\""));
        assertThat(refused(Heads.spot("static { System.exit(5); }")))
                .isEqualTo(new HeadFault.Exited(HeadStage.LOAD, 5));
        assertThat(refused(Heads.spot("static { while (System.nanoTime() != 0) {} }"), HASTY))
                .isEqualTo(new HeadFault.TimedOut(HeadStage.LOAD, SHORT));
        assertThat(refused(Heads.spot("static { new Thread(() -> { while (on()) {} }, \"early\").start(); }")))
                .isEqualTo(new HeadFault.LeftThread(HeadStage.LOAD, "early"));
        assertThat(refused(Heads.spot("TestHead(int n) {}")))
                .isEqualTo(new HeadFault.NoHead("class partner.TestHead has no public constructor without parameters"));
        assertThat(refused(Heads.source("", "")))
                .isEqualTo(
                        new HeadFault.NoHead("class partner.TestHead implements neither headgate.api.head.SpotHead nor"
                                + " headgate.api.head.ContinuousHead"));
    }

    @Test
    void faultsOfTheSheet() {
        assertThat(refused(Heads.sheet("return HeadSheet.builder().build();")))
                .isInstanceOfSatisfying(HeadFault.Threw.class, f -> assertThat(f.message())
                        .startsWith("head sheet: operation must be given"));
        assertThat(refused(Heads.sheet("while (true) {}"), HASTY))
                .isEqualTo(new HeadFault.TimedOut(HeadStage.SHEET, SHORT));
    }

    @Test
    void kindsThatTheContractForbidsAreTold() {
        String members = Heads.sheetMembers();
        try (HeadAnswers head = running(Heads.source("implements ToolHead", members))) {
            assertThat(head.kind()).isEqualTo(HeadKind.NEITHER);
        }
        try (HeadAnswers head = running(Heads.source(
                "implements SpotHead, ContinuousHead",
                members + "public Action act(SpotTask t) { return null; } public Engagement engage(RowTask t)"
                        + " { return null; }"))) {
            assertThat(head.kind()).isEqualTo(HeadKind.BOTH);
        }
    }

    @Test
    void theHeadSeesNothingOfItsProcess() {
        String look = "try { Class.forName(\"%s\"); throw new IllegalStateException(\"seen\"); }"
                + " catch (ClassNotFoundException e) {} if (!System.getenv().keySet().equals(java.util.Set.of(\"PWD\")))"
                + " { throw new IllegalStateException(\"environment\"); }";
        for (String hidden :
                List.of("headgate.runtime.child.HeadChild", "org.pf4j.PluginManager", "org.slf4j.Logger")) {
            try (HeadAnswers head = running(Heads.acting("", look.formatted(hidden) + "return plain(task);"))) {
                assertThat(head.act(task(1))).as(hidden).isInstanceOf(SpotAnswer.Answered.class);
            }
        }
    }

    @Test
    void aProcessThatIsOpenedAndNotUsedLeavesNothing() {
        HeadProcess process = HeadProcess.open(LIMITS);
        process.close();
        process.close();
    }

    @Test
    void afterABadHeadTheNextIsRight() {
        assertThat(refused(Heads.spot("static { Runtime.getRuntime().halt(1); }")))
                .isEqualTo(new HeadFault.Exited(HeadStage.LOAD, 1));
        try (HeadAnswers head = running(Heads.spot(""))) {
            assertThat(head.act(task(1))).isInstanceOf(SpotAnswer.Answered.class);
        }
    }
}
