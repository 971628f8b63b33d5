package headgate.it.program;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How the packaged program starts: where it finds Java, how it is called, and what its class-data archives may do. */
class LauncherTest {

    @Test
    void itRunsThroughALinkAndFromAFolderWithSpaces(@TempDir Path work) throws Exception {
        Path spaced = copy(work.resolve("a folder with spaces"));
        Path link = Files.createSymbolicLink(work.resolve("link"), spaced.resolve("bin/headgate"));
        Call.Result result =
                Call.in(work).with("HEADGATE_ARCHIVES", "none").program(link).run("--version");
        assertThat(result.exit()).as(result.err()).isZero();
        assertThat(result.out()).startsWith("headgate ");
    }

    @Test
    void aJavaThatIsNotThereIsSaidInOneLine(@TempDir Path work) throws Exception {
        Call.Result result = Call.in(work).with("JAVA_HOME", "/no/such/jdk").run("--version");
        assertThat(result.exit()).isEqualTo(2);
        assertThat(result.err())
                .isEqualTo("headgate: JAVA_HOME is /no/such/jdk, but there is no bin/java in it."
                        + " Let it name a JDK 17 or newer, or unset it.\n");
    }

    @Test
    void aJavaThatIsTooOldIsSaidInOneLine(@TempDir Path work) throws Exception {
        Path old = Files.createDirectories(work.resolve("jdk/bin"));
        Files.createFile(
                old.resolve("java"),
                PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rwxr-xr-x")));
        Files.writeString(work.resolve("jdk/release"), "JAVA_VERSION=\"11.0.2\"\n");
        Call.Result result =
                Call.in(work).with("JAVA_HOME", work.resolve("jdk").toString()).run("--version");
        assertThat(result.exit()).isEqualTo(2);
        assertThat(result.err()).contains("Java 17 or newer is needed").contains("11.0.2");
        assertThat(result.err().lines()).hasSize(1);
    }

    @Test
    void noJavaAtAllIsSaidInOneLine(@TempDir Path work) throws Exception {
        assumeTrue(!Files.exists(Path.of("/usr/libexec/java_home")), "macOS finds its JDKs by a command of its own");
        Path tools = Files.createDirectory(work.resolve("tools"));
        Path readlink =
                Files.writeString(tools.resolve("readlink"), "#!/bin/sh\nexec " + which("readlink") + " \"$@\"\n");
        Files.setPosixFilePermissions(readlink, PosixFilePermissions.fromString("rwxr-xr-x"));
        Call.Result result = Call.in(work)
                .without("JAVA_HOME")
                .with("PATH", tools.toString())
                .run("--version");
        assertThat(result.exit()).isEqualTo(2);
        assertThat(result.err())
                .isEqualTo("headgate: no java on the PATH. Install a JDK 17 or newer, or let JAVA_HOME name one.\n");
    }

    @Test
    void archivesAreMadeOnceAndSaidOnce(@TempDir Path work) throws Exception {
        Call call = Call.in(work).with("XDG_CACHE_HOME", work.resolve("cache").toString());
        Call.Result first = call.run("--version");
        Call.Result second = call.run("--version");
        assertThat(first.err()).isEqualTo("headgate: preparing a faster start, once for this Java\n");
        assertThat(second.err()).isEmpty();
        assertThat(second.out()).isEqualTo(first.out());
        Call.Result doctor = call.run("doctor");
        assertThat(doctor.out()).doesNotContain("no class-data archive", "not made");
        assertThat(archives(work.resolve("cache"))).hasSize(2);
    }

    @Test
    void aDamagedArchiveOnlyCostsTime(@TempDir Path work) throws Exception {
        Call call = Call.in(work).with("XDG_CACHE_HOME", work.resolve("cache").toString());
        Call.Result good = call.check("gripper.jar", "lettuce-45-weeding.json");
        for (Path archive : archives(work.resolve("cache"))) {
            Files.setPosixFilePermissions(archive, PosixFilePermissions.fromString("rw-r--r--"));
            Files.write(archive, new byte[100_000]);
        }
        Call.Result damaged = call.check("gripper.jar", "lettuce-45-weeding.json");
        assertThat(damaged.exit()).isEqualTo(good.exit());
        assertThat(damaged.out()).isEqualTo(good.out());
    }

    @Test
    void aCacheThatCannotBeWrittenOnlyCostsTime(@TempDir Path work) throws Exception {
        Path file = Files.createFile(work.resolve("file"));
        Call.Result result =
                Call.in(work).with("XDG_CACHE_HOME", file.toString()).run("--version");
        assertThat(result.exit()).isZero();
        assertThat(result.out()).startsWith("headgate ");
        assertThat(result.err()).isEmpty();
    }

    private static Path which(String tool) {
        return Stream.of("/bin", "/usr/bin")
                .map(folder -> Path.of(folder, tool))
                .filter(Files::exists)
                .findFirst()
                .orElseThrow();
    }

    private static List<Path> archives(Path cache) throws IOException {
        try (Stream<Path> all = Files.walk(cache)) {
            return all.filter(each -> each.toString().endsWith(".jsa")).toList();
        }
    }

    private static Path copy(Path target) throws IOException {
        try (Stream<Path> all = Files.walk(Dist.folder())) {
            for (Path each : all.toList()) {
                Files.copy(each, target.resolve(Dist.folder().relativize(each).toString()));
            }
        }
        return target;
    }
}
