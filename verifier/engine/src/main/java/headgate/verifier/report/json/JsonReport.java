package headgate.verifier.report.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import headgate.api.shape.Interval;
import headgate.api.shape.Point3;
import headgate.api.unit.Micrometres;
import headgate.verifier.check.Comparison;
import headgate.verifier.check.Dimension;
import headgate.verifier.check.Measure;
import headgate.verifier.check.Outcome;
import headgate.verifier.check.Term;
import headgate.verifier.check.Witness;
import headgate.verifier.interlock.Interlock;
import headgate.verifier.interlock.Zone;
import headgate.verifier.judge.Limit;
import headgate.verifier.report.Advice;
import headgate.verifier.report.ArmGaps;
import headgate.verifier.report.Entry;
import headgate.verifier.report.Report;
import headgate.verifier.report.Section;
import headgate.verifier.report.SetPoint;
import headgate.verifier.report.Subject;
import headgate.verifier.report.Tightest;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Writes a report as JSON (RFC 8259): indented by two, lines ended by a line feed, fields in a fixed order. */
public final class JsonReport {

    /** The value of the field {@code format}. */
    public static final String FORMAT = "headgate.report/1";

    /** Where the schema lies among the resources. */
    public static final String SCHEMA = "headgate/schemas/report.schema.json";

    private final JsonGenerator json;

    private JsonReport(JsonGenerator json) {
        this.json = json;
    }

