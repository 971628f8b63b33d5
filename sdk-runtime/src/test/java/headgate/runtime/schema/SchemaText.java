package headgate.runtime.schema;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import headgate.runtime.form.CountForm;
import headgate.runtime.form.FlagForm;
import headgate.runtime.form.Form;
import headgate.runtime.form.ListForm;
import headgate.runtime.form.NumberForm;
import headgate.runtime.form.ObjectForm;
import headgate.runtime.form.PairForm;
import headgate.runtime.form.QuantityForm;
import headgate.runtime.form.TermForm;
import headgate.runtime.form.TextForm;
import headgate.runtime.form.TupleForm;
import headgate.runtime.form.WordForm;
import headgate.runtime.quantity.WrittenUnit;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Writes the JSON Schema (2020-12) of a kind of file from its form. The schemas that are shipped are what this writes; it
 * is not needed when files are read, so it stands with the tests.
 */
final class SchemaText {

    private final JsonGenerator out;

    /** The objects that stand in several places, each with the name under which it is defined once. */
    private final Map<ObjectForm, String> shared;

    private SchemaText(JsonGenerator out, ObjectForm root) {
        this.out = out;
        List<ObjectForm> seen = new ArrayList<>();
        collect(root, seen);
        this.shared = new LinkedHashMap<>();
        for (ObjectForm object : seen) {
            String name = object.title().replaceFirst("^(a|an|the) ", "").replace(' ', '-');
            if (seen.stream().filter(o -> o == object).count() > 1) {
                shared.putIfAbsent(object, shared.containsValue(name) ? name + "-" + shared.size() : name);
            }
        }
    }

    private static void collect(Form form, List<ObjectForm> seen) {
        if (form instanceof ListForm list) {
            collect(list.item(), seen);
        } else if (form instanceof ObjectForm object) {
            boolean first = seen.stream().noneMatch(o -> o == object);
            seen.add(object);
            if (first) {
                object.fields().forEach(field -> collect(field.form(), seen));
            }
        }
    }

