package headgate.app.command;

import com.fasterxml.jackson.core.JsonGenerator;
import headgate.app.console.Complaint;
import headgate.app.console.Console;
import headgate.app.console.Document;
import headgate.app.console.ExitCode;
import headgate.app.console.Paint;
import headgate.app.console.RefusedInputException;
import headgate.app.console.Wrapped;
import headgate.verifier.check.Family;
import headgate.verifier.check.Rule;
import headgate.verifier.check.RuleInfo;
import headgate.verifier.rules.RuleBook;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Lists the rule book, or explains one rule. */
@Command(
        name = "rules",
        description = "Lists the rules, or explains one: what must hold, why, how it is decided, and its source.",
        mixinStandardHelpOptions = true)
final class RulesCommand implements Callable<Integer> {

    private final Console console;

    @Mixin
    private OutputOptions output = new OutputOptions();

    @Parameters(arity = "0..1", paramLabel = "ID", description = "A rule's id, such as clearance.arm-to-arm.")
    private @Nullable String id;

    RulesCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        List<RuleInfo> chosen = id == null ? all() : List.of(find(id));
        if (output.json) {
            console.out().print(Document.of("headgate.rules/1", json -> write(chosen, json)));
        } else if (id == null) {
            list(chosen);
        } else {
            explain(chosen.get(0));
        }
        return ExitCode.FITS.number();
    }

    private static List<RuleInfo> all() {
        return RuleBook.all().stream().map(Rule::info).toList();
    }

    private static RuleInfo find(String id) {
        return RuleBook.find(id)
                .map(Rule::info)
                .orElseThrow(() -> new RefusedInputException(Complaint.about(
                        "rules", "there is no rule '" + id + "'.", "Type 'headgate rules' for the list.")));
    }

    private void list(List<RuleInfo> rules) {
        console.say("Rule book " + RuleBook.VERSION + ", " + rules.size() + " rules");
        for (Family family : Family.values()) {
            List<RuleInfo> own =
                    rules.stream().filter(each -> each.family() == family).toList();
            if (!own.isEmpty()) {
                console.say("");
                console.say(console.paint(Paint.BOLD, family.title()) + ": " + family.about());
                own.forEach(each -> console.say(String.format(Locale.ROOT, "  %-34s %s", each.id(), each.title())));
            }
        }
    }

    private void explain(RuleInfo rule) {
        console.say(console.paint(Paint.BOLD, rule.id()));
        Wrapped.lines("  ", rule.title() + ".").forEach(console::say);
        paragraph("Why", rule.why());
        paragraph("How", rule.how());
        paragraph("Source", rule.source());
        paragraph("A failure is", rule.severity().label());
        paragraph("Since rule book", rule.since());
        if (!rule.needs().isEmpty()) {
            paragraph("Needs", String.join(", ", rule.needs()));
        }
    }

    private void paragraph(String heading, String text) {
        console.say("");
        console.say(heading + ":");
        Wrapped.lines("  ", text).forEach(console::say);
    }

    private static void write(List<RuleInfo> rules, JsonGenerator json) throws IOException {
        json.writeStringField("ruleBook", RuleBook.VERSION);
        json.writeArrayFieldStart("rules");
        for (RuleInfo each : rules) {
            json.writeStartObject();
            json.writeStringField("id", each.id());
            json.writeStringField("family", each.family().id());
            json.writeStringField("title", each.title());
            json.writeStringField("why", each.why());
            json.writeStringField("how", each.how());
            json.writeStringField("source", each.source());
            json.writeStringField("severity", each.severity().label());
            json.writeStringField("since", each.since());
            json.writeArrayFieldStart("needs");
            for (String need : each.needs()) {
                json.writeString(need);
            }
            json.writeEndArray();
            json.writeEndObject();
        }
        json.writeEndArray();
    }
}
