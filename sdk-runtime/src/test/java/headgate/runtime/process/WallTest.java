package headgate.runtime.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import headgate.runtime.answers.HeadAnswers;
import headgate.runtime.answers.HeadFault;
import headgate.runtime.answers.HeadStage;
import headgate.runtime.answers.SpotAnswer;
import headgate.runtime.testing.Heads;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What each wall holds off, and what it lets through. A wall that this machine refuses is left out, and the test says so. */
class WallTest {

    private static final HeadLimits LIMITS = HeadLimits.STANDARD.answeringWithin(Duration.ofSeconds(20));

    @TempDir
    private Path folder = Path.of("");

    private static void needed(Wall wall) {
        Optional<String> wrong = HeadProcess.tryOut(wall);
        assumeTrue(wrong.isEmpty(), () -> "left out, since the wall by " + wall.word() + " does not work: " + wrong);
    }

    /** What the head says that it could do: the message of what it throws. */
    private static String says(Wall wall, String act) {
        needed(wall);
        HeadProcess process = HeadProcess.open(LIMITS, Surroundings.USUAL, Walls.only(wall));
        process.load(HeadProcessTest.jar(Heads.acting(
                "static String tried(java.util.concurrent.Callable<Object> act) { try { return \"did \" + act.call(); }"
                        + " catch (Exception e) { return \"could not\"; } }",
                "if (on()) { throw new IllegalStateException(" + act + "); } return plain(task);")));
        HeadStart start = process.await();
        assertThat(start).isInstanceOf(HeadStart.Running.class);
        assertThat(process.wall()).isEqualTo(wall);
        try (HeadAnswers head = ((HeadStart.Running) start).head()) {
            HeadFault fault = ((SpotAnswer.Failed) head.act(HeadProcessTest.task(1))).fault();
            return fault instanceof HeadFault.Threw threw ? threw.message() : fault.sentence();
        }
    }

    @ParameterizedTest
    @CsvSource({"BWRAP,could not", "UNSHARE,could not", "NONE,did true"})
    void connections(Wall wall, String expected) throws IOException {
        try (ServerSocket server = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            assertThat(says(
                            wall,
                            "tried(() -> new java.net.Socket(\"127.0.0.1\", " + server.getLocalPort()
                                    + ").isConnected())"))
                    .isEqualTo(expected);
        }
    }

