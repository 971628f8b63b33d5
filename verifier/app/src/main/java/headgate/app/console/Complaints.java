package headgate.app.console;

import com.fasterxml.jackson.core.JsonGenerator;
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
            json.writeStartObject();
            json.writeStringField("place", each.place());
            json.writeStringField("message", each.message());
            json.writeStringField("advice", each.advice());
            json.writeEndObject();
        }
        json.writeEndArray();
    }
}