    static String of(Kinds.Subject kind) {
        StringWriter text = new StringWriter();
        DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
        printer.indentArraysWith(indenter);
        printer.indentObjectsWith(indenter);
        try (JsonGenerator generator =
                JsonFactory.builder().build().createGenerator(text).setPrettyPrinter(printer)) {
            SchemaText schema = new SchemaText(generator, kind.form());
            generator.writeStartObject();
            generator.writeStringField("$schema", "https://json-schema.org/draft/2020-12/schema");
            generator.writeStringField("$id", "urn:headgate:schema:" + kind.name() + ":" + kind.version());
            schema.object(kind.form(), kind.form().help());
            schema.definitions();
            generator.writeEndObject();
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return text + "\n";
    }

    private void definitions() throws IOException {
        if (shared.isEmpty()) {
            return;
        }
        out.writeObjectFieldStart("$defs");
        for (Map.Entry<ObjectForm, String> entry : shared.entrySet()) {
            out.writeObjectFieldStart(entry.getValue());
            object(entry.getKey(), entry.getKey().help());
            out.writeEndObject();
        }
        out.writeEndObject();
    }

    private void form(Form form, String help) throws IOException {
        out.writeStartObject();
        if (form instanceof ObjectForm object && shared.containsKey(object)) {
            out.writeStringField("$ref", "#/$defs/" + shared.get(object));
            if (!help.isEmpty()) {
                out.writeStringField("description", help);
            }
        } else if (form instanceof ObjectForm object) {
            object(object, help);
        } else if (form instanceof ListForm list) {
            describe("a list", help);
            out.writeStringField("type", "array");
            out.writeNumberField("minItems", list.least());
            if (list.most() < Integer.MAX_VALUE) {
                out.writeNumberField("maxItems", list.most());
            }
            out.writeFieldName("items");
            form(list.item(), list.item() instanceof ObjectForm item ? item.help() : "");
        } else if (form instanceof PairForm pair) {
            pair(pair, help);
        } else if (form instanceof QuantityForm quantity) {
            quantity(quantity, help);
        } else if (form instanceof NumberForm number) {
            describe("a number", help);
            out.writeStringField("type", "number");
            out.writeFieldName("minimum");
            out.writeNumber(new BigDecimal(number.least()));
            out.writeFieldName("maximum");
            out.writeNumber(new BigDecimal(number.most()));
            example(number);
        } else if (form instanceof CountForm count) {
            describe("a whole number", help);
            out.writeStringField("type", "integer");
            out.writeNumberField("minimum", count.least());
            out.writeNumberField("maximum", count.most());
            example(count);
        } else if (form instanceof FlagForm) {
            describe("true or false", help);
            out.writeStringField("type", "boolean");
            example(form);
        } else if (form instanceof TextForm text) {
            describe(text.phrase(), help);
            out.writeStringField("type", "string");
            out.writeStringField("pattern", text.pattern());
            out.writeNumberField("maxLength", text.longest());
            example(text);
        } else if (form instanceof TermForm term) {
            describe(term.phrase(), sentence(help, "Any word may stand here; known ones are in the examples."));
            out.writeStringField("type", "string");
            out.writeStringField("pattern", TermForm.PATTERN);
            strings("examples", term.known());
        } else if (form instanceof TupleForm tuple) {
            describe("a list of numbers", help);
            out.writeStringField("type", "array");
            out.writeNumberField("minItems", tuple.size());
            out.writeNumberField("maxItems", tuple.size());
            out.writeFieldName("items");
            form(tuple.item(), "");
        } else if (form instanceof WordForm word) {
            describe("a word", help);
            strings("enum", word.words());
        }
        out.writeEndObject();
    }

    private void object(ObjectForm object, String help) throws IOException {
        describe(object.title(), help);
        out.writeStringField("type", "object");
        out.writeObjectFieldStart("properties");
        for (ObjectForm.Field field : object.fields()) {
            out.writeFieldName(field.name());
            form(field.form(), field.help());
        }
        out.writeEndObject();
        strings(
                "required",
                object.fields().stream()
                        .filter(ObjectForm.Field::required)
                        .map(ObjectForm.Field::name)
                        .toList());
        if (!object.choices().isEmpty()) {
            out.writeArrayFieldStart("allOf");
            for (List<String> choice : object.choices()) {
                out.writeStartObject();
                out.writeArrayFieldStart("oneOf");
                for (String name : choice) {
                    out.writeStartObject();
                    strings("required", List.of(name));
                    out.writeEndObject();
                }
                out.writeEndArray();
                out.writeEndObject();
            }
            out.writeEndArray();
        }
        out.writeBooleanField("additionalProperties", false);
    }

    private void pair(PairForm pair, String help) throws IOException {
        describe(pair.ordered() ? "an interval" : "a pair", help);
        out.writeStringField("type", "array");
        out.writeArrayFieldStart("prefixItems");
        form(pair.first(), pair.ordered() ? "The lower end." : "The first.");
        form(pair.second(), pair.ordered() ? "The upper end." : "The second.");
        out.writeEndArray();
        out.writeNumberField("minItems", 2);
        out.writeNumberField("maxItems", 2);
        example(pair);
    }

    private void quantity(QuantityForm quantity, String help) throws IOException {
        String bounds = quantity.leastOpen()
                ? "Above " + quantity.least() + ", at most " + quantity.most() + "."
                : "From " + quantity.least() + " to " + quantity.most() + ".";
        String usual = quantity.usual() == null
                ? ""
                : "Usually " + quantity.usual().least() + " to "
                        + quantity.usual().most() + ".";
        describe(quantity.kind().phrase(), sentence(sentence(help, bounds), usual));
        out.writeStringField("type", "string");
        out.writeStringField("pattern", quantity.pattern());
        strings(
                "x-units",
                quantity.kind().units().stream().map(WrittenUnit::symbol).toList());
        example(quantity);
    }

    private void describe(String title, String help) throws IOException {
        out.writeStringField("title", title);
        if (!help.isEmpty()) {
            out.writeStringField("description", help);
        }
    }

    private static String sentence(String help, String more) {
        return help.isEmpty() || more.isEmpty() ? help + more : help + " " + more;
    }

    private void example(Form form) throws IOException {
        out.writeArrayFieldStart("examples");
        out.writeRawValue(form.example());
        out.writeEndArray();
    }

    private void strings(String name, List<String> values) throws IOException {
        out.writeArrayFieldStart(name);
        for (String value : values) {
            out.writeString(value);
        }
        out.writeEndArray();
    }
}
