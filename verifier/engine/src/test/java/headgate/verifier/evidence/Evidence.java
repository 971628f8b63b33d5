package headgate.verifier.evidence;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A file in {@code docs/evidence}: what was claimed, the command that shows it, and what the last long run found. A flat
 * list of facts, so that a test can compare each with what a short run of today finds.
 *
 * @param id the file's name without its ending
 * @param facts names and values, in the order to show: text, whole numbers or decimals as text
 */
public record Evidence(String id, Map<String, String> facts) {

    private static final String FORMAT = "headgate.evidence/1";

    /** Begins a file. */
    public static Evidence of(String id) {
        return new Evidence(id, new LinkedHashMap<>());
    }

    /** Adds a fact. */
    public Evidence with(String name, Object value) {
        facts.put(name, String.valueOf(value));
        return this;
    }

    /** A fact that must be there. */
    public String fact(String name) {
        String value = facts.get(name);
        if (value == null) {
            throw new AssertionError("docs/evidence/" + id + ".json has no fact \"" + name + "\"");
        }
        return value;
    }

    /** A fact that must be a whole number. */
    public long whole(String name) {
        return Long.parseLong(fact(name));
    }

    /** A fact that must be a number. */
    public double decimal(String name) {
        return Double.parseDouble(fact(name));
    }

    /** Reads a committed file. */
    public static Evidence read(String id) throws IOException {
        Evidence evidence = of(id);
        try (JsonParser parser = new JsonFactory().createParser(Files.readString(path(id)))) {
            for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
                if (token.isScalarValue()) {
                    evidence.with(parser.currentName(), parser.getText());
                }
            }
        }
        if (!evidence.fact("format").equals(FORMAT)) {
            throw new AssertionError("docs/evidence/" + id + ".json must have format " + FORMAT);
        }
        return evidence;
    }

    /** Writes the file. */
    public void write() throws IOException {
        Files.createDirectories(path(id).getParent());
        Files.writeString(path(id), json(), StandardCharsets.UTF_8);
    }

    private String json() throws IOException {
        StringWriter text = new StringWriter();
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter().withObjectIndenter(new DefaultIndenter("  ", "\n"));
        try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
            json.setPrettyPrinter(printer);
            json.writeStartObject();
            json.writeStringField("format", FORMAT);
            json.writeStringField("id", id);
            for (Map.Entry<String, String> fact : facts.entrySet()) {
                json.writeFieldName(fact.getKey());
                if (fact.getValue().matches("-?(0|[1-9][0-9]*)(\\.[0-9]+)?")) {
                    json.writeNumber(fact.getValue());
                } else {
                    json.writeString(fact.getValue());
                }
            }
            json.writeEndObject();
        }
        return text.append('\n').toString();
    }

    private static Path path(String id) {
        // Maven runs the tests in the module's folder.
        return Path.of("..", "..", "docs", "evidence", id + ".json");
    }
}
