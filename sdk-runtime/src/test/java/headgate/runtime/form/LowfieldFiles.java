package headgate.runtime.form;

import headgate.runtime.origin.InvalidFileException;
import headgate.runtime.text.SourceFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Lowfield's files, which are the documented examples, read from the sources of their module. */
public final class LowfieldFiles {

    private static final Path FOLDER =
            Path.of("..", "sample-heads", "lowfield", "src", "main", "resources", "lowfield");

    private LowfieldFiles() {}

    /** The names of all crop plans. */
    public static List<String> cropPlans() {
        return List.of(
                "celeriac-60-planting.json",
                "celeriac-60-weeding.json",
                "leek-75-planting.json",
                "leek-75-weeding.json",
                "lettuce-45-planting.json",
                "lettuce-45-weeding.json");
    }

    /** The path of a file. */
    public static Path path(String name) {
        return FOLDER.resolve(name);
    }

    /** The text of a file. */
    public static String text(String name) {
        try {
            return Files.readString(path(name));
        } catch (IOException missing) {
            throw new UncheckedIOException(missing);
        }
    }

    /** Makes a source file of a text. */
    public static SourceFile source(String name, String text) throws InvalidFileException {
        return SourceFile.of(name, text.getBytes(StandardCharsets.UTF_8));
    }
}
