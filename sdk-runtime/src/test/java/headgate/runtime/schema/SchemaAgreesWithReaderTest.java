package headgate.runtime.schema;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import headgate.runtime.origin.FileProblem;
import headgate.runtime.origin.InvalidFileException;
import headgate.runtime.text.LocatedJson;
import headgate.runtime.text.Node;
import headgate.runtime.text.SourceFile;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The reader is the authority; the schema that editors use must agree with it. Held by slips in right files: whatever the
 * schema refuses the reader refuses, and what only the reader refuses is of the sorts that a schema cannot know.
 */
class SchemaAgreesWithReaderTest {

    /** Enough in every build to meet every sort of slip; the deep tier draws on from the same seeds. */
    private static final int MUTANTS = 400;

    private static final int MANY_MUTANTS = 2000;

    /** What a schema cannot know: the listed exceptions, see {@link FileProblem.Sort}. */
    private static final Set<FileProblem.Sort> READER_ONLY =
            EnumSet.of(FileProblem.Sort.RANGE, FileProblem.Sort.TWICE, FileProblem.Sort.UNSEEN, FileProblem.Sort.RULE);

    static Stream<Kinds.Subject> kinds() {
        return Kinds.all().stream();
    }

    static String full(Kinds.Subject kind) throws IOException {
        String name = "/headgate/formats/" + kind.name() + "-1-full.json";
        try (InputStream in = SchemaAgreesWithReaderTest.class.getResourceAsStream(name)) {
            return new String(Objects.requireNonNull(in, name).readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private static SourceFile source(String text) throws InvalidFileException {
        return SourceFile.of("mutant.json", text.getBytes(StandardCharsets.UTF_8));
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void mutantsAreJudgedAlike(Kinds.Subject kind) throws IOException, InvalidFileException {
        judge(kind, MUTANTS);
    }

    @ParameterizedTest
    @MethodSource("kinds")
    @Tag("deep")
    void manyMutantsAreJudgedAlike(Kinds.Subject kind) throws IOException, InvalidFileException {
        judge(kind, MANY_MUTANTS);
    }

    private static void judge(Kinds.Subject kind, int mutants) throws IOException, InvalidFileException {
        SchemaRegistry registry = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
        Schema schema = registry.getSchema(SchemaText.of(kind));
        String right = full(kind);
        assertThat(kind.problems(right)).isEmpty();
        assertThat(schema.validate(right, InputFormat.JSON)).isEmpty();

        Node root = LocatedJson.read(source(right), new ArrayList<>());
        Map<FileProblem.Sort, Integer> sorts = new EnumMap<>(FileProblem.Sort.class);
        Map<String, Integer> slips = new TreeMap<>();
        int sound = 0;
        for (int seed = 0; seed < mutants; seed++) {
            Random random = new Random(seed);
            Mutant mutant = new Mutant(root, random);
            String slip = mutant.slip();
            if (random.nextInt(4) == 0) {
                slip += ", " + mutant.slip();
            }
            slips.merge(slip, 1, Integer::sum);
            String text = mutant.text();
            List<FileProblem> problems = kind.problems(text);
            List<?> refusals = schema.validate(text, InputFormat.JSON);
            String about =
                    kind.name() + " seed " + seed + " (" + slip + "): reader " + problems + ", schema " + refusals;

            assertThat(problems).as(about).allSatisfy(p -> {
                assertThat(p.place().line()).isPositive();
                assertThat(p.place().column()).isPositive();
            });
            boolean readerOnly = problems.stream().allMatch(p -> READER_ONLY.contains(p.sort()));
            boolean twice = problems.stream().anyMatch(p -> p.sort() == FileProblem.Sort.TWICE);
            if (problems.isEmpty()) {
                sound++;
                assertThat(refusals).as(about).isEmpty();
            } else if (!twice) {
                // With a name that stands twice the two see different values, so only "both refuse" can be said.
                assertThat(refusals.isEmpty()).as(about).isEqualTo(readerOnly);
            }
            problems.forEach(p -> sorts.merge(p.sort(), 1, Integer::sum));
        }
        // The draw must have met right files and every sort of wrong one, or the agreement above says little.
        assertThat(sound).isBetween(mutants / 20, mutants / 2);
        assertThat(sorts.keySet())
                .contains(
                        FileProblem.Sort.FORM,
                        FileProblem.Sort.MISSING,
                        FileProblem.Sort.UNKNOWN,
                        FileProblem.Sort.RANGE,
                        FileProblem.Sort.TWICE);
        assertThat(slips).hasSizeGreaterThan(9);
    }
}
