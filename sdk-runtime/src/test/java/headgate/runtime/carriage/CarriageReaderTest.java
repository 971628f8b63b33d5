package headgate.runtime.carriage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import headgate.runtime.cropplan.CropPlan;
import headgate.runtime.cropplan.CropPlanReader;
import headgate.runtime.form.LowfieldFiles;
import headgate.runtime.origin.FileProblem;
import headgate.runtime.origin.InvalidFileException;
import headgate.runtime.origin.Loaded;
import headgate.runtime.origin.Place;
import headgate.runtime.policy.Policy;
import headgate.runtime.policy.PolicyReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

class CarriageReaderTest {

    private static Loaded<Carriage> read(String text) throws InvalidFileException {
        return CarriageReader.read(LowfieldFiles.source("carriage.json", text));
    }

    private static List<FileProblem> problems(String text) {
        return catchThrowableOfType(InvalidFileException.class, () -> read(text))
                .problems();
    }

    @Test
    void lowfieldIsRead() throws InvalidFileException {
        Loaded<Carriage> loaded = CarriageReader.read(LowfieldFiles.path("carriage.json"));
        Carriage carriage = loaded.value();
        assertThat(carriage.arms()).hasSize(8);
        assertThat(carriage.beams()).extracting(Carriage.Beam::x).containsExactly(0L, -1_400_000L);
        assertThat(carriage.arms().get(0).shiftMotion()).isEqualTo(new Arm.AxisMotion(0.5, 2.0, 2.0, 0.003));
        assertThat(carriage.arms().get(0).tolerance().stiffness()).isEqualTo(80_000.0);
        assertThat(loaded.notes()).isEmpty();
        assertThat(loaded.sha256()).matches("[0-9a-f]{64}");
    }

    @Test
    void lowfieldPlansAreRead() throws InvalidFileException {
        for (String name : LowfieldFiles.cropPlans()) {
            Loaded<CropPlan> plan = CropPlanReader.read(LowfieldFiles.path(name));
            assertThat(plan.notes()).as(name).isEmpty();
            // The served width fits the frame of 4.0 m.
            assertThat(plan.value().rows().servedWidth()).as(name).isBetween(3.0, 4.0);
        }
    }

    @Test
    void theBuiltInPolicyHasASourceForEveryLimit() {
        Policy policy = PolicyReader.builtIn().value();
        assertThat(policy.armGap().value()).isEqualTo(0.025);
        assertThat(policy.coverageFactor().source()).contains("GUM");
    }

    @Test
    void threeMistakesAreAllReportedWithLineAndColumn() {
        String broken = LowfieldFiles.text("carriage.json")
                .replace("\"350 mm\", \"950 mm\"", "\"350 kg\", \"950 mm\"")
                .replace("\"wheelSink\"", "\"wheelSunk\"")
                .replace("\"mass\": \"25 kg\"", "\"mass\": \"-25 kg\"");
        List<FileProblem> problems = problems(broken);
        assertThat(problems).hasSize(3);
        assertThat(problems.get(0).place()).isEqualTo(new Place("carriage.json", 13, 16));
        assertThat(problems.get(0))
                .hasToString("carriage.json:13:16: armTypes[0].lift[0]: found \"350 kg\", expected"
                        + " a length from 0 m to 5 m in mm, cm or m, such as \"350 mm\"; \"kg\" is the unit of a mass");
        assertThat(problems.get(1).path()).isEqualTo("armTypes[0].payload.mass");
        assertThat(problems.get(1).advice()).isEqualTo("it cannot be negative");
        assertThat(problems.get(2).found()).isEqualTo("the unknown field \"wheelSunk\"");
        assertThat(problems.get(2).advice()).isEqualTo("did you mean \"wheelSink\"?");
        assertThat(problems).isSorted();
    }

