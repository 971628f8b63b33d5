package headgate.it.program;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Places for a report that cannot take it: exit code 2, one line, nothing lost. */
class OutFolderTest {

    private static final String CROP = "lettuce-45-weeding.json";

    @Test
    void aFolderWithFilesOfSomebodyElseIsLeftAlone(@TempDir Path work) throws Exception {
        Path folder = Files.createDirectory(work.resolve("mine"));
        Files.writeString(folder.resolve("thesis.txt"), "years of work");
        refused(Call.in(work).check("gripper.jar", CROP, "--out", "mine"), "thesis.txt");
        assertThat(CheckProgramTest.files(folder)).containsOnly(Map.entry("thesis.txt", "years of work"));
    }

    @Test
    void aFileInTheWayIsLeftAlone(@TempDir Path work) throws Exception {
        Files.writeString(work.resolve("file"), "years of work");
        refused(Call.in(work).check("gripper.jar", CROP, "--out", "file"), "must be a folder");
        refused(Call.in(work).check("gripper.jar", CROP, "--out", "file/below"), "file");
        assertThat(work.resolve("file")).hasContent("years of work");
    }

    @Test
    void aFolderThatCannotBeWrittenIsSaid(@TempDir Path work) throws Exception {
        // Nobody can make a folder there, not even the administrator that tests may run as.
        assumeTrue(Files.isDirectory(Path.of("/proc/self")), "this system has no /proc");
        refused(Call.in(work).check("gripper.jar", CROP, "--out", "/proc/headgate-report"), "cannot be written");
    }

    @Test
    void aFullDiskKeepsTheEarlierReport(@TempDir Path work) throws Exception {
        Path folder = Files.createDirectory(work.resolve("small"));
        assumeTrue(
                command("mount", "-t", "tmpfs", "-o", "size=2m", "tmpfs", folder.toString()) == 0,
                "only an administrator can mount a small disk");
        try {
            Call.Result first = Call.in(work).check("gripper.jar", CROP, "--out", "small");
            assertThat(first.exit()).as(first.err()).isZero();
            Map<String, String> before = CheckProgramTest.files(folder);
            fill(work.resolve("small/.headgate-report"));
            Call.Result full = Call.in(work).check("gripper.jar", CROP, "--out", "small");
            refused(full, "cannot be written");
            Map<String, String> after = CheckProgramTest.files(folder);
            before.remove(".headgate-report");
            after.remove(".headgate-report");
            assertThat(after).isEqualTo(before);
        } finally {
            command("umount", folder.toString());
        }
    }

    @Test
    void aFullStandardOutputIsNoSuccess(@TempDir Path work) throws Exception {
        Path full = Path.of("/dev/full");
        assumeTrue(Files.exists(full), "this system has no /dev/full");
        Path err = work.resolve("err");
        Process process = Call.in(work).start(full, err, List.of("rules"));
        assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
        assertThat(process.exitValue()).isEqualTo(2);
        assertThat(err).content().contains("standard output: cannot be written");
    }

    private static void refused(Call.Result result, String words) {
        assertThat(result.exit()).as(result.err()).isEqualTo(2);
        assertThat(result.out()).isEmpty();
        assertThat(result.err()).startsWith("headgate: ").contains(words).doesNotContain("\tat ");
        assertThat(result.err().lines()).as(result.err()).hasSize(1);
    }

    /** Fills the disk by making one file longer that the program will not read beyond its lines: the marker. */
    private static void fill(Path file) throws IOException {
        byte[] block = "\n".repeat(4096).getBytes(java.nio.charset.StandardCharsets.UTF_8);
        try (java.io.OutputStream out = Files.newOutputStream(file, java.nio.file.StandardOpenOption.APPEND)) {
            while (true) {
                out.write(block);
            }
        } catch (IOException full) {
            assertThat(full).hasMessageContaining("space");
        }
    }

    private static int command(String... words) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(words)
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        return process.waitFor();
    }
}
