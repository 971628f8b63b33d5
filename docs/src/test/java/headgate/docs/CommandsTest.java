package headgate.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Runs every command that a page shows, page by page, each page in a folder of its own. */
class CommandsTest {

    /** What cannot run inside the tests, and why. */
    private static final List<String> NOT_RUN = List.of(
            // These start the tests that this one is a part of.
            "mvn -B -ntp verify",
            "mvn -B -ntp -Pdeep verify",
            "mvn -B -ntp -Pevidence verify",
            "mvn -B -ntp -Pdeep verify -pl sdk-runtime -am",
            // Benchmarks take long, and belong to no test.
            "mvn -B -ntp -Pbench verify -pl verifier/engine -am -DskipTests",
            "mvn -B -ntp package -pl sample-heads/gripper -am -DskipTests",
            "mvn -B -ntp -Pbench verify -pl verifier/engine -am -DskipTests -Dbench=AnswersBenchmark.*",
            "mvn -B -ntp -Pbench verify -pl verifier/engine -am -DskipTests -Dbench=HectareBenchmark.*",
            "mvn -B -ntp -Pbench verify -pl verifier/engine -am -DskipTests"
                    + " '-Dbench=(Replay|PlotOnLibrary|QueueLibrary)Benchmark.*'",
            // The reader writes that file; FitProgramTest runs this on one of its own.
            "headgate fit heads.json --search margin --save found.json");

    static List<Page> pagesWithCommands() throws IOException {
        return Page.all().stream().filter(p -> !p.commands().isEmpty()).toList();
    }

    @Test
    void onlyTheListedCommandsAreNotRun() throws IOException {
        TreeSet<String> notRun = new TreeSet<>();
        Page.all().forEach(p -> p.commandsNotRun().forEach(c -> notRun.add(c.text())));

        assertThat(NOT_RUN).containsAll(notRun);
    }

    @ParameterizedTest
    @MethodSource("pagesWithCommands")
    void everyCommandShownRuns(Page page, @TempDir Path folder) throws Exception {
        Path dist = Page.root().resolve("verifier/app/target/dist");
        assertThat(dist).as("the program, packed by the module before").isDirectory();
        Path bin = Files.createDirectories(folder.resolve("bin-of-the-page"));
        Path work = Files.createDirectories(folder.resolve("work"));
        // In a checkout the launcher would build first; here the program is built already.
        Files.createSymbolicLink(bin.resolve("headgate"), dist.resolve("bin/headgate"));
        Files.createDirectories(work.resolve("verifier"));
        Files.createSymbolicLink(work.resolve("verifier/headgate"), dist.resolve("bin/headgate"));
        // The README speaks of a checkout, which has no such folders; the other pages speak of the packed program.
        if (!page.name().equals("README.md")) {
            Files.createSymbolicLink(work.resolve("lib"), dist.resolve("lib"));
            copy(dist.resolve("demo"), work.resolve("demo"));
        }
        for (Map.Entry<String, String> file : page.files().entrySet()) {
            Files.writeString(work.resolve(file.getKey()), file.getValue(), StandardCharsets.UTF_8);
        }
        for (Page.Command command : page.commands()) {
            Path log = folder.resolve("log");
            ProcessBuilder builder = new ProcessBuilder("sh", "-c", command.text())
                    .directory(work.toFile())
                    .redirectErrorStream(true)
                    .redirectOutput(log.toFile());
            builder.environment().merge("PATH", bin.toString(), (old, ours) -> ours + ":" + old);
            Process process = builder.start();
            process.getOutputStream().close();
            boolean ended = process.waitFor(120, TimeUnit.SECONDS);
            process.destroyForcibly();
            String printed = Files.readString(log, StandardCharsets.UTF_8);
            assertThat(ended).as("%s ended%n%s", command.text(), printed).isTrue();
            assertThat(process.exitValue())
                    .as("exit code of %s%n%s", command.text(), printed)
                    .isEqualTo(command.exit());
        }
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : files.toList()) {
                Path target = to.resolve(from.relativize(file).toString());
                if (Files.isDirectory(file)) {
                    Files.createDirectories(target);
                } else {
                    Files.copy(file, target);
                }
            }
        }
    }
}
