package headgate.verifier.report.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import headgate.verifier.plot.Outcomes;
import headgate.verifier.report.Replays;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class ReplayJsonTest {

    private static final ObjectMapper MAPPER = new ObjectMapper();

    private static final String JSON = ReplayJson.of(Replays.report(Outcomes.study()));

    private static Schema schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema("{}");

    @BeforeAll
    static void read() throws IOException {
        try (InputStream in =
                Objects.requireNonNull(ReplayJson.class.getClassLoader().getResourceAsStream(ReplayJson.SCHEMA))) {
            schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                    .getSchema(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        }
    }

    private static List<String> errors(JsonNode tree) {
        return schema.validate(tree).stream().map(Object::toString).toList();
    }

    @Test
    void whatIsWrittenKeepsToThePublishedSchema() throws IOException {
        assertThat(errors(MAPPER.readTree(JSON))).isEmpty();
        assertThat(errors(MAPPER.readTree(ReplayJson.of(Replays.report(Outcomes.nothing())))))
                .isEmpty();
        assertThat(errors(MAPPER.readTree(ReplayJson.undecided("No lane has an arm."))))
                .isEmpty();
    }

    @Test
    void holdsWhatTheReplaySays() throws IOException {
        JsonNode tree = MAPPER.readTree(JSON);
        assertThat(tree.at("/standing").asText()).isEqualTo("fails");
        assertThat(tree.at("/groups/0/bestSpeed").asDouble()).isEqualTo(0.15);
        assertThat(tree.at("/groups/0/speeds/1/refining").asBoolean()).isTrue();
        assertThat(tree.at("/groups/1/speeds/1/missed/arm-busy").asInt()).isEqualTo(85);
        assertThat(tree.at("/densityBorne/density").asDouble()).isEqualTo(1);
        assertThat(tree.at("/remedies/0/text").asText()).isEqualTo("drive at up to 0.15 m/s");
        assertThat(tree.at("/timeline/actions/0/plantY").asDouble()).isEqualTo(-0.25);
        assertThat(tree.at("/stands/0/speeds/0/arms/0/acting").asDouble()).isEqualTo(12.5);
        assertThat(tree.at("/answersAsked").asLong()).isEqualTo(1234);
        JsonNode bare = MAPPER.readTree(ReplayJson.of(Replays.report(Outcomes.nothing())));
        assertThat(bare.at("/groups/0/speeds/0/coverage").isNull()).isTrue();
        assertThat(bare.at("/timeline").isNull()).isTrue();
    }

    /** The schema is worth nothing if it lets everything through: no field can be left out, and none be added. */
    @Test
    void theSchemaRefusesWhatAReplayNeverSays() throws IOException {
        List<String> accepted = new ArrayList<>();
        mutate(MAPPER.readTree(JSON), "", accepted);
        assertThat(accepted).isEmpty();
    }

    /** Tries each object of a tree without each of its fields, and with one more. */
    private static void mutate(JsonNode whole, String pointer, List<String> accepted) {
        JsonNode here = whole.at(pointer);
        if (here instanceof ArrayNode array) {
            if (!array.isEmpty()) {
                mutate(whole, pointer + "/0", accepted);
            }
            return;
        }
        if (!(here instanceof ObjectNode)) {
            return;
        }
        List<String> names = new ArrayList<>();
        here.fieldNames().forEachRemaining(names::add);
        for (String name : names) {
            JsonNode changed = whole.deepCopy();
            ((ObjectNode) changed.at(pointer)).remove(name);
            if (errors(changed).isEmpty()) {
                accepted.add("without " + pointer + "/" + name);
            }
            JsonNode other = whole.deepCopy();
            ((ObjectNode) other.at(pointer)).set(name, MAPPER.createArrayNode().add(MAPPER.createArrayNode()));
            if (errors(other).isEmpty()) {
                accepted.add("nested lists as " + pointer + "/" + name);
            }
            mutate(whole, pointer + "/" + name, accepted);
        }
        JsonNode more = whole.deepCopy();
        ((ObjectNode) more.at(pointer)).put("unknown", "x");
        if (errors(more).isEmpty()) {
            accepted.add("unknown at " + pointer);
        }
    }
}
