package headgate.verifier.plot;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A folder for what is put in order on the way. It goes away at the end, also when the process is interrupted. */
public final class Scratch implements Closeable {

    private final Path folder;
    private final Thread cleaner;

    private Scratch(Path folder) {
        this.folder = folder;
        this.cleaner = new Thread(() -> delete(folder), "remove " + folder.getFileName());
    }

    /**
     * Makes one among the temporary files.
     *
     * @return the folder
     * @throws IOException if it cannot be made
     */
    public static Scratch make() throws IOException {
        Scratch scratch = new Scratch(Files.createTempDirectory("headgate-plots-"));
        Runtime.getRuntime().addShutdownHook(scratch.cleaner);
        return scratch;
    }

    /** {@return where it is} */
    public Path folder() {
        return folder;
    }

    private static void delete(Path folder) {
        try (var found = Files.list(folder)) {
            for (Path each : found.toList()) {
                Files.deleteIfExists(each);
            }
            Files.deleteIfExists(folder);
        } catch (IOException left) {
            // A folder of ours among the temporary files; the system clears those away.
        }
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
}
