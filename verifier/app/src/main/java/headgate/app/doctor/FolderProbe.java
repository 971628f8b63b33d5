package headgate.app.doctor;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Looks whether a folder takes files, by writing one. */
final class FolderProbe {

    private FolderProbe() {}

    static Diagnosis look(String subject, Path folder) {
        try {
            Files.createDirectories(folder);
            Path trial = Files.createTempFile(folder, "doctor", ".tmp");
            try {
                Files.write(trial, new byte[4096]);
            } finally {
                Files.deleteIfExists(trial);
            }
            return Diagnosis.good(subject, folder + " can be written");
        } catch (IOException refused) {
            return Diagnosis.note(subject, folder + " cannot be written", "Make it writable, or free some space.");
        }
    }
}
