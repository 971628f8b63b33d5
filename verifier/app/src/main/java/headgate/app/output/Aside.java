package headgate.app.output;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.stream.Stream;

/** A folder to write in before anything is moved. Goes away at the end, also when the process is interrupted. */
final class Aside implements AutoCloseable {

    private final Path folder;
    private final Thread cleaner;

    private Aside(Path folder) {
        this.folder = folder;
        this.cleaner = new Thread(() -> delete(folder), "remove " + folder.getFileName());
    }

    /**
     * Makes one.
     *
     * @param parent where; on the file system of the place that the files go to
     */
    static Aside in(Path parent) throws IOException {
        Aside aside = new Aside(Files.createTempDirectory(parent, ".headgate-new-"));
        Runtime.getRuntime().addShutdownHook(aside.cleaner);
        return aside;
    }

    Path folder() {
        return folder;
    }

    @Override
    public void close() {
        delete(folder);
        try {
            Runtime.getRuntime().removeShutdownHook(cleaner);
        } catch (IllegalStateException ending) {
            // The process is being interrupted: the hook runs, and finds nothing left to do.
        }
    }

    /** Removes a folder of ours with all that is in it, as far as that can be done. */
    static void delete(Path folder) {
        try (Stream<Path> all = Files.walk(folder)) {
            all.sorted(Comparator.reverseOrder()).forEach(Aside::deleteOne);
        } catch (IOException | UncheckedIOException left) {
            // What cannot be removed is a hidden folder of ours; the report itself is not touched by it.
        }
    }

    private static void deleteOne(Path path) {
        try {
            Files.deleteIfExists(path);
        } catch (IOException left) {
            throw new UncheckedIOException(left);
        }
    }
}
