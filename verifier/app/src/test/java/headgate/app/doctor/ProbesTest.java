package headgate.app.doctor;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.app.doctor.Diagnosis.State;
import headgate.runtime.process.Wall;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ProbesTest {

    @ParameterizedTest
    @CsvSource({"11.0.2,BAD", "16,BAD", "17,GOOD", "17.0.15,GOOD", "25,GOOD"})
    void javaFrom17On(String version, State expected) {
        Properties system = new Properties();
        system.setProperty("java.version", version);
        assertThat(JavaProbe.look(system).state()).isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource({"256,GOOD", "255,NOTE"})
    void memoryFrom256MiBOn(long mebibytes, State expected) {
        assertThat(MemoryProbe.look(mebibytes << 20).state()).isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource({"UTF-8,GOOD", "utf8,GOOD", "ANSI_X3.4-1968,NOTE"})
    void fileNamesInUtf8(String encoding, State expected) {
        Properties system = new Properties();
        system.setProperty("sun.jnu.encoding", encoding);
        assertThat(TextProbe.look(system).state()).isEqualTo(expected);
    }

    @Test
    void aFolderIsTriedAndLeftClean(@TempDir Path folder) throws IOException {
        assertThat(FolderProbe.look("cache", folder.resolve("new")).state()).isEqualTo(State.GOOD);
        assertThat(folder.resolve("new")).isEmptyDirectory();
        Path file = Files.writeString(folder.resolve("file"), "");
        assertThat(FolderProbe.look("cache", file.resolve("below")).state()).isEqualTo(State.NOTE);
    }

    @ParameterizedTest
    @CsvSource({"/var/c,/var/c/headgate", "relative,/home/u/.cache/headgate", "'',/home/u/.cache/headgate"})
    void theCacheFollowsTheVariable(String variable, Path expected) {
        Properties system = new Properties();
        system.setProperty("user.home", "/home/u");
        assertThat(CacheFolder.of(Map.of("XDG_CACHE_HOME", variable), system)).isEqualTo(expected);
    }

    @Test
    void aWallIsGoodOnlyIfItsTrialEndsWell() {
        assertThat(new WallProbe(Wall.BWRAP, wall -> Optional.empty()).look().state())
                .isEqualTo(State.GOOD);
        Diagnosis refused = new WallProbe(Wall.BWRAP, wall -> Optional.of("not allowed")).look();
        assertThat(refused.state()).isEqualTo(State.NOTE);
        assertThat(refused.seen()).isEqualTo("does not work: not allowed");
    }

    @Test
    void boundsBySystemAreBetterThanNone() {
        assertThat(BoundsProbe.look(true).state()).isEqualTo(State.GOOD);
        assertThat(BoundsProbe.look(false).state()).isEqualTo(State.NOTE);
    }

    @Test
    void anArchiveIsLookedUp(@TempDir Path folder) throws IOException {
        Path archive = Files.writeString(folder.resolve("a.jsa"), "x");
        assertThat(ArchiveProbe.look("start", archive.toString()).state()).isEqualTo(State.GOOD);
        assertThat(ArchiveProbe.look("start", folder.resolve("b.jsa").toString())
                        .state())
                .isEqualTo(State.NOTE);
        assertThat(ArchiveProbe.look("start", "").state()).isEqualTo(State.NOTE);
    }
}
