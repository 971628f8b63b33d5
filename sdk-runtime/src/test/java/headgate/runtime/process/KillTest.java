package headgate.runtime.process;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.runtime.testing.Heads;
import headgate.runtime.testing.Jars;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Kills a program that runs a head, or a process of the head, at a moment drawn from a seed: no process and no folder is
 * left, and the next run is right. Every second run goes without a wall. The tier {@code deep} does it 100 times.
 */
@Timeout(value = 60, unit = TimeUnit.MINUTES)
class KillTest {

    /** Longer than a start and some rounds of questions on a quiet machine. */
    private static final int LATEST_MILLIS = 1_200;

    private static final String FOREVER = "1000000";

    @TempDir
    private Path folder = Path.of("");

    private Path temporary = Path.of("");
    private String mark = "";

    @BeforeEach
    void aMachineOfItsOwn() throws IOException {
        temporary = Files.createDirectory(folder.resolve("tmp"));
        Files.write(folder.resolve("head.jar"), Jars.of(Heads.NAME, Heads.spot("")));
        mark = folder.resolve("mark").toString();
    }

    private Process parent(boolean walled, String rounds) throws IOException {
        String classPath = System.getProperty("java.class.path");
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-XX:-UsePerfData",
                "-Djava.io.tmpdir=" + temporary,
                // In the class path of the child, too, so that all its processes can be told from others.
                "-D" + ChildCommand.CLASS_PATH + "=" + classPath + File.pathSeparator + mark,
                "-D" + Walls.PROPERTY + "=" + (walled ? "any" : "none"),
                "-cp",
                classPath,
                KilledParent.class.getName(),
                folder.resolve("head.jar").toString(),
                rounds));
        return new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("said").toFile())
                .start();
    }

    /** One moment: half of the seeds kill the parent, the others a process below it; half of each go without a wall. */
    private String killedAt(long seed) throws IOException, InterruptedException {
        Random random = new Random(seed);
        boolean walled = seed % 2 == 0;
        boolean killParent = seed % 4 < 2;
        Process parent = parent(walled, FOREVER);
        Thread.sleep(random.nextInt(LATEST_MILLIS));
        String killed = "parent";
        if (!killParent) {
            List<ProcessHandle> below = new ArrayList<>();
            assertThat(Traces.soon(() -> parent.descendants().findAny().isPresent()))
                    .as("a process below the parent")
                    .isTrue();
            parent.descendants().forEach(below::add);
            killed = below.isEmpty()
                    ? "nothing"
                    : below.get(random.nextInt(below.size())).destroyForcibly() ? "child" : "nothing";
        }
        if (killed.equals("parent") || killed.equals("nothing")) {
            parent.destroyForcibly();
        }
        assertThat(parent.waitFor(60, TimeUnit.SECONDS)).as("the parent ends").isTrue();
        if (killed.equals("child")) {
            assertThat(Files.readString(folder.resolve("said"))).startsWith("fault: ");
            assertThat(parent.exitValue()).isZero();
        }
        assertThat(Traces.soon(() -> Traces.marked(mark).isEmpty()))
                .as("seed %d, %s killed: no process is left, but %s", seed, killed, Traces.marked(mark))
                .isTrue();
        assertThat(Traces.folders(temporary))
                .as("seed %d, %s killed: no folder is left", seed, killed)
                .isEmpty();
        Process next = parent(walled, "1");
        assertThat(next.waitFor(120, TimeUnit.SECONDS)).isTrue();
        assertThat(Files.readString(folder.resolve("said")))
                .as("the next run")
                .isEqualTo("right" + System.lineSeparator());
        return killed;
    }

    @ParameterizedTest
    @ValueSource(longs = {0, 1, 2, 3})
    void nothingIsLeftAfterAKill(long seed) throws IOException, InterruptedException {
        killedAt(seed);
    }

    @Test
    @Tag("deep")
    void nothingIsLeftAfterAHundredKills() throws IOException, InterruptedException {
        int parents = 0;
        int children = 0;
        for (long seed = 1_000; seed < 1_100; seed++) {
            String killed = killedAt(seed);
            parents += killed.equals("parent") ? 1 : 0;
            children += killed.equals("child") ? 1 : 0;
        }
        System.out.println("killed " + parents + " parents and " + children + " children; nothing was left");
        assertThat(parents).isGreaterThanOrEqualTo(40);
        assertThat(children).isGreaterThanOrEqualTo(40);
    }
}