    @ParameterizedTest
    @CsvSource({"BWRAP,could not", "UNSHARE,did secret", "NONE,did secret"})
    void readingFiles(Wall wall, String expected) throws IOException {
        Path secret = Files.writeString(folder.resolve("key"), "secret");
        assertThat(says(wall, "tried(() -> java.nio.file.Files.readString(java.nio.file.Path.of(\"" + secret + "\")))"))
                .isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource({"BWRAP,could not", "UNSHARE,did done", "NONE,did done"})
    void writingFiles(Wall wall, String expected) {
        Path target = folder.resolve("note");
        assertThat(says(
                        wall,
                        "tried(() -> { java.nio.file.Files.writeString(java.nio.file.Path.of(\"" + target
                                + "\"), \"x\"); return \"done\"; })"))
                .isEqualTo(expected);
        assertThat(Files.exists(target)).isEqualTo(expected.startsWith("did"));
    }

    @ParameterizedTest
    @EnumSource
    void itsOwnFolderCanBeWrittenAndIsGoneAfterwards(Wall wall) throws IOException {
        String where = says(
                wall,
                "tried(() -> java.nio.file.Files.writeString(java.nio.file.Path.of(\"mine\").toAbsolutePath(), \"x\"))");
        assertThat(where).startsWith("did /").endsWith("/mine");
        assertThat(Path.of(where.substring(4))).doesNotExist();
    }

    /** 96 files of 1 MiB; the folder holds 40. Without a wall only the size of one file is bounded. */
    @ParameterizedTest
    @CsvSource({"BWRAP,could not", "UNSHARE,could not", "NONE,did 96"})
    void fillingTheFolder(Wall wall, String expected) {
        assertThat(says(
                        wall,
                        "tried(() -> { for (int i = 0; i < 96; i++) java.nio.file.Files.write(java.nio.file.Path.of(\"f\""
                                + " + i), new byte[1 << 20]); return 96; })"))
                .isEqualTo(expected);
    }

    @ParameterizedTest
    @EnumSource
    void oneHugeFile(Wall wall) {
        assumeTrue(Walls.bounded(), "left out, since this machine has no prlimit");
        assertThat(says(
                        wall,
                        "tried(() -> { try (java.io.OutputStream o = java.nio.file.Files.newOutputStream("
                                + "java.nio.file.Path.of(\"f\"))) { for (int i = 0; i < 96; i++) o.write(new byte[1 << 20]);"
                                + " } return 96; })"))
                .isEqualTo("could not");
    }

    private static final String STARTED =
            "the head left a thread named \"process reaper\" running when asked for an action";

    /** The command is looked for where every Linux has it; behind bwrap it is not there. */
    @ParameterizedTest
    @CsvSource({"BWRAP,could not", "UNSHARE," + STARTED, "NONE," + STARTED})
    void startingPrograms(Wall wall, String expected) {
        assertThat(says(wall, "tried(() -> new ProcessBuilder(\"/bin/sleep\", \"0\").start().waitFor() == 0)"))
                .isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource({"BWRAP,did 0", "UNSHARE,did 0"})
    void rightsOverTheMachine(Wall wall, String expected) {
        String lines = "java.nio.file.Files.readAllLines(java.nio.file.Path.of(\"/proc/self/status\"))";
        assertThat(says(
                        wall,
                        "tried(() -> " + lines
                                + ".stream().filter(l -> l.startsWith(\"CapEff\") || l.startsWith(\"CapBnd\"))"
                                + ".mapToLong(l -> Long.parseLong(l.substring(8).trim(), 16)).sum())"))
                .isEqualTo(expected);
    }

    @ParameterizedTest
    @EnumSource
    void processorTime(Wall wall) {
        needed(wall);
        assumeTrue(Walls.bounded(), "left out, since this machine has no prlimit");
        HeadFault fault = asked(
                wall,
                LIMITS.answeringWithin(Duration.ofMinutes(2)).computing(Duration.ofSeconds(2)),
                "while (on()) { Math.sin(1); } return plain(task);",
                () -> {});
        assertThat(fault).isEqualTo(new HeadFault.OutOfProcessorTime(HeadStage.ACT, Duration.ofSeconds(2)));
    }

    /** Nothing comes and nothing ends; the clock is ours, and a stopped process can be killed. */
    @ParameterizedTest
    @EnumSource
    void aProcessThatIsStoppedIsLate(Wall wall) {
        needed(wall);
        HeadFault fault = asked(
                wall, LIMITS.answeringWithin(Duration.ofSeconds(10)), "return plain(task);", WallTest::stopAllBelow);
        assertThat(fault).isEqualTo(new HeadFault.TimedOut(HeadStage.ACT, Duration.ofSeconds(10)));
        assertThat(ProcessHandle.current().descendants()).isEmpty();
    }

    private static void stopAllBelow() {
        List<String> command = new ArrayList<>(List.of("kill", "-STOP"));
        ProcessHandle.current().descendants().forEach(each -> command.add(Long.toString(each.pid())));
        try {
            assertThat(new ProcessBuilder(command).inheritIO().start().waitFor())
                    .isZero();
        } catch (IOException | InterruptedException e) {
            throw new AssertionError(e);
        }
    }

    private static HeadFault asked(Wall wall, HeadLimits limits, String act, Runnable before) {
        HeadProcess process = HeadProcess.open(limits, Surroundings.USUAL, Walls.only(wall));
        process.load(HeadProcessTest.jar(Heads.acting("", act)));
        try (HeadAnswers head = ((HeadStart.Running) process.await()).head()) {
            before.run();
            return ((SpotAnswer.Failed) head.act(HeadProcessTest.task(1))).fault();
        }
    }

    /** Starts a process that cuts every tie to the one that started it, and says its number. */
    @ParameterizedTest
    @EnumSource(names = {"BWRAP", "UNSHARE"})
    void aDetachedGrandchildDoesNotOutliveItsHead(Wall wall) throws InterruptedException {
        String mark = "61." + ProcessHandle.current().pid() + "5";
        String said = says(
                wall,
                "tried(() -> new ProcessBuilder(\"/bin/sh\", \"-c\", \"setsid sleep " + mark
                        + " </dev/null >/dev/null 2>&1 &\").start().waitFor())");
        assertThat(said).isEqualTo(wall == Wall.BWRAP ? "could not" : STARTED);
        assertThat(goneSoon(mark)).isTrue();
    }

    private static boolean goneSoon(String mark) throws InterruptedException {
        for (int i = 0; i < 200; i++) {
            try (Stream<ProcessHandle> all = ProcessHandle.allProcesses()) {
                if (all.noneMatch(p -> p.info().commandLine().orElse("").contains(mark))) {
                    return true;
                }
            }
            Thread.sleep(50);
        }
        return false;
    }

    @Test
    void aWallThatIsRefusedGivesWayToTheNext() {
        Walls walls = Walls.of(List.of(Wall.BWRAP, Wall.UNSHARE, Wall.NONE));
        assertThat(walls.best()).isEqualTo(Wall.BWRAP);
        assertThat(walls.insteadOf(Wall.BWRAP)).contains(Wall.UNSHARE);
        assertThat(walls.best()).isEqualTo(Wall.UNSHARE);
        assertThat(walls.insteadOf(Wall.BWRAP))
                .as("told again by another process")
                .contains(Wall.UNSHARE);
        assertThat(walls.insteadOf(Wall.UNSHARE)).contains(Wall.NONE);
        assertThat(walls.insteadOf(Wall.NONE)).isEmpty();
        assertThat(walls.best()).isEqualTo(Wall.NONE);
    }

    @Test
    void onlyTheWallThatIsAskedFor() {
        assertThat(Walls.allowed("")).containsExactly(Wall.values());
        assertThat(Walls.allowed("BWRAP ")).containsExactly(Wall.BWRAP);
        assertThat(Walls.allowed("unshare")).containsExactly(Wall.UNSHARE);
        assertThat(Walls.allowed("none")).containsExactly(Wall.NONE);
        assertThat(Walls.allowed("brick"))
                .as("a slip must not take the wall away")
                .containsExactly(Wall.values());
    }

    @Test
    void onlyAWallThatHidesAllHasNothingToSay() {
        assertThat(Wall.BWRAP.note()).isEmpty();
        assertThat(Wall.UNSHARE.note()).isPresent();
        assertThat(Wall.NONE.note()).isPresent();
    }
}
