package headgate.runtime.scratch;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * A folder of a head process's own, gone when the process is.
 *
 * @param directory where it is, or will be
 */
public record ScratchFolder(Path directory) {

    /** Deletes the folder and whatever a head may have put there, following no link. What cannot be deleted stays. */
    public void delete() {
        delete(directory);
    }

    private static void delete(Path path) {
        if (Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS)) {
            // A head may have taken our own right to look into it.
            path.toFile().setWritable(true);
            path.toFile().setReadable(true);
            path.toFile().setExecutable(true);
            inside(path).forEach(ScratchFolder::delete);
        }
        try {
            Files.deleteIfExists(path);
        } catch (IOException e) {
            // It stays in the system's own place for temporary files.
        }
    }

    /** Closed before anything below is opened: a head may have nested more folders than a process may hold open. */
    private static List<Path> inside(Path folder) {
        List<Path> all = new ArrayList<>();
        try (DirectoryStream<Path> inside = Files.newDirectoryStream(folder)) {
            inside.forEach(all::add);
        } catch (IOException | DirectoryIteratorException e) {
            // What was not seen is not deleted; the folder then stays, too.
        }
        return all;
    }
}
