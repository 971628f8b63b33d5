package headgate.runtime.form;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.runtime.carriage.Carriage;
import headgate.runtime.carriage.CarriageReader;
import headgate.runtime.carriage.CarriageWriter;
import headgate.runtime.cropplan.CropPlan;
import headgate.runtime.cropplan.CropPlanReader;
import headgate.runtime.cropplan.CropPlanWriter;
import headgate.runtime.fitting.Fitting;
import headgate.runtime.fitting.FittingReader;
import headgate.runtime.fitting.FittingWriter;
import headgate.runtime.origin.InvalidFileException;
import headgate.runtime.policy.Policy;
import headgate.runtime.policy.PolicyReader;
import headgate.runtime.policy.PolicyWriter;
import headgate.runtime.stand.Plant;
import headgate.runtime.stand.StandReader;
import headgate.runtime.stand.StandWriter;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * What is read, written and read again is equal. The files of the folder {@code headgate/formats} use every field of each
 * version of each format that was ever published; they stay there for ever.
 */
class RoundTripTest {

    private static final Path FORMATS = Path.of("src", "test", "resources", "headgate", "formats");

    @Test
    void carriages() throws InvalidFileException {
        for (Path path : List.of(LowfieldFiles.path("carriage.json"), FORMATS.resolve("carriage-1-full.json"))) {
            Carriage carriage = CarriageReader.read(path).value();
            String text = CarriageWriter.text(carriage);
            Carriage again = CarriageReader.read(LowfieldFiles.source("again.json", text))
                    .value();
            assertThat(again).isEqualTo(carriage);
            assertThat(CarriageWriter.text(again)).isEqualTo(text);
        }
    }

    @Test
    void cropPlans() throws InvalidFileException {
        List<Path> paths = new ArrayList<>(
                LowfieldFiles.cropPlans().stream().map(LowfieldFiles::path).toList());
        paths.add(FORMATS.resolve("crop-plan-1-full.json"));
        for (Path path : paths) {
            CropPlan plan = CropPlanReader.read(path).value();
            String text = CropPlanWriter.text(plan);
            assertThat(CropPlanReader.KIND
                            .read(LowfieldFiles.source("again.json", text))
                            .value())
                    .as(path.toString())
                    .isEqualTo(plan);
        }
    }

    @Test
    void fittings() throws InvalidFileException {
        for (Path path :
                List.of(LowfieldFiles.path("celeriac-60-mixed.json"), FORMATS.resolve("fitting-1-full.json"))) {
            Fitting fitting = FittingReader.read(path).value();
            String text = FittingWriter.text(fitting);
            Fitting again =
                    FittingReader.read(LowfieldFiles.source("again.json", text)).value();
            assertThat(again).as(path.toString()).isEqualTo(fitting);
            assertThat(FittingWriter.text(again)).isEqualTo(text);
        }
    }

    @Test
    void policies() throws InvalidFileException {
        for (Policy policy : List.of(
                PolicyReader.builtIn().value(),
                PolicyReader.read(FORMATS.resolve("policy-1-full.json")).value())) {
            String text = PolicyWriter.text("again", policy);
            assertThat(PolicyReader.KIND
                            .read(LowfieldFiles.source("again.json", text))
                            .value())
                    .isEqualTo(policy);
        }
    }

    @ParameterizedTest
    @EnumSource(StandWriter.Form.class)
    void stands(StandWriter.Form form) throws InvalidFileException, IOException {
        List<Plant> plants = new ArrayList<>();
        StandReader.read(FORMATS.resolve("stand-1-full.json"), plants::add);
        assertThat(plants).isNotEmpty();
        StringWriter out = new StringWriter();
        try (StandWriter writer = new StandWriter(out, form)) {
            for (Plant plant : plants) {
                writer.write(plant);
            }
        }
        List<Plant> again = new ArrayList<>();
        StandReader.read(
                "again", new ByteArrayInputStream(out.toString().getBytes(StandardCharsets.UTF_8)), again::add);
        assertThat(again).isEqualTo(plants);
    }

    @Test
    void quantitiesAreWrittenAsAPersonWould() throws InvalidFileException {
        String text = CarriageWriter.text(
                CarriageReader.read(LowfieldFiles.path("carriage.json")).value());
        assertThat(text).contains("\"speed\": \"0.5 m/s\"", "\"mass\": \"25 kg\"", "[\"350 mm\", \"950 mm\"]");
    }

    /** A limit looser than the built-in one is read and shown; a stricter one is nobody's concern. */
    @Test
    void looserLimitsAreShown() throws InvalidFileException, IOException {
        String text = "{\"format\": \"headgate.policy/1\", \"name\": \"ours\", \"limits\": {"
                + "\"armGap\": {\"value\": \"10 mm\", \"source\": \"we dare\"},\n"
                + "\"massUse\": {\"value\": \"80 %\", \"source\": \"we do not\"}}}";
        Path file = Files.createTempFile("policy", ".json");
        try {
            Files.writeString(file, text);
            var loaded = PolicyReader.read(file);
            assertThat(loaded.value().massUse().value()).isEqualTo(0.8);
            assertThat(loaded.value().canopyGap())
                    .isEqualTo(PolicyReader.builtIn().value().canopyGap());
            assertThat(loaded.notes()).singleElement().satisfies(note -> assertThat(note.path())
                    .isEqualTo("limits.armGap.value"));
        } finally {
            Files.delete(file);
        }
    }
}
