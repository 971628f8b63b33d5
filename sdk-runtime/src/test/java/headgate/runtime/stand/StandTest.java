package headgate.runtime.stand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import headgate.api.vocabulary.PlantClass;
import headgate.runtime.origin.FileProblem;
import headgate.runtime.origin.InvalidFileException;
import headgate.runtime.quantity.Kind;
import headgate.runtime.quantity.Quantities;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class StandTest {

    private static final String HEAD = "# headgate.stand/1\nx [m],y [mm],class,stem [mm],height [cm]\n";

    private static StandSummary read(String text, List<Plant> plants) throws InvalidFileException, IOException {
        return StandReader.read("s.csv", new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)), plants::add);
    }

    private static List<FileProblem> problems(String text) {
        return catchThrowableOfType(InvalidFileException.class, () -> read(text, new ArrayList<>()))
                .problems();
    }

    @Test
    void columnsHaveTheirOwnUnits() throws InvalidFileException, IOException {
        List<Plant> plants = new ArrayList<>();
        StandSummary summary = read(HEAD + "0.31,-187.5,broadleaf,3.2,4.5\r\n1234.5,0,crop,,\n", plants);
        assertThat(plants)
                .containsExactly(
                        new Plant(new Plant.Position(310_000, -187_500), PlantClass.BROADLEAF, 0.0032, 0.045, 0),
                        new Plant(new Plant.Position(1_234_500_000, 0), Plant.CROP, 0, 0, 0));
        assertThat(summary.plants()).isEqualTo(2);
        assertThat(summary.crop()).isEqualTo(1);
        assertThat(summary.least()).isEqualTo(new Plant.Position(310_000, -187_500));
        assertThat(summary.most()).isEqualTo(new Plant.Position(1_234_500_000, 0));
        assertThat(summary.sha256()).matches("[0-9a-f]{64}");
    }

    @Test
    void everyLineIsLookedAtAndProblemsHavePlaces() {
        List<FileProblem> problems = problems(
                HEAD
                        + "0.1,2,crop,,\n0.1,x,crop,,\n0.1,2,Crop,,\n1,5,2,crop,,\n0.1,2,grass,-1,\n0.1,2,grass,1e3,\n,2,grass,,\n");
        assertThat(problems)
                .extracting(p -> p.place().line() + ":" + p.place().column() + " " + p.path())
                .containsExactly(
                        "4:5 y", "5:7 class", "6:1 ", "6:5 class", "6:7 stem", "7:13 stem", "8:13 stem", "9:1 x");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    x [m],y [m],class,stem             | 2:19 stem
                    x [m],y [m],class,stem [inch]      | 2:19 stem
                    x [m],y [m],clas                   | 2:13
                    x [m],y [m]                        | 2:1 class
                    x [m];y [m];class                  | 2:1
                    x [m],x [m],y [m],class            | 2:7 x
                    x [m],y [m],class [mm]             | 2:13 class
                    """)
    void aWrongHeadingIsRefusedAtItsPlace(String heading, String place) {
        assertThat(problems("# headgate.stand/1\n" + heading + "\n0,0,crop\n"))
                .singleElement()
                .extracting(p -> (p.place().line() + ":" + p.place().column() + " " + p.path()).strip())
                .isEqualTo(place);
    }

    @Test
    void aHundredProblemsAreEnough() {
        List<FileProblem> problems = problems(HEAD + "a,b,crop,,\n".repeat(100_000));
        assertThat(problems).hasSize(101);
        assertThat(problems).anySatisfy(p -> assertThat(p.advice()).contains("the rest of the file was not looked at"));
        assertThat(problems(HEAD + "9".repeat(10_000_000)).get(0).found()).contains("a line of more than 500");
        assertThat(problems("x [m],y [m],class\n").get(0).expected()).contains("# headgate.stand/1");
        assertThat(problems("").get(0).found()).isEqualTo("nothing");
    }

    @ParameterizedTest
    @EnumSource(StandWriter.Form.class)
    void whatIsWrittenReadsBackEqual(StandWriter.Form form) throws IOException, InvalidFileException {
        Random random = new Random(3);
        List<Plant> plants = new ArrayList<>();
        StringWriter out = new StringWriter();
        try (StandWriter writer = new StandWriter(out, form)) {
            for (int i = 0; i < 500; i++) {
                Plant plant = new Plant(
                        new Plant.Position(random.nextInt(2_000_000_000) - 1_000_000_000L, random.nextInt(9_000_000)),
                        i % 3 == 0 ? Plant.CROP : PlantClass.GRASS,
                        random.nextInt(12_000) / 1e6,
                        random.nextInt(3) == 0 ? 0 : random.nextInt(300_000) / 1e6,
                        random.nextInt(200_000) / 1e6);
                plants.add(plant);
                writer.write(plant);
            }
        }
        List<Plant> again = new ArrayList<>();
        read(out.toString(), again);
        assertThat(again).isEqualTo(plants);
    }

    @Test
    void geoJsonProblemsHavePlaces() {
        String text = "{\"type\": \"FeatureCollection\", \"format\": \"headgate.stand/1\", \"features\": [\n"
                + "{\"type\": \"Feature\", \"geometry\": {\"type\": \"Point\", \"coordinates\": [1]},"
                + " \"properties\": {\"class\": \"crop\"}},\n"
                + "{\"type\": \"Feature\", \"geometry\": {\"type\": \"Point\", \"coordinates\": [1, 2]},"
                + " \"properties\": {\"clas\": \"crop\"}}]}";
        assertThat(problems(text))
                .extracting(p -> p.place().line() + " " + p.path())
                .containsExactly("2 features[0].geometry.coordinates", "3 features[1].properties.clas");
        assertThat(problems(text.replace("headgate.stand/1", "headgate.stand/2")))
                .hasSize(3);
        assertThat(problems(text.replace("]}", "")).get(0).place().line()).isPositive();
    }

    /** A stand may be of any length, so its parts are bounded: a text of 50 MB and a nesting of 10,000 are refused. */
    @Test
    void geoJsonIsRefusedWhereAPartIsTooBig() {
        String head = "{\"type\": \"FeatureCollection\", \"format\": \"headgate.stand/1\", \"features\": [\n";
        assertThat(problems(head + "{\"type\": \"" + "x".repeat(50_000_000) + "\"}]}"))
                .singleElement()
                .satisfies(p -> {
                    assertThat(p.found()).contains("more than 4096 characters");
                    assertThat(p.place().line()).isEqualTo(2);
                });
        assertThat(problems(head + "[".repeat(10_000))).singleElement().satisfies(p -> assertThat(p.expected())
                .isEqualTo("at most 32 levels"));
    }

    /** The fast way of reading a column gives what exact decimals give, and its factors are those of the units library. */
    @Test
    void columnsReadAsExactDecimalsDo() {
        Random random = new Random(5);
        LengthColumn.UNITS.forEach((symbol, column) -> {
            double metre =
                    Quantities.si(BigDecimal.ONE, Kind.LENGTH.unit(symbol).orElseThrow(), Kind.LENGTH);
            assertThat(column.perUnit()).isEqualTo(Math.round(metre * 1e6));
            for (int i = 0; i < 20_000; i++) {
                int places = 3 + random.nextInt(6);
                BigDecimal number = new BigDecimal(
                        java.math.BigInteger.valueOf(random.nextLong() % 1_000_000_000_000_000L), places);
                if (i % 4 == 0) {
                    number = BigDecimal.valueOf(random.nextInt(2_000_000) - 1_000_000, places);
                }
                String text = number.toPlainString();
                OptionalLong read = column.micrometres(text, 0, text.length());
                assertThat(read)
                        .as(text + " " + symbol)
                        .hasValue(number.multiply(BigDecimal.valueOf(column.perUnit()))
                                .setScale(0, RoundingMode.HALF_EVEN)
                                .longValueExact());
            }
        });
    }
}
