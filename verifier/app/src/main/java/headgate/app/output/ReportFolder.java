package headgate.app.output;

import headgate.app.console.Complaint;
import headgate.app.console.RefusedInputException;
import headgate.runtime.scratch.ScratchFolder;
import headgate.runtime.scratch.TemporaryFolder;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The folder that a report goes to. A report is written aside and then moved, so a full disk or an interrupt leaves the
 * folder as it was. Only a folder that is missing, empty or holds nothing but an earlier report of ours is taken.
 */
public final class ReportFolder {

    /** How the name of a folder begins in which files are written before they are moved. */
    static final String ASIDE = ".headgate-new-";

    private final Path folder;

    private ReportFolder(Path folder) {
        this.folder = folder;
    }

    /**
     * Looks at a folder before the work begins, so that a long check does not end without a place for its report.
     *
     * @param given the folder as the user gave it
     * @return the folder
     * @throws RefusedInputException if it cannot take a report
     */
    public static ReportFolder at(Path given) {
        try {
            Path folder = Files.isDirectory(given)
                    ? given.toRealPath()
                    : given.toAbsolutePath().normalize();
            if (Files.exists(folder) && !Files.isDirectory(folder)) {
                throw refused(given, "is a file, but must be a folder.", "Name another one.");
            }
            if (Files.isDirectory(folder)) {
                refuseForeignFiles(folder);
            }
            return new ReportFolder(folder);
        } catch (IOException unreadable) {
            throw refused(given, reason(unreadable), "Nothing was changed. Name a folder that can be written.");
        }
    }

    /**
     * Puts a report there, in the place of an earlier one.
     *
     * @param files content by file name
     * @throws RefusedInputException if it cannot be written; the folder is then as it was
     */
    public void put(Map<String, byte[]> files) {
        SortedMap<String, byte[]> all = new TreeMap<>(files);
        all.put(Marker.NAME, Marker.content(files.keySet()));
        try {
            Path parent = Files.createDirectories(parent());
            if (Files.exists(folder)) {
                refuseForeignFiles(folder);
                replace(parent, all);
            } else {
                putNew(parent, all);
            }
        } catch (IOException failed) {
            throw refused(folder, reason(failed), "Nothing there was changed. Free some space or name another folder.");
        }
    }

    private static void refuseForeignFiles(Path folder) throws IOException {
        Optional<String> foreign = Marker.foreignFile(folder);
        if (foreign.isPresent()) {
            throw refused(
                    folder,
                    "holds " + foreign.get() + ", which is not part of a report.",
                    "Nothing was changed. Name an empty folder or a new one.");
        }
    }

    private Path parent() {
        Path parent = folder.getParent();
        return parent == null ? folder : parent;
    }

    private void replace(Path parent, SortedMap<String, byte[]> all) throws IOException {
        try {
            swap(parent, all);
        } catch (IOException cannotBeMoved) {
            replaceFiles(all);
        }
    }

    /** The whole folder appears at once. */
    private void putNew(Path parent, SortedMap<String, byte[]> all) throws IOException {
        try (TemporaryFolder aside = TemporaryFolder.in(parent, ASIDE)) {
            Files.move(written(aside, all), folder, StandardCopyOption.ATOMIC_MOVE);
        }
    }

    /** The old folder steps aside for the new one, and comes back if the new one cannot take its place. */
    private void swap(Path parent, SortedMap<String, byte[]> all) throws IOException {
        try (TemporaryFolder aside = TemporaryFolder.in(parent, ASIDE)) {
            Path ready = written(aside, all);
            // Beside the folder that an interrupt clears away, so that the old report outlives one.
            Path old = parent.resolve(aside.folder().getFileName().toString().replace("-new-", "-old-"));
            Files.move(folder, old, StandardCopyOption.ATOMIC_MOVE);
            try {
                Files.move(ready, folder, StandardCopyOption.ATOMIC_MOVE);
            } catch (IOException failed) {
                Files.move(old, folder, StandardCopyOption.ATOMIC_MOVE);
                throw failed;
            }
            new ScratchFolder(old).delete();
        }
    }

    /**
     * A mounted folder cannot be moved, and its parent may be closed to us. Then the report is written inside it, in full,
     * and each file takes the place of its predecessor.
     */
    private void replaceFiles(SortedMap<String, byte[]> all) throws IOException {
        Set<String> before = Marker.ours(folder);
        try (TemporaryFolder aside = TemporaryFolder.in(folder, ASIDE)) {
            Path ready = written(aside, all);
            for (String name : all.keySet()) {
                Files.move(ready.resolve(name), folder.resolve(name), StandardCopyOption.ATOMIC_MOVE);
            }
        }
        for (String old : before) {
            if (!all.containsKey(old)) {
                Files.deleteIfExists(folder.resolve(old));
            }
        }
    }

    /** Forces the bytes to the disk before anything is moved: a full disk may say so only then. */
    private static Path written(TemporaryFolder aside, SortedMap<String, byte[]> all) throws IOException {
        Path ready = Files.createDirectory(aside.folder().resolve("ready"));
        for (Map.Entry<String, byte[]> each : all.entrySet()) {
            Path file = ready.resolve(each.getKey());
            Files.write(file, each.getValue(), StandardOpenOption.CREATE_NEW);
            try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
                channel.force(true);
            }
        }
        return ready;
    }

    private static RefusedInputException refused(Path where, String what, String advice) {
        return new RefusedInputException(Complaint.about(where.toString(), what, advice));
    }

    /** The system's own words, such as "No space left on device", without the class of the exception. */
    static String reason(IOException failed) {
        String words = failed instanceof FileSystemException file ? file.getReason() : failed.getMessage();
        return "cannot be written" + (words == null || words.isBlank() ? "." : " (" + words + ").");
    }
}
