package headgate.app.output;

import headgate.app.console.Complaint;
import headgate.app.console.RefusedInputException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Gives the user the sample files to play with. What is there already stays as it is: it may have been changed. */
public final class SampleFiles {

    private SampleFiles() {}

    /**
     * Copies the files that are missing.
     *
     * @param from the folder with the samples
     * @param to where the user gets them
     * @throws RefusedInputException if they cannot be written
     */
    public static void copyMissing(Path from, Path to) {
        try (Stream<Path> found = Files.list(from)) {
            Files.createDirectories(to);
            List<Path> all = found.filter(Files::isRegularFile).sorted().toList();
            for (Path each : all) {
                Path target = to.resolve(each.getFileName().toString());
                if (!Files.exists(target)) {
                    Files.copy(each, target);
                }
            }
        } catch (IOException refused) {
            throw new RefusedInputException(Complaint.about(
                    to.toString(), "the sample files cannot be written there.", "Name another folder by --out."));
        }
    }
}
