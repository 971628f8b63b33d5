package headgate.app.output;

import headgate.app.console.Complaint;
import headgate.app.console.RefusedInputException;
import headgate.runtime.scratch.TemporaryFolder;
import headgate.verifier.plot.KeptResults;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Map;
import java.util.stream.Stream;

/**
 * The folder that a replay's results go to. Each finished stand is kept in it at once, so that a run that is stopped goes
 * on where it was; the results themselves are written aside and then moved. A folder with anything else in it is not
 * touched.
 */
public final class ReplayFolder {

    private static final String MARKER = ".headgate-replay";

    private static final String FIRST_LINE = "headgate.replay-folder/1\n";

    private static final String KEPT = "finished";

    private final Path folder;

    private ReplayFolder(Path folder) {
        this.folder = folder;
    }

    /**
     * Looks at a folder: a new one, an empty one, or one that an earlier replay took. Nothing is changed before there is
     * something to keep in it.
     *
     * @param given the folder as the user gave it
     * @return the folder
     * @throws RefusedInputException if it cannot be taken
     */
    public static ReplayFolder at(Path given) {
        try {
            if (Files.exists(given)) {
                if (!Files.isDirectory(given)) {
                    throw refused(given, "is a file, but must be a folder.", "Name another one.");
                }
                if (!isOurs(given)) {
                    refuseForeign(given);
                }
            } else {
                refuseWhereNoneCanBe(given);
            }
            return new ReplayFolder(given);
        } catch (IOException unreadable) {
            throw refused(given, ReportFolder.reason(unreadable), "Name a folder that can be written.");
        }
    }

    /** What is found only after a long replay would be found too late. */
    private static void refuseWhereNoneCanBe(Path given) {
        Path above = given.toAbsolutePath().normalize().getParent();
        while (above != null && !Files.exists(above)) {
            above = above.getParent();
        }
        if (above != null && !(Files.isDirectory(above) && Files.isWritable(above))) {
            throw refused(given, "cannot be made in " + above + ".", "Name a folder that can be written.");
        }
    }

    /** Takes the folder. */
    private void open() throws IOException {
        Files.createDirectories(folder);
        if (!isOurs(folder)) {
            Files.writeString(folder.resolve(MARKER), FIRST_LINE, StandardCharsets.UTF_8);
        }
        Files.createDirectories(folder.resolve(KEPT));
    }

    private static boolean isOurs(Path folder) throws IOException {
        Path marker = folder.resolve(MARKER);
        return Files.isRegularFile(marker)
                && Files.size(marker) == FIRST_LINE.length()
                && Files.readString(marker, StandardCharsets.UTF_8).equals(FIRST_LINE);
    }

    private static void refuseForeign(Path given) throws IOException {
        try (Stream<Path> found = Files.list(given)) {
            found.map(each -> each.getFileName().toString())
                    // A marker that was cut short by a kill is ours, too.
                    .filter(name -> !name.equals(MARKER))
                    .sorted()
                    .findFirst()
                    .ifPresent(name -> {
                        throw refused(
                                given,
                                "holds " + name + ", and no replay was kept there.",
                                "Nothing was changed. Name an empty folder or a new one.");
                    });
        }
    }

    /** {@return where finished stands are kept} */
    public KeptResults kept() {
        return new KeptResults(folder.resolve(KEPT), this::open);
    }

    /**
     * Puts results there, each in the place of its predecessor.
     *
     * @param files content by file name
     * @throws RefusedInputException if they cannot be written; each file is then as it was or new, and never a part of one
     */
    public void put(Map<String, byte[]> files) {
        try {
            open();
            write(files);
        } catch (IOException failed) {
            throw refused(folder, ReportFolder.reason(failed), "Free some space or name another folder.");
        }
    }

    private void write(Map<String, byte[]> files) throws IOException {
        try (TemporaryFolder aside = TemporaryFolder.in(folder, ReportFolder.ASIDE)) {
            for (Map.Entry<String, byte[]> each : files.entrySet()) {
                Path file = aside.folder().resolve(each.getKey());
                Files.write(file, each.getValue(), StandardOpenOption.CREATE_NEW);
                try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
                    channel.force(true);
                }
            }
            for (String name : files.keySet()) {
                Files.move(aside.folder().resolve(name), folder.resolve(name), StandardCopyOption.ATOMIC_MOVE);
            }
        }
    }

    private static RefusedInputException refused(Path where, String what, String advice) {
        return new RefusedInputException(Complaint.about(where.toString(), what, advice));
    }
}
