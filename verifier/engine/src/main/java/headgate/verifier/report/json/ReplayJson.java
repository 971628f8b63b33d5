package headgate.verifier.report.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import headgate.api.unit.Micrometres;
import headgate.verifier.plot.DensityLadder;
import headgate.verifier.plot.PlotResult;
import headgate.verifier.plot.PlotStudy;
import headgate.verifier.plot.PlotSummary;
import headgate.verifier.plot.Proposal;
import headgate.verifier.replay.ActionObserver;
import headgate.verifier.replay.ArmUse;
import headgate.verifier.replay.Miss;
import headgate.verifier.replay.ReplayOutcome;
import headgate.verifier.report.Plain;
import headgate.verifier.report.ReplayReport;
import headgate.verifier.report.Subject;
import headgate.verifier.trial.Standing;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;

/** Writes a replay as JSON (RFC 8259): indented by two, lines ended by a line feed, fields in a fixed order, SI units. */
public final class ReplayJson {

    /** The value of the field {@code format}. */
    public static final String FORMAT = "headgate.replay/1";

    /** Where the schema of what is written lies among the resources. */
    public static final String SCHEMA = "headgate/schemas/replay.schema.json";

    private final JsonGenerator json;

    private ReplayJson(JsonGenerator json) {
        this.json = json;
    }

    /**
     * Writes a replay.
     *
     * @param report the replay
     * @return the text, with a line feed at its end
     */
    public static String of(ReplayReport report) {
        return document(json -> new ReplayJson(json).write(report));
    }

    /**
     * Writes that a replay came to nothing.
     *
     * @param reason why, as a sentence
     * @return the text, with a line feed at its end
     */
    public static String undecided(String reason) {
        return document(json -> {
            json.writeStartObject();
            json.writeStringField("format", FORMAT);
            json.writeStringField("standing", word(Standing.UNDECIDED));
            json.writeArrayFieldStart("verdicts");
            json.writeString(Plain.line(reason));
            json.writeEndArray();
            json.writeEndObject();
        });
    }

    private interface Body {
        void write(JsonGenerator json) throws IOException;
    }

    private static String document(Body body) {
        StringWriter text = new StringWriter();
        DefaultIndenter indent = new DefaultIndenter("  ", "\n");
        try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
            json.setPrettyPrinter(
                    new DefaultPrettyPrinter().withObjectIndenter(indent).withArrayIndenter(indent));
            body.write(json);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return text.append('\n').toString();
    }

