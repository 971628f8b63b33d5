package headgate.runtime.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import headgate.runtime.answers.HeadAnswers;
import headgate.runtime.answers.HeadFault;
import headgate.runtime.answers.SpotAnswer;
import headgate.runtime.pack.CleanJar;
import headgate.runtime.task.LatticeSpotTask;
import headgate.runtime.testing.Heads;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * The table of what stops a hostile head behind each wall, held against what happens. {@code
 * -Dheadgate.write-deeds=true} writes the table anew, on a machine where all walls work.
 */
@Timeout(value = 20, unit = TimeUnit.MINUTES)
class DeedTableTest {

    private static final Path TEMPORARY = Path.of(System.getProperty("java.io.tmpdir"));
    private static final Path PAGE = Path.of("..", "docs", "explanation", "partner-code.md");
    private static final String BEGIN = "| a head that | behind bwrap | behind unshare | without a wall |\n";

    /** Short, since many a head runs into them. */
    private static final HeadLimits LIMITS = new HeadLimits(
            Duration.ofSeconds(60),
            Duration.ofSeconds(30),
            Duration.ofSeconds(2),
            Duration.ofMillis(10),
            Duration.ofSeconds(60),
            32,
            32,
            512,
            40,
            20_000);

    /** Memory takes time to fill; the limit is not the clock there. */
    private static final HeadLimits PATIENT = LIMITS.answeringWithin(Duration.ofSeconds(60));

    @TempDir
    private Path folder = Path.of("");

    private int sleeps;

    private static boolean patient(Deed deed) {
        return deed.name().startsWith("FILLS") || deed == Deed.STARTS_THREADS || deed == Deed.WRITES_A_HUGE_FILE;
    }

    /** Does it behind a wall, and says what stopped it. */
    private String seen(Deed deed, Wall wall, int port) throws IOException, InterruptedException {
        Path file = Files.writeString(folder.resolve("file"), "secret");
        String sleep = "63." + ProcessHandle.current().pid() + "0" + ++sleeps;
        CleanJar jar = HeadProcessTest.jar(deed.source()
                .replace("@file-2", folder.resolve("written").toString())
                .replace("@file", file.toString())
                .replace("@folder", folder.toString())
                .replace("@port", Integer.toString(port))
                .replace("@sleep", sleep));
        HeadProcess process = HeadProcess.open(patient(deed) ? PATIENT : LIMITS, Surroundings.USUAL, Walls.only(wall));
        process.load(jar);
        HeadStart start = process.await();
        assertThat(start).as("%s behind %s", deed, wall).isInstanceOf(HeadStart.Running.class);
        List<LatticeSpotTask> tasks = IntStream.range(0, deed == Deed.DRIPS ? 20 : 3)
                .mapToObj(HeadProcessTest::task)
                .toList();
        String stopped;
        try (HeadAnswers head = ((HeadStart.Running) start).head()) {
            List<SpotAnswer> answers = head.act(tasks);
            stopped = words(answers.get(answers.size() - 1), wall);
        }
        assertThat(Files.readString(file))
                .as("a link is deleted, not what it names")
                .isEqualTo("secret");
        Files.deleteIfExists(folder.resolve("written"));
        if (deed == Deed.LINKS_OUT) {
            stopped = stopped.equals("**nothing**") ? "nothing: its folder goes, and what links name stays" : stopped;
        }
        if (deed.name().startsWith("DETACHES")) {
            boolean gone = lives(sleep).isEmpty()
                    || (wall != Wall.NONE && Traces.soon(() -> lives(sleep).isEmpty()));
            lives(sleep).forEach(ProcessHandle::destroyForcibly);
            stopped += stopped.startsWith("the wall")
                    ? ""
                    : gone ? "; what it started ends too" : "; **what it started lives on**";
        }
        return stopped;
    }

    private static List<ProcessHandle> lives(String sleep) {
        return Traces.marked("sleep\0" + sleep);
    }

