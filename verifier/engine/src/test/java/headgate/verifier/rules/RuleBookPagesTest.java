package headgate.verifier.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * The checked-in pages of the rule book are what the rules say of themselves. With the system property
 * {@code headgate.write-rule-pages} set to true they are written instead.
 */
class RuleBookPagesTest {

    private static final Path REFERENCE = Path.of("..", "..", "docs", "reference");

    private static final String WRITE = "mvn -pl verifier/engine -am test -Dtest=RuleBookPagesTest"
            + " -Dsurefire.failIfNoSpecifiedTests=false -Dheadgate.write-rule-pages=true";

    @Test
    void thePagesAreWhatTheRulesSay() throws IOException {
        Map<String, String> pages = RuleBookPages.all();
        if (Boolean.getBoolean("headgate.write-rule-pages")) {
            write(pages);
        }

        assertThat(checkedIn())
                .as("docs/reference/rules.md and docs/reference/rules/; write them anew with: " + WRITE)
                .isEqualTo(pages);
    }

    @Test
    void everyRuleHasAPageThatTheIndexLinksTo() {
        String index = RuleBookPages.all().get("rules.md");

        assertThat(RuleBook.all()).isNotEmpty().allSatisfy(rule -> assertThat(index)
                .contains("](" + RuleBookPages.path(rule.info().id()) + ")"));
    }

    private static void write(Map<String, String> pages) throws IOException {
        for (Path old : files()) {
            Files.delete(old);
        }
        Files.createDirectories(REFERENCE.resolve("rules"));
        for (Map.Entry<String, String> page : pages.entrySet()) {
            Files.write(REFERENCE.resolve(page.getKey()), page.getValue().getBytes(StandardCharsets.UTF_8));
        }
    }

    private static Map<String, String> checkedIn() throws IOException {
        Map<String, String> pages = new TreeMap<>();
        for (Path file : files()) {
            String path = REFERENCE.relativize(file).toString().replace('\\', '/');
            pages.put(path, new String(Files.readAllBytes(file), StandardCharsets.UTF_8));
        }
        return pages;
    }

    private static Set<Path> files() throws IOException {
        Set<Path> files = new TreeSet<>();
        Path index = REFERENCE.resolve("rules.md");
        if (Files.exists(index)) {
            files.add(index);
        }
        Path folder = REFERENCE.resolve("rules");
        if (Files.isDirectory(folder)) {
            try (Stream<Path> list = Files.list(folder)) {
                list.forEach(files::add);
            }
        }
        return files;
    }
}
