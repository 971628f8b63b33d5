package headgate.app.doctor;

import java.nio.file.Files;
import java.nio.file.Path;

/** Looks at a class-data archive: with one, a process starts in half the time. */
final class ArchiveProbe {

    private ArchiveProbe() {}

    /**
     * Looks.
     *
     * @param subject what the archive speeds up
     * @param file the file that the launcher named; empty if it named none
     */
    static Diagnosis look(String subject, String file) {
        if (file.isEmpty()) {
            return Diagnosis.note(subject, "no class-data archive", "The launcher 'headgate' makes one; start by it.");
        }
        return Files.isReadable(Path.of(file))
                ? Diagnosis.good(subject, "class-data archive " + file)
                : Diagnosis.note(
                        subject,
                        "class-data archive not made",
                        "It is made at the next start if " + "the cache can be written.");
    }
}
