package headgate.verifier.plot;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KeptResultsTest {

    private static final String KEY = "d".repeat(64);

    @TempDir
    private Path above = Path.of("");

    private Path folder = Path.of("");
    private KeptResults kept = new KeptResults(Path.of(""), () -> {});
    private final PlotResult result = Outcomes.study().plots().get(0);

    @BeforeEach
    void open() {
        folder = above.resolve("kept");
        kept = new KeptResults(folder, () -> Files.createDirectories(folder));
    }

    private Path file() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            List<Path> all = files.toList();
            assertThat(all).hasSize(1);
            return all.get(0);
        }
    }

    @Test
    void findsWhatItKept() throws IOException {
        assertThat(kept.find(KEY)).isEmpty();
        assertThat(folder).doesNotExist();
        kept.keep(KEY, result);
        assertThat(kept.find(KEY)).contains(result);
        assertThat(kept.find("e".repeat(64))).isEmpty();
        for (PlotResult each : Outcomes.study().plots()) {
            kept.keep(KEY, each);
            assertThat(kept.find(KEY)).contains(each);
        }
    }

    /** However a file is cut short, what is left of it is as good as none. */
    @Test
    void takesNothingThatWasCutShort() throws IOException {
        kept.keep(KEY, result);
        byte[] whole = Files.readAllBytes(file());
        for (int length = 0; length < whole.length; length += 11) {
            Files.write(file(), Arrays.copyOf(whole, length));
            assertThat(kept.find(KEY))
                    .as("%d of %d bytes", length, whole.length)
                    .isEmpty();
        }
    }

    @Test
    void takesNothingThatWasChangedOrRenamed() throws IOException {
        kept.keep(KEY, result);
        byte[] whole = Files.readAllBytes(file());
        for (int at = 0; at < whole.length; at += 13) {
            byte[] changed = whole.clone();
            changed[at] ^= 1;
            Files.write(file(), changed);
            assertThat(kept.find(KEY)).as("byte %d", at).isEmpty();
        }
        String other = "f".repeat(64);
        Files.write(file(), whole);
        Files.move(file(), folder.resolve(other + KeptResults.ENDING));
        assertThat(kept.find(other)).isEmpty();
    }
}
