package headgate.runtime.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import headgate.runtime.origin.FileProblem;
import headgate.runtime.origin.InvalidFileException;
import headgate.runtime.origin.Place;
import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LocatedJsonTest {

    private static FileProblem refusal(byte[] bytes) {
        InvalidFileException refused = catchThrowableOfType(
                InvalidFileException.class, () -> LocatedJson.read(SourceFile.of("f.json", bytes), new ArrayList<>()));
        return refused.problems().get(0);
    }

    private static FileProblem refusal(String text) {
        return refusal(text.getBytes(StandardCharsets.UTF_8));
    }

    private static Node.Field field(Node.Table table, String name) {
        return Objects.requireNonNull(table.fields().get(name), name);
    }

    @Test
    void everyNodeKnowsItsPlaceAndPath() throws InvalidFileException {
        String text = "{\n  \"äöü\": [1,\r\n\ttrue], \"b\": {\"c\": \"x\"}}";
        Node root = LocatedJson.read(SourceFile.of("f.json", text.getBytes(StandardCharsets.UTF_8)), new ArrayList<>());
        Node.Table table = (Node.Table) root;
        Node.Sequence list = (Node.Sequence) field(table, "äöü").value();
        assertThat(list.place()).isEqualTo(new Place("f.json", 2, 10));
        assertThat(list.items().get(1).place()).isEqualTo(new Place("f.json", 3, 2));
        assertThat(list.items().get(1).path()).isEqualTo("äöü[1]");
        Node.Table b = (Node.Table) field(table, "b").value();
        assertThat(field(b, "c").value().path()).isEqualTo("b.c");
        assertThat(field(b, "c").namePlace()).isEqualTo(new Place("f.json", 3, 15));
    }

    /** A decimal holds exponents up to 2^31 only; JSON (RFC 8259) sets no bound. */
    @ParameterizedTest
    @CsvSource({
        "1e5112111111111, 1E+2000",
        "-1E+5112111111111, -1E+2000",
        "8e-88888888888888888, 8E-2000",
        "2.5e3, 2.5E+3",
        "1e2147483648, 1E+2000",
        "0.25, 0.25"
    })
    void aNumeralWithALargeExponentIsANumber(String literal, String value) throws InvalidFileException {
        String text = "{\"a\": " + literal + "}";
        Node root = LocatedJson.read(SourceFile.of("f.json", text.getBytes(StandardCharsets.UTF_8)), new ArrayList<>());
        Node.Numeral number = (Node.Numeral) field((Node.Table) root, "a").value();
        assertThat(number.literal()).isEqualTo(literal);
        assertThat(number.value()).isEqualTo(new BigDecimal(value));
    }

    /** Slips of people who type JSON: the place, and a word of the advice. RFC 8259 allows none of these. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
                    {"a": 1,}             | 1 | 9  | remove the comma
                    {"a": [1, 2,]}        | 1 | 13 | remove the comma
                    {'a': 1}              | 1 | 2  | plain double quotes
                    {a: 1}                | 1 | 2  | without double quotes
                    {"a": NaN}            | 1 | 7  | finite
                    {"a": -Infinity}      | 1 | 7  | finite
                    {"a": True}           | 1 | 7  | only true
                    {"a": 1} // end       | 1 | 10 | comments
                    {"a": 1 "b": 2}       | 1 | 9  | comma
                    {"a": "x              | 1 | 9  | missing
                    {"a": 1               | 1 | 8  | missing
                    {"a": 01}             | 1 | 8  | ``
                    {"a": 1} {}           | 1 | 10 | one JSON object
                    """)
    void slipsAreFoundWhereTheyStand(String text, int line, int column, String advice) {
        FileProblem problem = refusal(text);
        assertThat(problem.place()).as(problem.toString()).isEqualTo(new Place("f.json", line, column));
        assertThat(problem.advice()).as(problem.toString()).contains(advice);
    }

    @Test
    void refusesWhatIsNoText() {
        assertThat(refusal(new byte[0]).found()).isEqualTo("an empty file");
        assertThat(refusal("\uFEFF{}").found()).isEqualTo("a byte order mark");
        assertThat(refusal("  \n ").found()).isEqualTo("nothing");
        FileProblem latin1 = refusal("{\n \"a\": \"é\"}".getBytes(StandardCharsets.ISO_8859_1));
        assertThat(latin1.place()).isEqualTo(new Place("f.json", 2, 8));
        assertThat(latin1.found()).isEqualTo("the byte 0xE9");
        assertThat(refusal("{}".getBytes(StandardCharsets.UTF_16LE)).place().line())
                .isEqualTo(1);
    }

    @Test
    void namesThatStandTwiceAndUnseenCharactersAreCollected() throws InvalidFileException {
        List<FileProblem> problems = new ArrayList<>();
        String text = "{\"a\": 1,\n\"a\": 2, \"b\": \"x\\u0000\", \"a\": 3, \"c\": \"\\ud800\"}";
        LocatedJson.read(SourceFile.of("f.json", text.getBytes(StandardCharsets.UTF_8)), problems);
        assertThat(problems)
                .extracting(p -> p.place() + " " + p.sort())
                .containsExactly("f.json:2:1 TWICE", "f.json:2:14 UNSEEN", "f.json:2:25 TWICE", "f.json:2:38 UNSEEN");
    }

    @Test
    void boundsAreKept() {
        assertThat(refusal("[".repeat(10_000)).expected()).isEqualTo("at most 32 levels");
        assertThat(refusal("{\"a\": \"" + "x".repeat(5000) + "\"}").found()).contains("more than 4096 characters");
        assertThat(refusal("{\"a\": " + "9".repeat(50) + "}").found()).contains("a number of more than 40");
        assertThat(refusal("{\"" + "a".repeat(300) + "\": 1}").found()).contains("a name of more than 200");
        // The place is where the text, the number or the list begins, wherever that is.
        assertThat(refusal("{\n \"a\": \"" + "x".repeat(5000) + "\"}").place()).isEqualTo(new Place("f.json", 2, 7));
        assertThat(refusal("{\n \"a\": " + "9".repeat(50) + "}").place().line()).isEqualTo(2);
        assertThat(refusal("{\n \"a\":\n" + "[".repeat(50)).place()).isEqualTo(new Place("f.json", 3, 32));
        // Four million names that are all bad must neither take minutes nor name them all by chance of memory.
        assertThat(refusal(("[" + "[],".repeat(1_000_000) + "[").getBytes(StandardCharsets.UTF_8))
                        .place()
                        .line())
                .isEqualTo(1);
    }

    /** A file of 200 MB and a text of 50 MB are refused from the first bytes: nothing like their size is held. */
    @Test
    void aHugeFileIsRefusedWithoutReadingIt(@TempDir Path folder) throws IOException {
        Path huge = folder.resolve("huge.json");
        try (OutputStream out = Files.newOutputStream(huge)) {
            byte[] block = new byte[1 << 20];
            java.util.Arrays.fill(block, (byte) 'x');
            out.write("{\"a\": \"".getBytes(StandardCharsets.UTF_8));
            for (int i = 0; i < 200; i++) {
                out.write(block);
            }
        }
        Runtime runtime = Runtime.getRuntime();
        System.gc();
        long before = runtime.totalMemory() - runtime.freeMemory();
        InvalidFileException refused = catchThrowableOfType(InvalidFileException.class, () -> SourceFile.read(huge));
        long used = runtime.totalMemory() - runtime.freeMemory() - before;
        assertThat(refused.problems().get(0).expected()).isEqualTo("a file of at most 4 MiB");
        assertThat(used).isLessThan(64L << 20);
    }

    @Test
    void nearestNamesAreThoseThatPeopleMean() {
        List<String> known = List.of("wheelSink", "roll", "pitch", "protectedRadius");
        assertThat(NearestName.of("wheelsink", known)).hasValue("wheelSink");
        assertThat(NearestName.of("protected_radius", known)).hasValue("protectedRadius");
        assertThat(NearestName.of("rol", known)).hasValue("roll");
        assertThat(NearestName.of("pich", known)).hasValue("pitch");
        assertThat(NearestName.of("colour", known)).isEmpty();
        // The worked example of the optimal string alignment distance: CA to ABC is 3, since no part is edited twice.
        assertThat(NearestName.distance("CA", "ABC")).isEqualTo(3);
        assertThat(NearestName.distance("kitten", "sitting")).isEqualTo(3);
    }
}
