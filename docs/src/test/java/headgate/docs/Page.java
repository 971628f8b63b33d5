package headgate.docs;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A Markdown page and the commands that it shows.
 *
 * <p>A command stands in a fenced block marked {@code console}, on a line that begins with a dollar sign; a line that ends
 * with a backslash goes on in the next. It must end with code 0, unless the line ends with {@code # exit N}. A block
 * marked {@code console not-run} shows something that cannot run here; {@link CommandsTest} holds the list of those few. A
 * block whose fence names a file, as {@code java Pincer.java}, is that file: the commands find it in their folder.
 */
record Page(Path path, String text) {

    private static final Pattern BLOCK = Pattern.compile("(?m)^```console( not-run)?\\n(.*?)^```$", Pattern.DOTALL);
    private static final Pattern FILE =
            Pattern.compile("(?m)^```[a-z]+ ([A-Za-z0-9.-]+\\.[a-z]+)\\n(.*?)^```$", Pattern.DOTALL);
    private static final Pattern EXIT = Pattern.compile("^(.*?)\\s*# exit ([0-9]+)$");

    /** A command with the exit code that the page promises. */
    record Command(String text, int exit) {}

    /** All pages of the project: those at the top and those under docs, in order of their paths. */
    static List<Page> all() throws IOException {
        Path root = root();
        List<Page> pages = new ArrayList<>();
        for (String top : List.of("README.md", "DEVELOPERS.md")) {
            pages.add(read(root.resolve(top)));
        }
        try (Stream<Path> files = Files.walk(root.resolve("docs"))) {
            for (Path file : files.filter(f -> f.toString().endsWith(".md"))
                    .filter(f -> !f.startsWith(root.resolve("docs/target")))
                    .sorted()
                    .toList()) {
                pages.add(read(file));
            }
        }
        return pages;
    }

    static Path root() {
        Path at = Path.of("").toAbsolutePath();
        while (!Files.isDirectory(at.resolve("sdk-api"))) {
            at = Objects.requireNonNull(at.getParent(), "the tests must run inside the checkout");
        }
        return at;
    }

    private static Page read(Path file) throws IOException {
        return new Page(file, Files.readString(file, StandardCharsets.UTF_8));
    }

    String name() {
        return root().relativize(path).toString().replace('\\', '/');
    }

    List<Command> commands() {
        return commands(false);
    }

    List<Command> commandsNotRun() {
        return commands(true);
    }

    /** The files that the page shows in full: blocks whose fence names a file. */
    Map<String, String> files() {
        Map<String, String> files = new LinkedHashMap<>();
        Matcher block = FILE.matcher(text);
        while (block.find()) {
            files.put(block.group(1), block.group(2));
        }
        return files;
    }

    private List<Command> commands(boolean notRun) {
        List<Command> commands = new ArrayList<>();
        Matcher block = BLOCK.matcher(text);
        while (block.find()) {
            if (notRun == (block.group(1) != null)) {
                block.group(2)
                        .replace("\\\n", " ")
                        .lines()
                        .filter(line -> line.startsWith("$ "))
                        .map(line -> command(line.substring(2).strip()))
                        .forEach(commands::add);
            }
        }
        return commands;
    }

    private static Command command(String line) {
        Matcher exit = EXIT.matcher(line);
        return exit.matches() ? new Command(exit.group(1), Integer.parseInt(exit.group(2))) : new Command(line, 0);
    }

    /** The name that a test report shows. */
    @Override
    public String toString() {
        return name();
    }
}
