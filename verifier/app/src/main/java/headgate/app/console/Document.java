package headgate.app.console;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;

/** Writes what a command answers to programs: one JSON object with its format on top, indented by two, lines ended by LF. */
public final class Document {

    private Document() {}

    /** Writes the fields of a document after its format. */
    @FunctionalInterface
    public interface Body {

        /**
         * Writes the fields.
         *
         * @param json stands inside the document's object
         * @throws IOException never, since the text is kept in memory
         */
        void write(JsonGenerator json) throws IOException;
    }

    /**
     * Writes a document.
     *
     * @param format its format, such as "headgate.doctor/1"
     * @param body writes its other fields
     * @return the text, with a line feed at its end
     */
    public static String of(String format, Body body) {
        StringWriter text = new StringWriter();
        DefaultIndenter indent = new DefaultIndenter("  ", "\n");
        DefaultPrettyPrinter printer =
                new DefaultPrettyPrinter().withObjectIndenter(indent).withArrayIndenter(indent);
        try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
            json.setPrettyPrinter(printer);
            json.writeStartObject();
            json.writeStringField("format", format);
            body.write(json);
            json.writeEndObject();
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return text.append('\n').toString();
    }
}
