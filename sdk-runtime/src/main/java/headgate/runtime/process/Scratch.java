package headgate.runtime.process;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;

/** A directory of a head process's own, gone when the process is. */
final class Scratch implements AutoCloseable {

    private final Path directory;

    private Scratch(Path directory) {
        this.directory = directory;
    }

    static Scratch make() throws IOException {
        return new Scratch(Files.createTempDirectory("headgate-head-").toAbsolutePath());
    }

    Path directory() {
        return directory;
    }

    Path write(String name, byte[] content) throws IOException {
        return Files.write(directory.resolve(name), content);
    }

    /** Deletes the directory and whatever the head may have put there, following no link. */
    @Override
    public void close() {
        List<Path> all;
        try (Stream<Path> walk = Files.walk(directory)) {
            all = new ArrayList<>(walk.toList());
        } catch (IOException | UncheckedIOException e) {
            all = new ArrayList<>(List.of(directory));
        }
        // Children come after their parents in the walk.
        Collections.reverse(all);
        for (Path path : all) {
            try {
                Files.deleteIfExists(path);
            } catch (IOException e) {
                // What cannot be deleted stays in the system's own place for temporary files.
            }
        }
    }
}
