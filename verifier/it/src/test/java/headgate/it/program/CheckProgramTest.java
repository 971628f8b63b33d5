package headgate.it.program;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What {@code headgate check} answers for good and bad heads. */
class CheckProgramTest {

    private static final String WEEDING = "lettuce-45-weeding.json";
    private static final String PLANTING = "lettuce-45-planting.json";

    @Test
    void aFittingHeadEndsWith0AndTheSameBytesTwice(@TempDir Path work) throws Exception {
        Call.Result first = Call.in(work).check("gripper.jar", WEEDING, "--trace", "--out", "one");
        Call.Result second = Call.in(work).check("gripper.jar", WEEDING, "--trace", "--out", "two");
        assertThat(first.exit()).as(first.err()).isZero();
        assertThat(second.out()).isEqualTo(first.out().replace(" one/", " two/"));
        assertThat(files(work.resolve("two"))).isEqualTo(files(work.resolve("one")));
        assertThat(files(work.resolve("one")).keySet())
                .containsExactly(".headgate-report", "report.html", "report.json", "transcript.bin");
    }

    @Test
    void anotherJavaAnswersTheSameBytes(@TempDir Path work) throws Exception {
        Optional<Path> other = Dist.otherJava();
        assumeTrue(other.isPresent(), "this machine has one JDK only");
        for (String[] each : new String[][] {{"gripper.jar", WEEDING}, {"planter.jar", PLANTING}}) {
            Call.Result here = Call.in(work).check(each[0], each[1], "--trace", "--out", "here");
            Call.Result there = Call.in(work)
                    .with("JAVA_HOME", other.get().toString())
                    .check(each[0], each[1], "--trace", "--out", "there");
            assertThat(there.exit()).as(there.err()).isEqualTo(here.exit());
            assertThat(there.out()).isEqualTo(here.out().replace(" here/", " there/"));
            assertThat(files(work.resolve("there"))).isEqualTo(files(work.resolve("here")));
        }
    }

    @Test
    void aHeadThatDoesNotFitEndsWith1AndSaysWhatWouldMendIt(@TempDir Path work) throws Exception {
        Call.Result result = Call.in(work).check("planter.jar", PLANTING, "--out", "report");
        assertThat(result.exit()).as(result.err()).isEqualTo(1);
        // Pair, gap, limit and remedy, in that order.
        assertThat(result.out())
                .contains("Does not fit")
                .containsPattern("FAIL +clearance\\.arm-to-arm +arm \\S+ at work and arm \\S+ at work")
                .containsPattern("[0-9.]+ mm, must be at least [0-9.]+ mm")
                .containsPattern("mend +trim head .* by [0-9.]+ mm at [+-]y \\(then it fits");
        assertThat(work.resolve("report/report.json")).content().contains("\"verdict\" : \"does not fit\"");
    }

    @Test
    void whatTheJsonOptionPrintsIsTheReportFile(@TempDir Path work) throws Exception {
        Call.Result result = Call.in(work).check("planter.jar", PLANTING, "--json", "--out", "report");
        assertThat(result.exit()).isEqualTo(1);
        assertThat(work.resolve("report/report.json")).hasContent(result.out());
    }

    @Test
    void aReportHoldsNothingOfTheMachine(@TempDir Path work) throws Exception {
        Call.in(work).check("gripper.jar", WEEDING, "--out", "report");
        for (String name : new String[] {"report.html", "report.json"}) {
            assertThat(work.resolve("report").resolve(name))
                    .content()
                    .doesNotContain(work.toString(), Dist.folder().toString(), System.getProperty("user.name") + "@")
                    .doesNotContain("\r");
        }
    }

    @Test
    void theLanguageOfTheMachineChangesNothing(@TempDir Path work) throws Exception {
        Call.Result plain = Call.in(work).check("planter.jar", PLANTING, "--out", "one");
        Call.Result other = Call.in(work)
                .with(
                        "JAVA_TOOL_OPTIONS",
                        "-Duser.language=tr -Duser.country=TR -Dfile.encoding=ISO-8859-9 -Duser.timezone=Asia/Kolkata")
                .check("planter.jar", PLANTING, "--out", "two");
        assertThat(other.out()).isEqualTo(plain.out().replace(" one/", " two/"));
        assertThat(files(work.resolve("two"))).isEqualTo(files(work.resolve("one")));
    }

    static Map<String, String> files(Path folder) throws IOException {
        Map<String, String> files = new TreeMap<>();
        try (Stream<Path> all = Files.list(folder)) {
            for (Path each : all.toList()) {
                files.put(
                        each.getFileName().toString(),
                        new String(Files.readAllBytes(each), StandardCharsets.ISO_8859_1));
            }
        }
        return files;
    }
}
