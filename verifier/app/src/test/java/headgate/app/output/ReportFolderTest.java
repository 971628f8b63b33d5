package headgate.app.output;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import headgate.app.console.RefusedInputException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReportFolderTest {

    private static final Map<String, byte[]> FIRST = Map.of("report.json", bytes("1"), "report.html", bytes("<1>"));
    private static final Map<String, byte[]> SECOND = Map.of("report.json", bytes("2"));

    @Test
    void aMissingFolderIsMadeWithItsParents(@TempDir Path home) throws IOException {
        Path folder = home.resolve("a/b/out");
        ReportFolder.at(folder).put(FIRST);
        assertThat(names(folder)).containsExactly(Marker.NAME, "report.html", "report.json");
        assertThat(names(home.resolve("a/b"))).containsExactly("out");
    }

    @Test
    void anEmptyFolderIsTaken(@TempDir Path home) throws IOException {
        Path folder = Files.createDirectory(home.resolve("out"));
        ReportFolder.at(folder).put(FIRST);
        assertThat(folder.resolve("report.json")).hasContent("1");
    }

    @Test
    void anEarlierReportIsReplacedWhole(@TempDir Path home) throws IOException {
        Path folder = home.resolve("out");
        ReportFolder.at(folder).put(FIRST);
        ReportFolder.at(folder).put(SECOND);
        assertThat(names(folder)).containsExactly(Marker.NAME, "report.json");
        assertThat(folder.resolve("report.json")).hasContent("2");
        assertThat(names(home)).containsExactly("out");
    }

    @Test
    void aFileOfSomebodyElseIsNeverLost(@TempDir Path home) throws IOException {
        Path folder = home.resolve("out");
        ReportFolder.at(folder).put(FIRST);
        Files.writeString(folder.resolve("notes.txt"), "mine");
        assertThatThrownBy(() -> ReportFolder.at(folder))
                .isInstanceOf(RefusedInputException.class)
                .hasMessageContaining("notes.txt")
                .hasMessageContaining("Nothing was changed");
        assertThat(names(folder)).containsExactly(Marker.NAME, "notes.txt", "report.html", "report.json");
    }

    @Test
    void aFileOfSomebodyElseThatCameLaterIsNeverLost(@TempDir Path home) throws IOException {
        Path folder = home.resolve("out");
        ReportFolder.at(folder).put(FIRST);
        ReportFolder checked = ReportFolder.at(folder);
        Files.writeString(folder.resolve("notes.txt"), "mine");
        assertThatThrownBy(() -> checked.put(SECOND)).hasMessageContaining("notes.txt");
        assertThat(folder.resolve("report.json")).hasContent("1");
    }

    @Test
    void aMarkerOfAnotherFormIsNotOurs(@TempDir Path home) throws IOException {
        Path folder = Files.createDirectory(home.resolve("out"));
        Files.writeString(folder.resolve(Marker.NAME), "something else\nnotes.txt\n");
        assertThatThrownBy(() -> ReportFolder.at(folder)).hasMessageContaining(Marker.NAME);
    }

    @Test
    void aFileIsNoFolder(@TempDir Path home) throws IOException {
        Path file = Files.writeString(home.resolve("out"), "mine");
        assertThatThrownBy(() -> ReportFolder.at(file)).hasMessageContaining("must be a folder");
        assertThatThrownBy(() -> ReportFolder.at(file.resolve("below")).put(FIRST))
                .isInstanceOf(RefusedInputException.class);
        assertThat(file).hasContent("mine");
    }

    @Test
    void whatCannotBeWrittenLeavesTheFolderAsItWas(@TempDir Path home) throws IOException {
        Path folder = home.resolve("out");
        ReportFolder.at(folder).put(FIRST);
        // A name that no file system takes makes the write fail half way, after report.json of the same report.
        Map<String, byte[]> broken = Map.of("report.json", bytes("2"), "x".repeat(300), bytes("3"));
        assertThatThrownBy(() -> ReportFolder.at(folder).put(broken)).isInstanceOf(RefusedInputException.class);
        assertThat(folder.resolve("report.json")).hasContent("1");
        assertThat(names(folder)).containsExactly(Marker.NAME, "report.html", "report.json");
        assertThat(names(home)).containsExactly("out");
    }

    @Test
    void aLinkToAFolderStaysALink(@TempDir Path home) throws IOException {
        Path real = Files.createDirectory(home.resolve("real"));
        Path link = Files.createSymbolicLink(home.resolve("link"), real);
        ReportFolder.at(link).put(FIRST);
        assertThat(link).isSymbolicLink();
        assertThat(real.resolve("report.json")).hasContent("1");
    }

    @Test
    void samplesThatTheUserChangedStay(@TempDir Path home) throws IOException {
        Path from = Files.createDirectory(home.resolve("demo"));
        Files.writeString(from.resolve("a.json"), "1");
        Files.writeString(from.resolve("b.json"), "1");
        Path to = Files.createDirectory(home.resolve("files"));
        Files.writeString(to.resolve("a.json"), "changed");
        SampleFiles.copyMissing(from, to);
        assertThat(to.resolve("a.json")).hasContent("changed");
        assertThat(to.resolve("b.json")).hasContent("1");
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.map(each -> each.getFileName().toString()).sorted().toList();
        }
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