    private static String words(SpotAnswer last, Wall wall) {
        if (!(last instanceof SpotAnswer.Failed failed)) {
            return "nothing: it is skipped, and the answers are right";
        }
        HeadFault fault = failed.fault();
        if (fault instanceof HeadFault.Threw threw) {
            return switch (threw.message().split(" ", 2)[0]) {
                case "could" -> wall == Wall.NONE ? "a bound by the system" : "the wall";
                case "did" -> "**nothing**";
                default -> "an error: " + threw.message();
            };
        } else if (fault instanceof HeadFault.Exited) {
            return "its end is seen";
        } else if (fault instanceof HeadFault.TimedOut) {
            return "the clock";
        } else if (fault instanceof HeadFault.TooSlow) {
            return "the clock for all answers";
        } else if (fault instanceof HeadFault.OutOfMemory) {
            return "a bound on memory";
        } else if (fault instanceof HeadFault.StackOverflow) {
            return "the bound on the stack";
        } else if (fault instanceof HeadFault.OutputFlood) {
            return "the bound on output";
        } else if (fault instanceof HeadFault.LeftThread) {
            return "the look for threads";
        }
        return fault.sentence();
    }

    /** Rows by deed: what the page says behind each wall. */
    private static Map<String, List<String>> page() throws IOException {
        Map<String, List<String>> rows = new TreeMap<>();
        String text = Files.readString(PAGE, StandardCharsets.UTF_8);
        String table = text.substring(text.indexOf(BEGIN) + BEGIN.length());
        table.lines().skip(1).takeWhile(line -> line.startsWith("|")).forEach(line -> {
            List<String> cells = List.of(line.split("\\|", -1));
            rows.put(
                    cells.get(1).strip(),
                    cells.subList(2, 5).stream().map(String::strip).toList());
        });
        return rows;
    }

    @ParameterizedTest
    @EnumSource
    void thePageSaysWhatStoppedIt(Wall wall) throws IOException, InterruptedException {
        assumeTrue(!Boolean.getBoolean("headgate.write-deeds"));
        Optional<String> wrong = HeadProcess.tryOut(wall);
        assumeTrue(wrong.isEmpty(), () -> "left out, since the wall by " + wall.word() + " does not work: " + wrong);
        Map<String, List<String>> page = page();
        List<Path> before = Traces.folders(TEMPORARY);
        assertThat(page).hasSize(Deed.values().length);
        try (ServerSocket server = new ServerSocket(0, 50, InetAddress.getLoopbackAddress())) {
            for (Deed deed : Deed.values()) {
                if (deed.needsBounds() && !Walls.bounded()) {
                    continue;
                }
                assertThat(seen(deed, wall, server.getLocalPort()))
                        .as("%s behind %s", deed, wall)
                        .isEqualTo(page.getOrDefault(deed.words(), List.of("", "", ""))
                                .get(List.of(Wall.values()).indexOf(wall)));
            }
        }
        nothingIsLeft(wall, before);
    }

    private static void nothingIsLeft(Wall wall, List<Path> before) throws IOException, InterruptedException {
        assertThat(Traces.soon(
                        () -> ProcessHandle.current().descendants().findAny().isEmpty()))
                .as("no process is left")
                .isTrue();
        assertThat(Traces.folders(TEMPORARY)).isSubsetOf(before);
        HeadProcess process = HeadProcess.open(LIMITS, Surroundings.USUAL, Walls.only(wall));
        process.load(HeadProcessTest.jar(Heads.spot("")));
        try (HeadAnswers head = ((HeadStart.Running) process.await()).head()) {
            assertThat(head.act(HeadProcessTest.task(1))).as("the next head").isInstanceOf(SpotAnswer.Answered.class);
        }
    }

    @Test
    void writeThePage() throws IOException, InterruptedException {
        assumeTrue(Boolean.getBoolean("headgate.write-deeds"), "only to write the page");
        List<String> lines = new ArrayList<>();
        try (ServerSocket server = new ServerSocket(0, 50, InetAddress.getLoopbackAddress())) {
            for (Deed deed : Deed.values()) {
                StringBuilder line = new StringBuilder("| " + deed.words() + " |");
                for (Wall wall : Wall.values()) {
                    line.append(' ')
                            .append(seen(deed, wall, server.getLocalPort()))
                            .append(" |");
                }
                lines.add(line.toString());
            }
        }
        String text = Files.readString(PAGE, StandardCharsets.UTF_8);
        int from = text.indexOf(BEGIN) + BEGIN.length();
        String rest = text.substring(from)
                .lines()
                .dropWhile(line -> line.startsWith("|"))
                .reduce("", (a, b) -> a + b + "\n");
        Files.writeString(
                PAGE,
                text.substring(0, from) + "|---|---|---|---|\n" + String.join("\n", lines) + "\n" + rest,
                StandardCharsets.UTF_8);
    }
}
