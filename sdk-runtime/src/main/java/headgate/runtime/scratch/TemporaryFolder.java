package headgate.runtime.scratch;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A folder of this program's own that goes away at the end, also when the process is interrupted. */
public final class TemporaryFolder implements Closeable {

    private final ScratchFolder folder;
    private final Thread cleaner;

    private TemporaryFolder(Path folder) {
        this.folder = new ScratchFolder(folder);
        this.cleaner = new Thread(this.folder::delete, "remove " + folder.getFileName());
        Runtime.getRuntime().addShutdownHook(cleaner);
    }

    /**
     * Makes one where the system keeps temporary files.
     *
     * @param prefix how its name begins
     * @return the folder
     * @throws IOException if it cannot be made
     */
    public static TemporaryFolder make(String prefix) throws IOException {
        return new TemporaryFolder(Files.createTempDirectory(prefix));
    }

    /**
     * Makes one beside other files, on their file system.
     *
     * @param parent where
     * @param prefix how its name begins
     * @return the folder
     * @throws IOException if it cannot be made
     */
    public static TemporaryFolder in(Path parent, String prefix) throws IOException {
        return new TemporaryFolder(Files.createTempDirectory(parent, prefix));
    }

    /** {@return where it is} */
    public Path folder() {
        return folder.directory();
    }

    /** Removes it with all that is in it, as far as that can be done; what cannot be removed stays. */
    @Override
    public void close() {
        folder.delete();
        try {
            Runtime.getRuntime().removeShutdownHook(cleaner);
        } catch (IllegalStateException ending) {
            // The process is being interrupted: the hook runs, and finds nothing left to do.
        }
    }
}
