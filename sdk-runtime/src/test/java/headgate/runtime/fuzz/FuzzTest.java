package headgate.runtime.fuzz;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import headgate.runtime.origin.FileProblem;
import headgate.runtime.origin.Place;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Fuzzes what reads files, and what reads the messages of a head process. In every build: right files with bytes changed, from explicit seeds. In the deep tier: Jazzer,
 * guided by coverage, in a JVM of its own; it begins with the same right files. What it finds is kept in the folder
 * {@code headgate/found} of the test resources and read in every build.
 */
class FuzzTest {

    private static final Path FORMATS = Path.of("src", "test", "resources", "headgate", "formats");

    private static final Path FOUND = Path.of("src", "test", "resources", "headgate", "found");

    private static final byte[] CSV =
            "# headgate.stand/1\nx [m],y [mm],class,stem [mm]\n0.5,-12.5,broadleaf,3\n1,2,crop,\n"
                    .getBytes(StandardCharsets.UTF_8);

    private static List<byte[]> seeds() throws IOException {
        List<byte[]> seeds = new ArrayList<>();
        for (Path folder : List.of(FORMATS, FOUND)) {
            if (Files.isDirectory(folder)) {
                try (DirectoryStream<Path> files = Files.newDirectoryStream(folder)) {
                    for (Path file : files) {
                        seeds.add(Files.readAllBytes(file));
                    }
                }
            }
        }
        seeds.add(CSV);
        return seeds;
    }

    @Test
    void changedFramesAreReadOrRefused() throws IOException {
        Random random = new Random(12);
        for (byte[] seed : FrameTarget.seeds()) {
            FrameTarget.fuzzerTestOneInput(seed);
            for (int i = 0; i < 300; i++) {
                byte[] changed = seed.clone();
                for (int n = random.nextInt(4); n >= 0; n--) {
                    changed[random.nextInt(changed.length)] = (byte) random.nextInt(256);
                }
                FrameTarget.fuzzerTestOneInput(changed);
            }
        }
    }

    @Test
    void changedBytesAreReadOrRefused() throws IOException {
        List<byte[]> seeds = seeds();
        assertThat(seeds).hasSizeGreaterThanOrEqualTo(5);
        Random random = new Random(11);
        for (byte[] seed : seeds) {
            FileTarget.fuzzerTestOneInput(seed);
            StandTarget.fuzzerTestOneInput(seed);
            for (int i = 0; i < 150; i++) {
                byte[] changed = seed.clone();
                for (int n = random.nextInt(4); n >= 0; n--) {
                    changed[random.nextInt(changed.length)] = (byte) random.nextInt(256);
                }
                FileTarget.fuzzerTestOneInput(changed);
                StandTarget.fuzzerTestOneInput(changed);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(classes = {FileTarget.class, StandTarget.class, FrameTarget.class})
    @Tag("deep")
    void jazzerFindsNothing(Class<?> target, @TempDir Path folder) throws IOException, InterruptedException {
        JazzerRun.findsNothing(
                target,
                "headgate.**:com.fasterxml.jackson.core.**",
                target == FrameTarget.class ? FrameTarget.seeds() : seeds(),
                folder);
    }

    @Test
    void aBrokenPlaceComesOut() {
        // A target that swallowed everything would find nothing: a broken place must come out of the check.
        assertThatThrownBy(
                        () -> FileTarget.checkPlaces(List.of(new FileProblem(new Place("f", 1, 0), "", "a", "b", ""))))
                .isInstanceOf(AssertionError.class);
    }
}
