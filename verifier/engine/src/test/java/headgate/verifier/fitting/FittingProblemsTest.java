package headgate.verifier.fitting;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.api.sheet.HeadSheet;
import headgate.api.sheet.PlateDesignation;
import headgate.runtime.carriage.Carriage;
import headgate.runtime.fitting.Fitting;
import headgate.runtime.fitting.FittingReader;
import headgate.runtime.origin.FileProblem;
import headgate.runtime.origin.InvalidFileException;
import headgate.runtime.origin.Loaded;
import headgate.runtime.text.SourceFile;
import headgate.verifier.check.Cases;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The carriage of {@link Cases}: a1 and a3 on the front beam, a2 and a4 on the rear one; four rows. */
class FittingProblemsTest {

    private static final String START = """
            {
              "format": "headgate.fitting/1",
              "name": "Test fitting",
              "carriage": "carriage.json",
              "cropPlan": "plan.json",
              "heads": [
                { "id": "weeder", "package": "weeder.jar" },
                { "id": "planter", "package": "planter.jar" }
              ],
              "arms": [
            """;

    @Test
    void findsNothingWrongWithAGoodFitting() throws Exception {
        Loaded<Fitting> fitting = read("""
                { "arm": "a1", "head": "weeder", "lanes": [1] },
                { "arm": "a3", "head": "weeder", "lanes": [2, 3], "turned": true },
                { "arm": "a4", "head": "planter", "waits": true }
                """);

        assertThat(problems(fitting, Map.of())).isEmpty();
        assertThat(fitting.value().arms())
                .containsExactly(
                        new Fitting.Place("a1", "weeder", false, false, List.of(1)),
                        new Fitting.Place("a3", "weeder", true, false, List.of(2, 3)),
                        new Fitting.Place("a4", "planter", false, true, List.of()));
    }

    @Test
    void saysAllThatIsWrongAtOnceAndWhere() throws Exception {
        Loaded<Fitting> fitting = read("""
                { "arm": "a1", "head": "weeder", "lanes": [3] },
                { "arm": "a1", "head": "weeder" },
                { "arm": "b7", "head": "weeder" },
                { "arm": "a2", "head": "planter", "lanes": [3] },
                { "arm": "a3", "head": "weeder", "lanes": [2] },
                { "arm": "a4", "head": "weeder", "lanes": [9] }
                """);
        HeadSheet other = Cases.planting()
                .sheet(b -> b.plate(PlateDesignation.of("9409-1-80-6-M8")))
                .head()
                .sheet()
                .orElseThrow();

        List<FileProblem> problems = problems(fitting, Map.of("planter", other));

        assertThat(problems)
                .extracting(p -> p.place().line() + ": " + p.found())
                .containsExactly(
                        "12: a head on arm a1 a second time",
                        "13: \"b7\"",
                        "14: head planter with the plate 9409-1-80-6-M8",
                        "14: lane 3 a second time",
                        "15: arm a1 on lane 3 and arm a3 on lane 2, which cross",
                        "16: lane 9");
        assertThat(problems).extracting(FileProblem::expected).doesNotContain("");
        assertThat(problems.get(0).advice()).contains("line 11");
        assertThat(problems.get(1).expected()).contains("a1, a2, a3, a4");
        assertThat(problems.get(3).advice()).contains("arm a1 has it");
    }

    /** Arms of two beams may share a lane if both say so; on one beam they would stand in each other's way. */
    @Test
    void lanesAreSharedOnPurposeAndAcrossBeams() throws Exception {
        assertThat(problems(read("""
                { "arm": "a1", "head": "weeder", "lanes": [1], "shares": true },
                { "arm": "a2", "head": "weeder", "lanes": [1], "shares": true }
                """), Map.of())).isEmpty();
        assertThat(problems(read("""
                { "arm": "a1", "head": "weeder", "lanes": [1], "shares": true },
                { "arm": "a2", "head": "weeder", "lanes": [1] }
                """), Map.of())).singleElement().satisfies(p -> assertThat(p.advice())
                .contains("\"shares\": true"));
        assertThat(problems(read("""
                { "arm": "a1", "head": "weeder", "lanes": [1], "shares": true },
                { "arm": "a3", "head": "weeder", "lanes": [1], "shares": true }
                """), Map.of())).singleElement().satisfies(p -> assertThat(p.expected())
                .contains("different beams"));
        assertThat(wrong("{ \"arm\": \"a1\", \"head\": \"weeder\", \"shares\": true }"))
                .singleElement()
                .satisfies(p -> assertThat(p.expected()).isEqualTo("the lanes that it shares"));
    }

    @Test
    void aHeadIsOnNoMoreArmsThanThereAreOfIt() throws Exception {
        Loaded<Fitting> fitting = FittingReader.read(SourceFile.of(
                "fitting.json",
                (START.replace("\"weeder.jar\"", "\"weeder.jar\", \"count\": 1")
                                + "{ \"arm\": \"a1\", \"head\": \"weeder\" }, { \"arm\": \"a2\", \"head\": \"weeder\" }]}")
                        .getBytes(StandardCharsets.UTF_8)));

        assertThat(problems(fitting, Map.of())).singleElement().satisfies(p -> {
            assertThat(p.path()).isEqualTo("arms[1].head");
            assertThat(p.expected()).isEqualTo("head weeder on at most 1 arm");
        });
    }

    @Test
    void theReaderRefusesUnknownHeadsAndLanesApart() {
        assertThat(wrong("{ \"arm\": \"a1\", \"head\": \"weedr\" }"))
                .singleElement()
                .satisfies(p -> assertThat(p.advice()).isEqualTo("did you mean \"weeder\"?"));
        assertThat(wrong("{ \"arm\": \"a1\", \"head\": \"weeder\", \"lanes\": [1, 3] }"))
                .singleElement()
                .satisfies(p -> assertThat(p.expected()).isEqualTo("the lane next to the one before"));
        assertThat(wrong("{ \"arm\": \"a1\", \"head\": \"weeder\", \"lanes\": [1], \"waits\": true }"))
                .singleElement()
                .satisfies(p -> assertThat(p.expected()).isEqualTo("either lanes or waits"));
    }

    private static List<FileProblem> wrong(String arms) {
        try {
            read(arms);
            return List.of();
        } catch (InvalidFileException invalid) {
            return invalid.problems();
        }
    }

    private static List<FileProblem> problems(Loaded<Fitting> fitting, Map<String, HeadSheet> sheets) {
        Carriage carriage = Cases.carriage();
        return FittingProblems.of(fitting, carriage, Cases.weedingPlan(), sheets);
    }

    private static Loaded<Fitting> read(String arms) throws InvalidFileException {
        return FittingReader.read(
                SourceFile.of("fitting.json", (START + arms + "\n  ]\n}\n").getBytes(StandardCharsets.UTF_8)));
    }
}
