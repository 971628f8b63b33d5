package headgate.runtime.process;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class ChildCommandTest {

    /** The fields of the JDK's collections that hold the drawn order; their names stand in every class that reads them. */
    private static final List<String> ORDER = List.of("SALT32L", "REVERSE");

    @Test
    void everyClassOfThisJavaThatReadsTheDrawnOrderStaysInterpreted() throws IOException {
        Path folder = FileSystems.getFileSystem(URI.create("jrt:/")).getPath("/modules/java.base/java/util");
        List<String> readers;
        try (Stream<Path> classes = Files.list(folder)) {
            readers = classes.filter(file -> file.getFileName().toString().startsWith("ImmutableCollections$"))
                    .filter(ChildCommandTest::namesTheOrder)
                    .map(file -> "java/util/" + file.getFileName())
                    .toList();
        }

        assertThat(readers).hasSizeGreaterThanOrEqualTo(3).allMatch(ChildCommandTest::staysInterpreted);
    }

    @Test
    void listsAreCompiled() {
        assertThat(staysInterpreted("java/util/ImmutableCollections$ListN.class"))
                .isFalse();
        assertThat(staysInterpreted("java/util/ImmutableCollections$List12.class"))
                .isFalse();
    }

    private static boolean staysInterpreted(String file) {
        return ChildCommand.SALTED.stream().anyMatch(file::startsWith);
    }

    private static boolean namesTheOrder(Path file) {
        try {
            String bytes = new String(Files.readAllBytes(file), ISO_8859_1);
            return ORDER.stream().anyMatch(bytes::contains);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
