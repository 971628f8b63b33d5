package headgate.it.program;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.it.Checkout;
import headgate.runtime.cropplan.CropPlanReader;
import headgate.runtime.stand.Plant;
import headgate.runtime.stand.StandWriter;
import headgate.verifier.stand.PlannedStand;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What {@code headgate replay} answers, keeps and writes, and how a check counts a stand. */
class ReplayProgramTest {

    private static final String STAND = "lettuce-45-stand.json";
    private static final String PLAN = "lettuce-45-weeding.json";

    /** Metres of travel of Lowfield's stand: short enough to be read on its page. */
    private static final double LENGTH = 1.5;

    private static String[] replay(String... more) {
        List<String> words = new ArrayList<>(List.of(
                "replay",
                Dist.demo("gripper.jar").toString(),
                "--carriage",
                Dist.demo("carriage.json").toString(),
                "--crop",
                Dist.demo(PLAN).toString()));
        words.addAll(List.of(more));
        return words.toArray(String[]::new);
    }

    @Test
    void lowfieldsStandIsMadeUpFromSeed1() throws Exception {
        Path lowfield = Checkout.folder().resolve("sample-heads/lowfield/src/main/resources/lowfield");
        StringWriter made = new StringWriter();
        try (StandWriter writer = new StandWriter(made, StandWriter.Form.GEOJSON)) {
            for (Plant plant :
                    PlannedStand.of(CropPlanReader.read(lowfield.resolve(PLAN)).value(), LENGTH, 1)) {
                writer.write(plant);
            }
        }
        if (Boolean.getBoolean("headgate.write-stand")) {
            Files.writeString(lowfield.resolve(STAND), made.toString());
        }

        assertThat(lowfield.resolve(STAND)).hasContent(made.toString());
    }

    @Test
    void aRecordedStandIsReplayedAndItsResultsAreKept(@TempDir Path work) throws Exception {
        String stand = Dist.demo(STAND).toString();
        Call.Result first = Call.in(work).run(replay("--stand", stand, "--out", "one"));
        Call.Result again = Call.in(work).run(replay("--stand", stand, "--out", "one"));
        Call.Result threads = Call.in(work).run(replay("--stand", stand, "--out", "two", "--threads", "2"));

        assertThat(first.exit()).as(first.err()).isEqualTo(1);
        assertThat(first.out()).contains("1 recorded stand", "missed most often because");
        assertThat(first.err()).contains("(" + STAND + "): done");
        assertThat(again.err()).contains("(" + STAND + "): kept from an earlier run");
        assertThat(again.out()).isEqualTo(first.out());
        for (String file : List.of("replay.csv", "misses.csv", "replay.json", "replay.html")) {
            assertThat(work.resolve("two").resolve(file))
                    .hasSameBinaryContentAs(work.resolve("one").resolve(file));
        }
        assertThat(threads.exit()).isEqualTo(first.exit());
    }

    @Test
    void aCheckCountsAStand(@TempDir Path work) throws Exception {
        List<String> words =
                new ArrayList<>(List.of(replay("--stand", Dist.demo(STAND).toString(), "--json")));
        words.set(0, "check");

        Call.Result result = Call.in(work).run(words.toArray(String[]::new));

        assertThat(result.out()).contains("\"throughput.coverage\"", "plants");
        assertThat(result.exit()).isEqualTo(1);
    }

    @Test
    void whatIsNoStandIsToldWithItsPlace(@TempDir Path work) throws Exception {
        Files.writeString(work.resolve("bad.csv"), "# headgate.stand/1\nx [m],y [mm],class,stem [mm]\n1,far,crop,\n");

        Call.Result result = Call.in(work).run(replay("--stand", "bad.csv", "--out", "report"));
        Call.Result none = Call.in(work).run(replay("--stand", "nowhere.csv"));

        assertThat(result.exit()).isEqualTo(2);
        assertThat(result.err()).contains("bad.csv:3:3");
        assertThat(work.resolve("report/replay.json")).doesNotExist();
        assertThat(none.exit()).isEqualTo(2);
        assertThat(none.err()).contains("nowhere.csv");
    }
}
