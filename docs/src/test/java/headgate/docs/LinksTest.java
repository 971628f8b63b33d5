package headgate.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class LinksTest {

    private static final Pattern LINK = Pattern.compile("\\]\\(([^)\\s]+)\\)");
    private static final Pattern HEADING = Pattern.compile("(?m)^#+ (.*)$");

    static List<Page> pages() throws IOException {
        return Page.all();
    }

    @ParameterizedTest
    @MethodSource("pages")
    void everyLinkLeadsSomewhere(Page page) throws IOException {
        Matcher link = LINK.matcher(page.text().replaceAll("(?ms)^```.*?^```$", ""));
        while (link.find()) {
            String target = link.group(1);
            if (target.startsWith("https://")) {
                continue;
            }
            String[] parts = target.split("#", 2);
            Path file = parts[0].isEmpty() ? page.path() : page.path().resolveSibling(parts[0]);
            assertThat(file).as("link %s", target).exists();
            if (parts.length == 2) {
                assertThat(anchors(file)).as("anchors of %s", target).contains(parts[1]);
            }
        }
    }

    @Test
    void everyPageUnderDocsCanBeReachedFromTheReadme() throws IOException {
        List<Page> pages = Page.all();
        Set<Path> reached = new HashSet<>();
        ArrayDeque<Path> open = new ArrayDeque<>(List.of(Page.root().resolve("README.md")));
        while (!open.isEmpty()) {
            Path at = open.remove().normalize();
            if (at.toString().endsWith(".md") && Files.isRegularFile(at) && reached.add(at)) {
                Matcher link = LINK.matcher(Files.readString(at, StandardCharsets.UTF_8));
                while (link.find()) {
                    if (!link.group(1).startsWith("https://")) {
                        open.add(at.resolveSibling(link.group(1).split("#", 2)[0]));
                    }
                }
            }
        }
        assertThat(pages).extracting(p -> p.path().normalize()).allMatch(reached::contains);
    }

    private static List<String> anchors(Path file) throws IOException {
        return HEADING.matcher(Files.readString(file, StandardCharsets.UTF_8))
                .results()
                .map(m -> m.group(1)
                        .toLowerCase(Locale.ROOT)
                        .replaceAll("[^a-z0-9 _-]", "")
                        .replace(' ', '-'))
                .toList();
    }
}
