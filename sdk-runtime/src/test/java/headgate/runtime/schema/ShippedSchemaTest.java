package headgate.runtime.schema;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The schemas that are shipped say what the readers read, and are schemas. */
class ShippedSchemaTest {

    private static final Path FOLDER = Path.of("src", "main", "resources", "headgate", "schemas");

    static Stream<Kinds.Subject> kinds() {
        return Kinds.all().stream();
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void isWhatTheFormsSay(Kinds.Subject kind) throws IOException {
        Path file = FOLDER.resolve(kind.name() + ".schema.json");
        String now = SchemaText.of(kind);
        if (Boolean.getBoolean("headgate.write-schemas")) {
            Files.createDirectories(FOLDER);
            Files.writeString(file, now);
        }
        assertThat(file)
                .as("run this test once with -Dheadgate.write-schemas=true")
                .hasContent(now);
    }

    /** Against the meta-schema of JSON Schema 2020-12 itself, which the validator brings along. */
    @ParameterizedTest
    @MethodSource("kinds")
    void isASchema(Kinds.Subject kind) {
        SchemaRegistry registry = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
        Schema meta = registry.getSchema(SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
        assertThat(meta.validate(SchemaText.of(kind), InputFormat.JSON)).isEmpty();
    }
}