    private void write(ReplayReport report) throws IOException {
        json.writeStartObject();
        json.writeStringField("format", FORMAT);
        json.writeStringField("program", report.edition().program());
        json.writeStringField("title", report.title());
        json.writeStringField("standing", word(report.standing()));
        json.writeArrayFieldStart("verdicts");
        for (String verdict : report.verdicts()) {
            json.writeString(verdict);
        }
        json.writeEndArray();
        PlotSummary.Wanted wanted = report.summary().wanted();
        json.writeObjectFieldStart("wanted");
        number("speed", wanted.speed());
        number("coverage", wanted.coverage());
        number("confidence", wanted.confidence());
        json.writeEndObject();
        json.writeArrayFieldStart("takenAsPerfect");
        for (String missing : report.missing()) {
            json.writeString(missing);
        }
        json.writeEndArray();
        densityBorne(report.study());
        json.writeArrayFieldStart("remedies");
        for (Proposal proposal : report.study().proposals()) {
            json.writeStartObject();
            json.writeStringField("kind", proposal.edit().kind());
            json.writeStringField("text", proposal.edit().text());
            number("coverage", proposal.coverage().mean());
            number("coverageAtLeast", proposal.coverage().lower());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("groups");
        for (PlotSummary.Group group : report.summary().groups()) {
            group(group, report.summary().grid());
        }
        json.writeEndArray();
        json.writeArrayFieldStart("stands");
        for (PlotResult plot : report.plots()) {
            plot(plot);
        }
        json.writeEndArray();
        timeline(report);
        json.writeNumberField("answersAsked", report.study().asked());
        json.writeArrayFieldStart("files");
        for (Subject subject : report.subjects()) {
            json.writeStartObject();
            json.writeStringField("kind", subject.kind());
            json.writeStringField("name", subject.name());
            json.writeStringField("sha256", subject.sha256());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private void number(String name, double value) throws IOException {
        json.writeFieldName(name);
        json.writeNumber(JsonNumbers.text(value));
    }

    private void number(String name, Optional<Double> value) throws IOException {
        if (value.isPresent()) {
            number(name, value.get());
        } else {
            json.writeNullField(name);
        }
    }

    private void count(String name, OptionalLong value) throws IOException {
        if (value.isPresent()) {
            json.writeNumberField(name, value.getAsLong());
        } else {
            json.writeNullField(name);
        }
    }

    private void densityBorne(PlotStudy study) throws IOException {
        if (study.density().isEmpty()) {
            json.writeNullField("densityBorne");
            return;
        }
        DensityLadder ladder = study.density().get();
        json.writeObjectFieldStart("densityBorne");
        number("speed", ladder.speed());
        number("density", ladder.borne());
        json.writeBooleanField("noHigherOneTried", ladder.toTheTop());
        json.writeArrayFieldStart("densities");
        for (DensityLadder.Rung rung : ladder.rungs()) {
            json.writeStartObject();
            number("density", rung.density());
            cell(rung.cell());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void group(PlotSummary.Group group, List<Double> grid) throws IOException {
        json.writeStartObject();
        json.writeStringField("name", ReplayReport.name(group));
        json.writeBooleanField("madeUp", group.madeUp());
        number("density", group.density().stream().boxed().findFirst());
        json.writeNumberField("stands", group.plots());
        json.writeBooleanField("judged", group.judged());
        number("bestSpeed", group.best());
        json.writeBooleanField("noHigherOneTried", group.toTheTop());
        json.writeArrayFieldStart("speeds");
        for (PlotSummary.Cell cell : group.cells()) {
            json.writeStartObject();
            number("speed", cell.speed());
            json.writeBooleanField("refining", !grid.contains(cell.speed()));
            cell(cell);
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    /** The fields of a cell beside what it stands for. */
    private void cell(PlotSummary.Cell cell) throws IOException {
        json.writeStringField("standing", word(cell.standing()));
        number(
                "coverage",
                cell.targets() == 0
                        ? Optional.empty()
                        : Optional.of(cell.coverage().mean()));
        number("coverageAtLeast", cell.coverage().lower());
        number("coverageAtMost", cell.coverage().upper());
        json.writeStringField("from", cell.coverage().of());
        json.writeNumberField("targets", cell.targets());
        json.writeNumberField("successful", cell.successful());
        missed(cell.missed());
        json.writeNumberField("cropPlants", cell.cropPlants());
        json.writeNumberField("cropLost", cell.cropLost());
    }

    /** What each arm did first, on the first stand, at the wanted speed. */
    private void timeline(ReplayReport report) throws IOException {
        Optional<ReplayReport.Shown> shown = report.shown();
        if (shown.isEmpty()) {
            json.writeNullField("timeline");
            return;
        }
        json.writeObjectFieldStart("timeline");
        json.writeStringField("stand", shown.get().plot().name());
        number("speed", shown.get().pass().outcome().speed());
        json.writeArrayFieldStart("actions");
        for (ActionObserver.Done action : shown.get().pass().timeline()) {
            json.writeStartObject();
            json.writeStringField("arm", report.arms().get(action.arm()));
            number("plantX", Micrometres.toMetres(action.plantX()));
            number("plantY", Micrometres.toMetres(action.plantY()));
            number("shiftFrom", action.shiftFrom());
            number("start", action.start());
            number("contactStart", action.contactStart());
            number("contactEnd", action.contactEnd());
            number("end", action.end());
            json.writeNumberField("treated", action.treated());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void missed(Map<Miss, Long> missed) throws IOException {
        json.writeObjectFieldStart("missed");
        for (Miss why : Miss.values()) {
            json.writeNumberField(word(why), missed.getOrDefault(why, 0L));
        }
        json.writeEndObject();
    }

    private void plot(PlotResult plot) throws IOException {
        json.writeStartObject();
        json.writeStringField("name", plot.name());
        json.writeStringField("sha256", plot.sha256());
        json.writeBooleanField("madeUp", plot.madeUp());
        number("density", plot.density().stream().boxed().findFirst());
        json.writeNumberField("answersAsked", plot.asked());
        json.writeArrayFieldStart("speeds");
        for (PlotResult.Pass pass : plot.passes()) {
            outcome(pass.outcome());
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void outcome(ReplayOutcome outcome) throws IOException {
        json.writeStartObject();
        number("speed", outcome.speed());
        json.writeNumberField("targets", outcome.targets());
        json.writeNumberField("seen", outcome.seen());
        json.writeNumberField("allowed", outcome.allowed());
        json.writeNumberField("reached", outcome.reached());
        json.writeNumberField("successful", outcome.successful());
        number("coverage", outcome.targets() == 0 ? Optional.empty() : Optional.of(outcome.coverage()));
        json.writeNumberField("alongside", outcome.alongside());
        json.writeNumberField("falseActions", outcome.falseActions());
        json.writeNumberField("outsideOfTheGround", outcome.beside());
        count("lostToCapacity", outcome.lostToCapacity());
        count("lostToDispatch", outcome.lostToDispatch());
        missed(outcome.missed());
        json.writeObjectFieldStart("crop");
        json.writeNumberField("plants", outcome.crop().plants());
        json.writeNumberField("lost", outcome.crop().lost());
        json.writeNumberField("touched", outcome.crop().touched());
        json.writeEndObject();
        json.writeObjectFieldStart("plugs");
        json.writeNumberField("actions", outcome.planting().actions());
        json.writeNumberField("emptyCells", outcome.planting().empty());
        json.writeNumberField("doubles", outcome.planting().doubles());
        json.writeNumberField("fallen", outcome.planting().fallen());
        json.writeNumberField("bare", outcome.planting().bare());
        json.writeEndObject();
        number("travelled", outcome.travelled());
        number("stopped", outcome.stopped());
        json.writeArrayFieldStart("arms");
        for (ArmUse arm : outcome.arms()) {
            json.writeStartObject();
            json.writeStringField("arm", arm.arm());
            json.writeNumberField("actions", arm.actions());
            number("acting", arm.acting());
            number("shifting", arm.shifting());
            json.writeNumberField("refills", arm.refills());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }
}
