package headgate.it.program;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What {@code headgate fit} answers, and what it finds. */
class FitProgramTest {

    private static final String MIXED = "celeriac-60-mixed.json";

    @Test
    void aMixedFittingIsJudgedWithItsGapsAndSpacings(@TempDir Path work) throws Exception {
        Call.Result result = Call.in(work).run("fit", Dist.demo(MIXED).toString(), "--out", "report");

        assertThat(result.exit()).as(result.err()).isZero();
        assertThat(result.out()).contains("Other row spacings", "To change over:");
        assertThat(CheckProgramTest.files(work.resolve("report")).keySet())
                .containsExactly(".headgate-report", "report.html", "report.json", "spacings.json");
        assertThat(work.resolve("report/report.json")).content().contains("\"lanes\" : [ ]", "\"stances\" : [");
        assertThat(work.resolve("report/report.html")).content().contains("The least gap of every two arms");
    }

    @Test
    void aSearchSavesAFittingThatFits(@TempDir Path work) throws Exception {
        Path heads = open(work, "8");
        Files.createDirectory(work.resolve("found"));

        Call.Result result =
                Call.in(work).run("fit", heads.toString(), "--search", "margin", "--save", "found/one.json");
        Call.Result again = Call.in(work).run("fit", "found/one.json");
        Call.Result twice =
                Call.in(work).run("fit", heads.toString(), "--search", "margin", "--save", "found/one.json");

        assertThat(result.exit()).as(result.err()).isZero();
        assertThat(result.out()).startsWith("Found: ").contains(": no other choice has more", "Fits within limits");
        assertThat(work.resolve("found/one.json")).content().contains("\"arm\": \"front-2\", \"head\": \"gripper\"");
        assertThat(again.exit()).as(again.err()).isZero();
        assertThat(result.out()).endsWith(again.out());
        // What somebody may have worked on is not written over.
        assertThat(twice.exit()).isEqualTo(2);
        assertThat(twice.err()).contains("is there already");
    }

    @Test
    void aSearchWithTooFewHeadsEndsWith1(@TempDir Path work) throws Exception {
        Call.Result result =
                Call.in(work).run("fit", open(work, "2").toString(), "--search", "rate", "--save", "found.json");

        assertThat(result.exit()).isEqualTo(1);
        assertThat(result.err()).contains("no choice of these heads serves every lane");
        assertThat(work.resolve("found.json")).doesNotExist();
    }

    @Test
    void aSearchSaysWhatItNeeds(@TempDir Path work) throws Exception {
        assertThat(Call.in(work).run("fit", open(work, "8").toString()).err()).contains("no arm with a head");
        assertThat(Call.in(work).run("fit", "x.json", "--search", "rate").err()).contains("--search needs --save");
        assertThat(Call.in(work)
                        .run("fit", "x.json", "--search", "speed", "--save", "y.json")
                        .err())
                .contains("there is no goal");
    }

    /** The demo's files with no head on any arm yet. */
    private static Path open(Path work, String grippers) throws IOException {
        Path folder = Files.createDirectories(work.resolve("demo"));
        for (String name : new String[] {"carriage.json", "celeriac-60-weeding.json", "gripper.jar", "planter.jar"}) {
            Files.copy(Dist.demo(name), folder.resolve(name));
        }
        return Files.writeString(folder.resolve("heads.json"), """
                {
                  "format": "headgate.fitting/1",
                  "name": "Celeriac: what shall weed it",
                  "carriage": "carriage.json",
                  "cropPlan": "celeriac-60-weeding.json",
                  "heads": [
                    { "id": "gripper", "package": "gripper.jar", "count": COUNT },
                    { "id": "planter", "package": "planter.jar" }
                  ],
                  "arms": []
                }
                """.replace("COUNT", grippers));
    }
}
