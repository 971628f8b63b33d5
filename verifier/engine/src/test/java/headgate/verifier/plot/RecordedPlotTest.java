package headgate.verifier.plot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import headgate.runtime.origin.InvalidFileException;
import headgate.runtime.stand.Plant;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RecordedPlotTest {

    private static final String HEAD = "# headgate.stand/1\nx [m],y [m],class\n";

    @TempDir
    private Path folder = Path.of("");

    private Path scratch = Path.of("");

    @BeforeEach
    void makeScratch() throws IOException {
        scratch = Files.createDirectory(folder.resolve("scratch"));
    }

    private Path stand(String name, String rows) throws IOException {
        return Files.writeString(folder.resolve(name), HEAD + rows);
    }

    private static List<Long> alongTravel(Plot plot) throws IOException {
        List<Long> places = new ArrayList<>();
        try (Plot.Reading reading = plot.read()) {
            for (Plant plant = reading.plants().next();
                    plant != null;
                    plant = reading.plants().next()) {
                places.add(plant.position().x());
            }
        }
        return places;
    }

    private static void letGo(Plot plot) throws IOException {
        plot.close();
    }

    private List<Path> left() throws IOException {
        try (Stream<Path> files = Files.list(scratch)) {
            return files.toList();
        }
    }

    @Test
    void givesThePlantsInTheOrderOfTravelAsOftenAsAsked() throws Exception {
        try (RecordedPlot plot = RecordedPlot.of(stand("a.csv", "3,0,crop\n1,0,grass\n2,0,grass\n"), scratch)) {
            assertThat(plot.name()).isEqualTo("a.csv");
            assertThat(plot.madeUp()).isFalse();
            assertThat(plot.density()).isEmpty();
            assertThat(plot.sha256()).isEqualTo(plot.summary().sha256()).hasSize(64);
            assertThat(left()).isEmpty();
            assertThat(alongTravel(plot)).containsExactly(1_000_000L, 2_000_000L, 3_000_000L);
            assertThat(alongTravel(plot)).containsExactly(1_000_000L, 2_000_000L, 3_000_000L);
            letGo(plot);
            assertThat(left()).isEmpty();
            assertThat(alongTravel(plot)).hasSize(3);
        }
        assertThat(left()).isEmpty();
    }

    @Test
    void refusesWhatIsNoStandBeforeAnythingIsWritten() throws Exception {
        Path bad = stand("bad.csv", "1,0,grass\nfar,0,grass\n");
        assertThatThrownBy(() -> RecordedPlot.of(bad, scratch)).isInstanceOf(InvalidFileException.class);
        assertThat(left()).isEmpty();
    }

    @Test
    void noticesThatTheFileWasChanged() throws Exception {
        Path file = stand("a.csv", "1,0,grass\n");
        RecordedPlot plot = RecordedPlot.of(file, scratch);
        stand("a.csv", "1,0,grass\n2,0,grass\n");
        assertThatThrownBy(plot::read).isInstanceOf(IOException.class).hasMessageContaining("a.csv was changed");
        stand("a.csv", "1,0\n");
        assertThatThrownBy(plot::read).isInstanceOf(IOException.class).hasMessageContaining("a.csv was changed");
        assertThat(left()).isEmpty();
    }
}