    /**
     * Writes a report.
     *
     * @param report the report
     * @return the text, with a line feed at its end
     */
    public static String of(Report report) {
        StringWriter text = new StringWriter();
        DefaultIndenter indent = new DefaultIndenter("  ", "\n");
        try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
            json.setPrettyPrinter(
                    new DefaultPrettyPrinter().withObjectIndenter(indent).withArrayIndenter(indent));
            new JsonReport(json).report(report);
        } catch (IOException e) {
            throw new UncheckedIOException("a report is written to memory, where writing does not fail", e);
        }
        return text.append('\n').toString();
    }

    private void report(Report report) throws IOException {
        json.writeStartObject();
        json.writeStringField("format", FORMAT);
        json.writeStringField("title", report.title());
        json.writeStringField("verdict", report.verdict().label());
        json.writeBooleanField("fits", report.verdict().isFit() && !report.broken());
        json.writeStringField("headline", report.headline());
        json.writeStringField("scope", report.scope());
        json.writeObjectFieldStart("versions");
        json.writeStringField("program", report.edition().program());
        json.writeStringField("ruleBook", report.edition().ruleBook());
        json.writeEndObject();
        list("subjects", report.subjects(), this::subject);
        optional("tightest", report.tightest(), this::tightest);
        list("setPoints", report.setPoints(), this::setPoint);
        list("idleArms", report.idleArms(), json::writeString);
        list("gaps", report.gaps(), this::gaps);
        list("limits", report.limits(), this::limit);
        counts(report);
        list("sections", report.sections(), this::section);
        list("notes", report.notes(), json::writeString);
        list("cautions", report.cautions(), json::writeString);
        list("faults", report.faults(), json::writeString);
        json.writeEndObject();
    }

    private void subject(Subject subject) throws IOException {
        json.writeStartObject();
        json.writeStringField("kind", subject.kind());
        json.writeStringField("name", subject.name());
        json.writeStringField("sha256", subject.sha256());
        json.writeEndObject();
    }

    private void tightest(Tightest place) throws IOException {
        json.writeStartObject();
        json.writeStringField("rule", place.ruleId());
        json.writeStringField("outcome", place.outcome().label());
        json.writeStringField("subject", place.subject());
        json.writeFieldName("comparison");
        comparison(place.comparison());
        json.writeFieldName("witness");
        witness(place.witness());
        json.writeEndObject();
    }

    private void setPoint(SetPoint at) throws IOException {
        json.writeStartObject();
        json.writeStringField("arm", at.arm());
        json.writeStringField("beam", at.beam());
        json.writeArrayFieldStart("lanes");
        for (int lane : at.lanes()) {
            json.writeNumber(lane);
        }
        json.writeEndArray();
        json.writeStringField("head", at.head());
        json.writeBooleanField("turned", at.turned());
        length("x", at.x());
        length("y", at.y());
        optional("workHeights", at.workHeights(), span -> {
            json.writeStartObject();
            length("least", span.least());
            length("most", span.most());
            json.writeEndObject();
        });
        length("liftTop", at.liftTop());
        length("groundMotion", at.groundMotion());
        json.writeEndObject();
    }

    private void gaps(ArmGaps pair) throws IOException {
        json.writeStartObject();
        json.writeStringField("right", pair.right());
        json.writeStringField("left", pair.left());
        length("required", pair.required());
        json.writeBooleanField("inTurn", pair.inTurn());
        list("stances", pair.gaps(), gap -> {
            json.writeStartObject();
            json.writeStringField("right", gap.right().label());
            json.writeStringField("left", gap.left().label());
            optional("gap", gap.gap(), this::number);
            json.writeEndObject();
        });
        json.writeEndObject();
    }

    private void limit(Limit limit) throws IOException {
        json.writeStartObject();
        json.writeStringField("subject", limit.subject());
        if (limit instanceof Limit.Kept kept) {
            json.writeStringField("quantity", kept.quantity());
            quantity("least", kept.least(), kept.dimension());
            quantity("most", kept.most(), kept.dimension());
        } else if (limit instanceof Limit.Apart apart) {
            json.writeFieldName("interlock");
            interlock(apart.interlock());
        }
        json.writeStringField("text", limit.text());
        json.writeEndObject();
    }

    private void interlock(Interlock interlock) throws IOException {
        json.writeStartObject();
        json.writeStringField("first", interlock.first());
        json.writeStringField("second", interlock.second());
        length("required", interlock.required());
        list("firstNever", interlock.firstNever(), this::zone);
        list("secondNever", interlock.secondNever(), this::zone);
        list("firstWhileSecondActs", interlock.firstWhileSecondActs(), this::zone);
        list("secondWhileFirstActs", interlock.secondWhileFirstActs(), this::zone);
        list("offsets", interlock.offsets(), this::zone);
        json.writeBooleanField("neverTogether", interlock.neverTogether());
        json.writeFieldName("excess");
        number(interlock.excess());
        json.writeEndObject();
    }

    private void zone(Zone zone) throws IOException {
        json.writeStartObject();
        side("x", zone.x());
        side("y", zone.y());
        side("z", zone.z());
        json.writeEndObject();
    }

    private void side(String axis, Interval side) throws IOException {
        json.writeObjectFieldStart(axis);
        length("least", Micrometres.toMetres(side.least()));
        length("most", Micrometres.toMetres(side.most()));
        json.writeEndObject();
    }

    private void counts(Report report) throws IOException {
        json.writeObjectFieldStart("counts");
        json.writeNumberField("rules", report.counts().rules());
        json.writeNumberField("findings", report.counts().all());
        for (Map.Entry<Outcome, Integer> count : report.counts().findings().entrySet()) {
            json.writeNumberField(count.getKey().label(), count.getValue());
        }
        json.writeNumberField("examined", report.counts().examined());
        json.writeEndObject();
    }

    private void section(Section section) throws IOException {
        json.writeStartObject();
        json.writeStringField("family", section.family().id());
        json.writeStringField("title", section.family().title());
        json.writeStringField("about", section.family().about());
        list("findings", section.entries(), this::entry);
        list("notChecked", section.topics(), json::writeString);
        json.writeEndObject();
    }

    private void entry(Entry entry) throws IOException {
        json.writeStartObject();
        json.writeStringField("rule", entry.rule().id());
        json.writeStringField("title", entry.rule().title());
        json.writeStringField("severity", entry.rule().severity().label());
        json.writeStringField("outcome", entry.outcome().label());
        json.writeStringField("subject", entry.subject());
        json.writeStringField("message", entry.message());
        optional("comparison", entry.comparison(), this::comparison);
        list("terms", entry.terms(), this::term);
        optional("witness", entry.witness(), this::witness);
        optional("field", entry.field(), json::writeString);
        optional("place", entry.place(), place -> {
            json.writeStartObject();
            json.writeStringField("file", place.file());
            json.writeNumberField("line", place.line());
            json.writeNumberField("column", place.column());
            json.writeEndObject();
        });
        json.writeNumberField("examined", entry.examined());
        json.writeStringField("source", entry.rule().source());
        list("remedies", entry.remedies(), this::advice);
        json.writeEndObject();
    }

    private void comparison(Comparison comparison) throws IOException {
        json.writeStartObject();
        quantity("measured", comparison.measured());
        json.writeStringField("relation", comparison.relation().label());
        quantity("limit", comparison.limit());
        quantity("margin", comparison.margin(), comparison.measured().dimension());
        json.writeBooleanField("holds", comparison.holds());
        json.writeEndObject();
    }

    private void term(Term term) throws IOException {
        json.writeStartObject();
        json.writeStringField("name", term.name());
        quantity("figure", term.measure());
        json.writeEndObject();
    }

    private void witness(Witness witness) throws IOException {
        json.writeStartObject();
        json.writeStringField("frame", "carriage");
        json.writeStringField("label", witness.label());
        json.writeFieldName("from");
        point(witness.from());
        json.writeFieldName("to");
        point(witness.to());
        optional("fold", witness.fold(), fold -> {
            json.writeStartObject();
            json.writeStringField("stance", fold.stance());
            json.writeNumberField("step", fold.step());
            json.writeEndObject();
        });
        json.writeEndObject();
    }

    private void point(Point3 point) throws IOException {
        json.writeStartObject();
        length("x", point.xMetres());
        length("y", point.yMetres());
        length("z", point.zMetres());
        json.writeEndObject();
    }

    private void advice(Advice advice) throws IOException {
        json.writeStartObject();
        json.writeStringField("text", advice.text());
        json.writeStringField("outcome", advice.outcome());
        json.writeStringField("kind", advice.kind());
        json.writeObjectFieldStart("figures");
        for (Map.Entry<String, Object> figure : advice.figures().entrySet()) {
            json.writeFieldName(figure.getKey());
            if (figure.getValue() instanceof Number number) {
                number(number.doubleValue());
            } else {
                json.writeString(figure.getValue().toString());
            }
        }
        json.writeEndObject();
        json.writeStringField("verdict", advice.verdict().label());
        list("breaks", advice.breaks(), json::writeString);
        json.writeEndObject();
    }

    private void quantity(String field, Measure measure) throws IOException {
        quantity(field, measure.value(), measure.dimension());
    }

    private void quantity(String field, double value, Dimension dimension) throws IOException {
        json.writeObjectFieldStart(field);
        json.writeFieldName("value");
        number(value);
        json.writeStringField("unit", dimension.siUnit());
        json.writeStringField("text", dimension.text(value));
        json.writeEndObject();
    }

    /** A length in metres. */
    private void length(String field, double metres) throws IOException {
        json.writeFieldName(field);
        number(metres);
    }

    private void number(double value) throws IOException {
        if (Double.isFinite(value)) {
            json.writeNumber(JsonNumbers.text(value));
        } else {
            json.writeNull();
        }
    }

    /** Writes one value. */
    private interface Writing<T> {
        void write(T value) throws IOException;
    }

    private <T> void list(String field, List<T> values, Writing<T> writing) throws IOException {
        json.writeArrayFieldStart(field);
        for (T value : values) {
            writing.write(value);
        }
        json.writeEndArray();
    }

    private <T> void optional(String field, Optional<T> value, Writing<T> writing) throws IOException {
        json.writeFieldName(field);
        if (value.isPresent()) {
            writing.write(value.get());
        } else {
            json.writeNull();
        }
    }
}
