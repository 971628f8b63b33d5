package headgate.app.console;

import com.fasterxml.jackson.core.JsonGenerator;
import headgate.runtime.origin.FileProblem;
import java.io.IOException;
import java.util.List;

/** Prints complaints, as lines for people or as a document for programs. */
public final class Complaints {

    /** Format of the document. */
    public static final String FORMAT = "headgate.error/1";

    private Complaints() {}

    /**
     * Prints complaints: lines go beside the results, a document takes the place of the result.
     *
     * @param complaints what is wrong
     * @param end how the run ends
     * @param json true for a document
     * @param console where to print
     */
    public static void print(List<Complaint> complaints, ExitCode end, boolean json, Console console) {
        if (json) {
            console.out().print(Document.of(FORMAT, document -> write(complaints, end, document)));
        } else {
            complaints.forEach(each -> console.warn("headgate: " + each.line()));
        }
    }

    private static void write(List<Complaint> complaints, ExitCode end, JsonGenerator json) throws IOException {
        json.writeNumberField("exit", end.number());
        json.writeArrayFieldStart("errors");
        for (Complaint each : complaints) {
            FileProblem at = each.located();
            json.writeStartObject();
            json.writeStringField("file", each.place());
            json.writeFieldName("line");
            number(at == null ? 0 : at.place().line(), json);
            json.writeFieldName("column");
            number(at == null ? 0 : at.place().column(), json);
            json.writeStringField("field", at == null ? null : at.path());
            json.writeStringField("found", at == null ? null : at.found());
            json.writeStringField("expected", at == null ? null : at.expected());
            json.writeStringField("message", each.message());
            json.writeStringField("advice", at == null ? each.advice() : at.advice());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void number(int known, JsonGenerator json) throws IOException {
        if (known > 0) {
            json.writeNumber(known);
        } else {
            json.writeNull();
        }
    }
}