    /** Who is told of an arm's payload must change the line of the arm's type; its rail is the arm's own. */
    @Test
    void whatAnArmTakesFromItsTypeIsPlacedThere() throws InvalidFileException {
        Loaded<Carriage> loaded = CarriageReader.read(LowfieldFiles.path("carriage.json"));
        for (int arm = 0; arm < 8; arm++) {
            String path = "arms[" + arm + "]";
            assertThat(loaded.place(path + ".payload.mass")).isEqualTo(loaded.place("armTypes[0].payload.mass"));
            assertThat(loaded.place(path + ".plate")).isEqualTo(loaded.place("armTypes[0].plate"));
            assertThat(loaded.place(path + ".lift[1]")).isEqualTo(loaded.place("armTypes[0].lift[1]"));
            assertThat(loaded.place(path + ".shift").orElseThrow().line())
                    .isEqualTo(loaded.place(path + ".id").orElseThrow().line());
        }
        assertThat(loaded.place("arms[0].payload.mass").orElseThrow().line()).isEqualTo(23);
    }

    @Test
    void anUnknownBeamIsNamedWithTheNearest() {
        List<FileProblem> problems = problems(LowfieldFiles.text("carriage.json")
                .replace("\"id\": \"rear-1\", \"beam\": \"rear\"", "\"id\": \"rear-1\", \"beam\": \"reer\""));
        assertThat(problems).singleElement().extracting(FileProblem::advice).isEqualTo("did you mean \"rear\"?");
    }

    @Test
    void anotherKindOfFileGivesOneProblem() {
        assertThat(problems(LowfieldFiles.text("leek-75-weeding.json")))
                .singleElement()
                .hasToString("carriage.json:2:13: format: found \"headgate.crop-plan/1\", expected"
                        + " \"headgate.carriage/1\"; this is a file of another kind");
    }

    @Test
    void aMissingFileAndADirectoryAreOneProblemEach() {
        assertThatThrownBy(() -> CarriageReader.read(Path.of("no-such-file.json")))
                .isInstanceOf(InvalidFileException.class)
                .hasMessage("no-such-file.json: found no such file, expected a file; check the name and the folder");
        assertThatThrownBy(() -> CarriageReader.read(Path.of(".")))
                .isInstanceOf(InvalidFileException.class)
                .hasMessageContaining("a directory");
    }

    @Test
    void aFigureFarFromTheUsualIsNotedAndNotChanged() throws InvalidFileException {
        Loaded<Carriage> loaded =
                read(LowfieldFiles.text("carriage.json").replace("\"mass\": \"25 kg\"", "\"mass\": \"900 kg\""));
        assertThat(loaded.value().arms().get(0).payload().mass()).isEqualTo(900.0);
        assertThat(loaded.notes())
                .singleElement()
                .hasToString("carriage.json:23:27: armTypes[0].payload.mass: found"
                        + " \"900 kg\", expected usually a mass from 1 kg to 200 kg; check the number and its unit");
    }

    @Test
    void aWayNamesEachMoveOnceAndTurnsOnlyWhereThePoseDoes() throws IOException {
        String full = Files.readString(Path.of("src/test/resources/headgate/formats/carriage-1-full.json"));
        String turned = "\"turns\": [{\"axis\": \"x\", \"quarters\": 1}, {\"axis\": \"z\", \"quarters\": 2}],";
        assertThat(full).contains(turned, "[\"z\", \"turn\", \"x\"]");

        assertThat(problems(full.replace("[\"z\", \"turn\", \"x\"]", "[\"z\", \"turn\", \"z\"]")))
                .extracting(FileProblem::found)
                .containsExactly("\"z\" a second time");
        assertThat(problems(full.replace(turned, "\"turns\": [],")))
                .extracting(FileProblem::found)
                .containsExactly("\"turn\", where the pose has no turns");
        assertThat(problems(full.replace(turned, "")))
                .extracting(FileProblem::found)
                .containsExactly("\"turn\", where the pose has no turns");
    }
}
