package headgate.verifier.report.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import headgate.runtime.cropplan.CropPlan;
import headgate.verifier.check.Comparison;
import headgate.verifier.check.Dimension;
import headgate.verifier.check.Finding;
import headgate.verifier.check.Outcome;
import headgate.verifier.check.Rule;
import headgate.verifier.check.RuleInfo;
import headgate.verifier.check.Severity;
import headgate.verifier.interlock.Claws;
import headgate.verifier.report.Judgements;
import headgate.verifier.report.Report;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

class JsonReportTest {

    private static final ObjectMapper MAPPER = new ObjectMapper();

    private final Report report = Judgements.everyKindReport();
    private final String json = JsonReport.of(report);

    @Test
    void theReportKeepsToItsPublishedSchema() throws IOException {
        assertThat(errors(MAPPER.readTree(json))).isEmpty();
    }

    @Test
    void anInterlockIsALimitWithItsZones() throws IOException {
        RuleInfo info = Judgements.info("plan.none", "Nothing", Severity.ERROR);
        Rule passes = Judgements.rule(
                info, c -> List.of(Finding.of(info, "x").examined(1).end(Outcome.PASS, "nothing fails")));

        JsonNode tree = MAPPER.readTree(
                JsonReport.of(Judgements.report(Judgements.judge(Claws.cases().build(), List.of(passes)))));

        assertThat(errors(tree)).isEmpty();
        JsonNode interlock = tree.at("/limits/4/interlock");
        assertThat(interlock.get("first").asText()).isEqualTo("a1");
        assertThat(interlock.at("/offsets/0/y/most").asDouble()).isEqualTo(-0.562);
        assertThat(interlock.get("neverTogether").asBoolean()).isFalse();
    }

    @Test
    void aReportWithoutSetPointsAndWithoutAFigureKeepsToTheSchemaToo() throws IOException {
        RuleInfo info = Judgements.info("plan.none", "Nothing", Severity.ERROR);
        Rule rule = Judgements.rule(
                info,
                c -> List.of(Finding.of(info, "x")
                        .comparison(Comparison.atMost(Double.NaN, Double.POSITIVE_INFINITY, Dimension.FORCE))
                        .examined(1)
                        .end(Outcome.FAIL, "no number came out")));
        Report bare = Judgements.report(Judgements.judge(
                Judgements.eightArms()
                        .rows(new CropPlan.Rows(0.45, 20, 0.3, 0.01))
                        .build(),
                List.of(rule)));
        JsonNode tree = MAPPER.readTree(JsonReport.of(bare));
        assertThat(errors(tree)).isEmpty();
        assertThat(tree.get("setPoints")).isEmpty();
        assertThat(tree.get("tightest").isNull()).isTrue();
        assertThat(tree.at("/sections/3/findings/0/comparison/measured/value").isNull())
                .isTrue();
    }

    /** The schema is worth nothing if it lets everything through: each of these changes must be refused. */
    @Test
    void theSchemaRefusesWhatAReportNeverSays() throws IOException {
        List<String> accepted = new ArrayList<>();
        for (String field : List.of("verdict", "sections", "cautions", "versions", "subjects", "counts")) {
            ObjectNode without = (ObjectNode) MAPPER.readTree(json);
            without.remove(field);
            if (errors(without).isEmpty()) {
                accepted.add("without " + field);
            }
        }
        refuse(accepted, "/", "verdict", "fine");
        refuse(accepted, "/", "format", "headgate.report/2");
        refuse(accepted, "/", "unknown", "x");
        refuse(accepted, "/subjects/0", "sha256", "ABC");
        refuse(accepted, "/sections/5/findings/0", "outcome", "passed");
        refuse(accepted, "/sections/5/findings/0", "rule", "Clearance");
        refuse(accepted, "/sections/5/findings/0/comparison/measured", "value", "50 mm");
        assertThat(accepted).isEmpty();
    }

    private void refuse(List<String> accepted, String pointer, String field, String value) throws IOException {
        JsonNode tree = MAPPER.readTree(json);
        ObjectNode at = (ObjectNode) (pointer.equals("/") ? tree : tree.at(pointer));
        at.put(field, value);
        if (errors(tree).isEmpty()) {
            accepted.add(pointer + " " + field + " = " + value);
        }
    }

    @Test
    void figuresAreInSiWithTheirUnitAndTextBeside() throws IOException {
        JsonNode failing = MAPPER.readTree(json).at("/sections/5/findings/0");
        assertThat(failing.get("outcome").asText()).isEqualTo("fail");
        JsonNode measured = failing.at("/comparison/measured");
        assertThat(measured.get("value").decimalValue()).isEqualByComparingTo("0.48");
        assertThat(measured.get("unit").asText()).isEqualTo("m");
        assertThat(measured.get("text").asText()).isEqualTo("480 mm");
        assertThat(failing.at("/comparison/margin/value").decimalValue()).isEqualByComparingTo("-0.08");
    }

    @Test
    void bytesAreTheSameEachTimeWithLineFeedsOnlyAndNoFolder() {
        assertThat(JsonReport.of(Judgements.everyKindReport())).isEqualTo(json);
        assertThat(json)
                .doesNotContain("\r")
                .endsWith("}\n")
                .doesNotContain("/home/")
                .doesNotContain("plans");
    }

    /** Java writes 2.0E-3 for 0.002 up to JDK 18 and after; the text of a report must not depend on such things. */
    @Test
    void numbersAreWrittenInPlainNotationWithTwelveDigits() {
        assertThat(JsonNumbers.text(0.002)).isEqualTo("0.002");
        assertThat(JsonNumbers.text(2e-44)).startsWith("0.000").endsWith("2");
        assertThat(JsonNumbers.text(0.1 + 0.2)).isEqualTo("0.3");
        assertThat(JsonNumbers.text(-0.0)).isEqualTo("0");
        assertThat(JsonNumbers.text(1e7)).isEqualTo("10000000");
        assertThat(JsonNumbers.text(1.0 / 3)).isEqualTo("0.333333333333");
    }

    private static List<String> errors(JsonNode tree) throws IOException {
        try (InputStream in =
                Objects.requireNonNull(JsonReport.class.getClassLoader().getResourceAsStream(JsonReport.SCHEMA))) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            Schema schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                    .getSchema(text);
            return schema.validate(tree).stream().map(Object::toString).toList();
        }
    }
}
