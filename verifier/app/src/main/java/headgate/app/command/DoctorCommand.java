package headgate.app.command;

import com.fasterxml.jackson.core.JsonGenerator;
import headgate.app.console.Console;
import headgate.app.console.Document;
import headgate.app.console.ExitCode;
import headgate.app.console.Paint;
import headgate.app.doctor.Diagnosis;
import headgate.app.doctor.Probe;
import headgate.app.doctor.Probes;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Says whether this machine has what the program needs. */
@Command(
        name = "doctor",
        description = "Looks at this machine: Java, memory, walls for partner code, folders, text.",
        mixinStandardHelpOptions = true)
final class DoctorCommand implements Callable<Integer> {

    private final Console console;

    @Mixin
    private OutputOptions output = new OutputOptions();

    DoctorCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        List<Diagnosis> all =
                Probes.all(console.environment()).stream().map(Probe::look).toList();
        boolean usable = all.stream().noneMatch(each -> each.state() == Diagnosis.State.BAD);
        if (output.json) {
            console.out().print(Document.of("headgate.doctor/1", json -> write(all, usable, json)));
        } else {
            all.forEach(this::print);
            console.say(usable ? "This machine can run Headgate." : "This machine cannot run Headgate yet.");
        }
        return (usable ? ExitCode.FITS : ExitCode.INPUT).number();
    }

    private void print(Diagnosis each) {
        Paint paint =
                switch (each.state()) {
                    case GOOD -> Paint.GREEN;
                    case NOTE -> Paint.YELLOW;
                    case BAD -> Paint.RED;
                };
        String state = String.format(Locale.ROOT, "%-5s", word(each));
        console.say(console.paint(paint, state) + String.format(Locale.ROOT, "%-22s", each.subject()) + each.seen());
        if (!each.advice().isEmpty()) {
            console.say(" ".repeat(27) + each.advice());
        }
    }

    private static String word(Diagnosis each) {
        return each.state().name().toLowerCase(Locale.ROOT);
    }

    private static void write(List<Diagnosis> all, boolean usable, JsonGenerator json) throws IOException {
        json.writeBooleanField("usable", usable);
        json.writeArrayFieldStart("checks");
        for (Diagnosis each : all) {
            json.writeStartObject();
            json.writeStringField("subject", each.subject());
            json.writeStringField("state", word(each));
            json.writeStringField("seen", each.seen());
            json.writeStringField("advice", each.advice());
            json.writeEndObject();
        }
        json.writeEndArray();
    }
}
