package headgate.app.output;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The file that makes a folder ours: it lists the files that we put there. What it does not list is somebody else's, and
 * a folder that holds such a file is never replaced.
 */
final class Marker {

    /** Its name; hidden, since nobody reads it. */
    static final String NAME = ".headgate-report";

    private static final String FIRST_LINE = "headgate.report-folder/1";

    private Marker() {}

    /** The marker's content for a folder with some files. */
    static byte[] content(Collection<String> files) {
        return Stream.concat(Stream.of(FIRST_LINE), files.stream().sorted())
                .map(line -> line + "\n")
                .collect(Collectors.joining())
                .getBytes(StandardCharsets.UTF_8);
    }

    /**
     * Looks for a file that is not ours.
     *
     * @param folder an existing folder
     * @return the name of the first such file, or empty if all are ours or there is none
     * @throws IOException if the folder cannot be read
     */
    static Optional<String> foreignFile(Path folder) throws IOException {
        Set<String> ours = ours(folder);
        try (Stream<Path> found = Files.list(folder)) {
            return found.map(each -> each.getFileName().toString())
                    .filter(name -> !ours.contains(name))
                    .sorted()
                    .findFirst();
        }
    }

    /**
     * Lists what we put into a folder.
     *
     * @param folder an existing folder
     * @return the names, the marker's own too; empty if the folder has no marker of ours
     * @throws IOException if the marker cannot be read
     */
    static Set<String> ours(Path folder) throws IOException {
        Path marker = folder.resolve(NAME);
        if (!Files.isRegularFile(marker)) {
            return Set.of();
        }
        List<String> lines = Files.readAllLines(marker, StandardCharsets.UTF_8);
        if (lines.isEmpty() || !lines.get(0).equals(FIRST_LINE)) {
            return Set.of();
        }
        Set<String> names = new TreeSet<>(lines.subList(1, lines.size()));
        names.add(NAME);
        return names;
    }
}
