package headgate.app.command;

import com.fasterxml.jackson.core.JsonGenerator;
import headgate.api.unit.Micrometres;
import headgate.app.check.Fitted;
import headgate.app.console.Console;
import headgate.app.console.Document;
import headgate.app.console.Wrapped;
import headgate.verifier.check.Case;
import headgate.verifier.check.Dimension;
import headgate.verifier.fitting.ChangeOver;
import headgate.verifier.fitting.ServedSpacing;
import headgate.verifier.setup.Setup;
import headgate.verifier.setup.Station;
import java.io.IOException;
import java.util.List;
import java.util.stream.Collectors;

/** Tells which other row spacings a fitting serves, and how long it takes to change to them. */
final class SpacingTalk {

    private SpacingTalk() {}

    /**
     * Tells people.
     *
     * @param fitted what came of the check
     * @param console where to tell it
     */
    static void tell(Fitted fitted, Console console) {
        if (fitted.spacings().isEmpty()) {
            return;
        }
        console.say("");
        console.say("Other row spacings, by lanes, arms, gaps and wheels alone:");
        Case subject = fitted.checked().judgement().subject();
        for (ServedSpacing each : fitted.spacings()) {
            Wrapped.lines("  ", sentence(subject, each)).forEach(console::say);
        }
    }

    private static String sentence(Case subject, ServedSpacing each) {
        String spacing = Dimension.LENGTH.text(each.spacing());
        if (each.setup().isEmpty()) {
            return spacing + ": not served.";
        }
        String rows = each.isServed(subject)
                ? "served, " + each.rows() + " rows in a pass"
                : "only " + each.rows() + " of " + subject.plan().value().rows().perPass() + " rows in a pass";
        String mounts = each.setup().get().stations().stream()
                .map(s -> s.arm().id() + " at y = " + text(s.mount().y()))
                .collect(Collectors.joining(", "));
        return spacing + ": " + rows + ": " + mounts + ". " + wheels(each)
                + each.fromPlan()
                        .map(SpacingTalk::change)
                        .orElse("There is no order in which the arms can be shifted there clear of one another.");
    }

    private static String wheels(ServedSpacing each) {
        return each.wheelMargin()
                .filter(margin -> margin < 0)
                .map(margin -> "But the wheels lack " + text(-margin) + " between the rows. ")
                .orElse("");
    }

    private static String change(ChangeOver change) {
        String steps = change.steps().stream()
                .map(s -> "shift " + s.arms() + " (" + Dimension.TIME.text(s.time()) + ")")
                .collect(Collectors.joining(", then "));
        return "To change over: lift all (" + Dimension.TIME.text(change.lifting()) + "), "
                + (steps.isEmpty() ? "" : steps + ", ") + "lower (" + Dimension.TIME.text(change.lowering()) + "): "
                + Dimension.TIME.text(change.time()) + " in all.";
    }

    private static String text(long micrometres) {
        return Dimension.LENGTH.text(Micrometres.toMetres(micrometres));
    }

    /**
     * Writes it for programs.
     *
     * @param fitted what came of the check
     * @return a document
     */
    static String json(Fitted fitted) {
        return Document.of("headgate.spacings/1", json -> write(fitted.spacings(), json));
    }

    private static void write(List<ServedSpacing> spacings, JsonGenerator json) throws IOException {
        json.writeArrayFieldStart("spacings");
        for (ServedSpacing each : spacings) {
            json.writeStartObject();
            json.writeNumberField("spacing", each.spacing());
            json.writeNumberField("rows", each.rows());
            json.writeArrayFieldStart("setPoints");
            for (Station s : each.setup().map(Setup::stations).orElse(List.of())) {
                json.writeStartObject();
                json.writeStringField("arm", s.arm().id());
                json.writeNumberField("y", Micrometres.toMetres(s.mount().y()));
                json.writeEndObject();
            }
            json.writeEndArray();
            if (each.wheelMargin().isPresent()) {
                json.writeNumberField(
                        "wheelMargin", Micrometres.toMetres(each.wheelMargin().get()));
            }
            if (each.fromPlan().isPresent()) {
                write(each.fromPlan().get(), json);
            }
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void write(ChangeOver change, JsonGenerator json) throws IOException {
        json.writeObjectFieldStart("changeOver");
        json.writeNumberField("lifting", change.lifting());
        json.writeArrayFieldStart("steps");
        for (ChangeOver.Step step : change.steps()) {
            json.writeStartObject();
            json.writeNumberField("time", step.time());
            json.writeArrayFieldStart("moves");
            for (ChangeOver.Move move : step.moves()) {
                json.writeStartObject();
                json.writeStringField("arm", move.arm());
                json.writeNumberField("from", Micrometres.toMetres(move.from()));
                json.writeNumberField("to", Micrometres.toMetres(move.to()));
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeNumberField("lowering", change.lowering());
        json.writeNumberField("time", change.time());
        json.writeEndObject();
    }
}
