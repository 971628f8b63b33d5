package headgate.app.output;

import headgate.app.console.Complaint;
import headgate.app.console.RefusedInputException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** A file that the user wants written. One that is there already is somebody's work, and stays as it is. */
public final class NewFile {

    private final Path path;

    private NewFile(Path path) {
        this.path = path;
    }

    /**
     * Looks at the place before the work begins.
     *
     * @param given the file as the user gave it
     * @return the file
     * @throws RefusedInputException if there is something already, or no folder to write it to
     */
    public static NewFile at(Path given) {
        if (Files.exists(given)) {
            throw refused(given, "is there already.", "Name another file, or remove this one.");
        }
        Path path = given.toAbsolutePath().normalize();
        Path folder = path.getParent();
        if (folder == null || !Files.isDirectory(folder)) {
            throw refused(given, "lies in a folder that is not there.", "Make the folder, or name another file.");
        }
        return new NewFile(path);
    }

    /** {@return where it is, absolute} */
    public Path path() {
        return path;
    }

    /**
     * Writes it.
     *
     * @param text its text
     * @throws RefusedInputException if it cannot be written
     */
    public void write(String text) {
        try {
            Files.write(path, text.getBytes(StandardCharsets.UTF_8), StandardOpenOption.CREATE_NEW);
        } catch (IOException failed) {
            throw refused(path, "cannot be written.", "Free some space or name a folder that can be written.");
        }
    }

    private static RefusedInputException refused(Path file, String reason, String advice) {
        return new RefusedInputException(Complaint.about(file.toString(), reason, advice));
    }
}
