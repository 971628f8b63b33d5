package headgate.it.program;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import headgate.it.Checkout;
import headgate.runtime.cropplan.CropPlanReader;
import headgate.runtime.stand.Plant;
import headgate.runtime.stand.StandWriter;
import headgate.verifier.stand.PlannedStand;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.HexFormat;
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

        assertThat(result.out()).contains("\"throughput.coverage\"", "plants", sha256(Dist.demo(STAND)));
        assertThat(result.exit()).isEqualTo(1);
    }

    /** One search: best speed, density, remedies; and the published schema holds what the program writes. */
    @Test
    void theBestSpeedAndTheDensityThatCanBeBorneAreLookedFor(@TempDir Path work) throws Exception {
        String planter = Dist.demo("planter.jar").toString();
        String carriage = Dist.demo("carriage.json").toString();
        Call.Result set = Call.in(work)
                .run(
                        "replay",
                        planter,
                        "--carriage",
                        carriage,
                        "--crop",
                        Dist.demo("lettuce-45-planting.json").toString(),
                        "--seed",
                        "1-3",
                        "--length",
                        "20 m");
        Call.Result pulled = Call.in(work).run(replay("--seed", "1-2", "--length", "10 m", "--json"));
        Call.Result plain = Call.in(work).run(replay("--seed", "1-2", "--length", "10 m", "--speeds-only"));

        assertThat(set.exit()).as(set.out() + set.err()).isZero();
        assertThat(set.out()).contains("Best speed: ").doesNotContain("can be borne");
        assertThat(pulled.err()).contains("looking for the best speed: done", "looking for the density");
        JsonNode tree = new ObjectMapper().readTree(pulled.out());
        assertThat(tree.at("/densityBorne/densities").size()).isGreaterThanOrEqualTo(8);
        assertThat(tree.at("/groups/0/speeds").size()).isGreaterThan(5);
        Schema schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(Files.readString(Dist.folder().resolve("schemas/replay.schema.json")));
        assertThat(schema.validate(tree)).isEmpty();
        assertThat(plain.err()).doesNotContain("looking for");
        assertThat(plain.out()).doesNotContain("can be borne");
    }

    private static String sha256(Path file) throws Exception {
        return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(file)));
    }

    /** What is wrong with any stand of a folder is told before the first is replayed, and nothing is left behind. */
    @Test
    void badStandsOfAFolderAreToldAllAtOnce(@TempDir Path work) throws Exception {
        Path folder = Files.createDirectory(work.resolve("stands"));
        Files.copy(Dist.demo(STAND), folder.resolve("a.json"));
        Files.writeString(folder.resolve("b.csv"), "# headgate.stand/1\nx [m],y [mm],class\n1,far,crop\n");
        Files.writeString(folder.resolve("c.csv"), "# headgate.stand/1\nx [m],y [m],class\n1,2,crop\n3,4,tree house\n");

        Call.Result result = Call.in(work).run(replay("--stand", "stands", "--out", "report"));

        assertThat(result.exit()).isEqualTo(2);
        assertThat(result.err()).contains("b.csv:3:3", "c.csv:4:").doesNotContain("done");
        assertThat(work.resolve("report")).doesNotExist();
    }

    /**
     * A replay that is killed in the middle goes on where it was, and its results are those of one that was not. The kill
     * is the system's own: nothing can be tidied up on the way.
     */
    @Test
    void aReplayThatIsKilledGoesOnAndEndsWithTheSameBytes(@TempDir Path work) throws Exception {
        Path folder = Files.createDirectory(work.resolve("stands"));
        for (int i = 0; i < 6; i++) {
            Path stand = folder.resolve("stand-" + i + ".csv");
            try (StandWriter writer = new StandWriter(Files.newBufferedWriter(stand), StandWriter.Form.CSV)) {
                for (Plant plant :
                        PlannedStand.of(CropPlanReader.read(Dist.demo(PLAN)).value(), 40, 10 + i)) {
                    writer.write(plant);
                }
            }
        }
        List<String> words = List.of(replay("--stand", "stands", "--out", "killed"));
        Path said = work.resolve("said");
        Process process = Call.in(work).start(work.resolve("out"), said, words);
        while (process.isAlive() && !Files.readString(said).contains("stand 2 of 6 (stand-1.csv): done")) {
            Thread.sleep(5);
        }
        process.destroyForcibly().waitFor();
        assertThat(Files.readString(said)).doesNotContain("stand 6 of 6");
        assertThat(work.resolve("killed/replay.json")).doesNotExist();

        Call.Result rest = Call.in(work).run(words.toArray(String[]::new));
        Call.Result whole = Call.in(work).run(replay("--stand", "stands", "--out", "whole"));

        assertThat(rest.err()).contains("(stand-0.csv): kept", "(stand-1.csv): kept", "(stand-5.csv): done");
        assertThat(rest.exit()).isEqualTo(whole.exit());
        for (String file : List.of("replay.csv", "misses.csv", "replay.json", "replay.html")) {
            assertThat(work.resolve("killed").resolve(file))
                    .hasSameBinaryContentAs(work.resolve("whole").resolve(file));
        }
    }

    @Test
    void whatIsNoStandIsToldWithItsPlace(@TempDir Path work) throws Exception {
        Files.writeString(work.resolve("bad.csv"), "# headgate.stand/1\nx [m],y [mm],class,stem [mm]\n1,far,crop,\n");

        Call.Result result = Call.in(work).run(replay("--stand", "bad.csv", "--out", "report"));
        Call.Result none = Call.in(work).run(replay("--stand", "nowhere.csv"));

        assertThat(result.exit()).isEqualTo(2);
        assertThat(result.err()).contains("bad.csv:3:3");
        assertThat(work.resolve("report")).doesNotExist();
        assertThat(none.exit()).isEqualTo(2);
        assertThat(none.err()).contains("nowhere.csv");
    }
}
