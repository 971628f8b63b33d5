package headgate.runtime.schema;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The reference page of each kind of file is what its form says, with Lowfield's file as the example. */
class ReferencePageTest {

    private static final Path FOLDER = Path.of("..", "docs", "reference", "files");

    static Stream<Kinds.Subject> kinds() {
        return Kinds.all().stream();
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void isWhatTheFormSays(Kinds.Subject kind) throws IOException {
        Path page = FOLDER.resolve(kind.name() + ".md");
        String now = ReferencePage.of(kind);
        if (Boolean.getBoolean("headgate.write-schemas")) {
            Files.createDirectories(FOLDER);
            Files.writeString(page, now);
        }
        assertThat(page)
                .as("run this test once with -Dheadgate.write-schemas=true")
                .hasContent(now);
    }
}
