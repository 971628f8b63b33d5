package headgate.runtime.scratch;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TemporaryFolderTest {

    @Test
    void goesAwayWithAllThatIsInItAndLeavesWhatALinkPointsTo(@TempDir Path parent) throws IOException {
        Path kept = Files.writeString(parent.resolve("kept.txt"), "kept");
        Path folder;
        try (TemporaryFolder temporary = TemporaryFolder.in(parent, "new-")) {
            folder = temporary.folder();
            Files.createDirectories(folder.resolve("a/b"));
            Files.writeString(folder.resolve("a/b/c.txt"), "c");
            Files.createSymbolicLink(folder.resolve("link"), kept);
            assertThat(folder).hasParent(parent);
            assertThat(folder.getFileName().toString()).startsWith("new-");
        }

        assertThat(folder).doesNotExist();
        assertThat(kept).hasContent("kept");
    }

    @Test
    void closingOneThatIsGoneChangesNothing(@TempDir Path parent) throws IOException {
        TemporaryFolder temporary = TemporaryFolder.in(parent, "new-");
        Files.delete(temporary.folder());

        temporary.close();

        assertThat(temporary.folder()).doesNotExist();
    }
}
