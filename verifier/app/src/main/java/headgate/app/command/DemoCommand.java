package headgate.app.command;

import com.fasterxml.jackson.core.JsonGenerator;
import headgate.app.check.Checked;
import headgate.app.check.Checker;
import headgate.app.check.DemoCase;
import headgate.app.check.ReportFiles;
import headgate.app.console.Complaint;
import headgate.app.console.Console;
import headgate.app.console.Document;
import headgate.app.console.ExitCode;
import headgate.app.console.Paint;
import headgate.app.console.RefusedInputException;
import headgate.app.output.ReportFolder;
import headgate.app.output.SampleFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Checks the sample heads on the sample carriage, so that a newcomer sees a verdict of each kind. */
@Command(
        name = "demo",
        description = "Checks the sample gripper and planter, and writes their reports.",
        mixinStandardHelpOptions = true)
final class DemoCommand implements Callable<Integer> {

    /** Where the user gets a copy of the samples, to change them and check again. */
    private static final String SAMPLES = "files";

    private final Console console;

    @Mixin
    private OutputOptions output = new OutputOptions();

    @Option(
            names = "--out",
            paramLabel = "DIR",
            defaultValue = "headgate-demo",
            description = "Where the reports go, one folder for each; ${DEFAULT-VALUE} if not given.")
    private Path out = Path.of("");

    DemoCommand(Console console) {
        this.console = console;
    }

    /** One case, what came of it, and where its report is. */
    private record Shown(DemoCase demo, Checked checked, Path folder) {

        boolean asExpected() {
            return checked.end() == (demo.fits() ? ExitCode.FITS : ExitCode.REFUSED);
        }
    }

    @Override
    public Integer call() {
        Path files = console.home().resolve("demo");
        if (!Files.isDirectory(files)) {
            throw new RefusedInputException(Complaint.about(
                    files.toString(), "the sample files are not there.", "Start the program by its launcher."));
        }
        SampleFiles.copyMissing(files, out.resolve(SAMPLES));
        List<Shown> shown = DemoCase.ALL.stream().map(each -> show(each, files)).toList();
        ExitCode end = shown.stream().allMatch(Shown::asExpected) ? ExitCode.FITS : ExitCode.FAULT;
        if (output.json) {
            console.out().print(Document.of("headgate.demo/1", json -> write(shown, end, json)));
        } else {
            summary(shown);
        }
        return end.number();
    }

    private Shown show(DemoCase demo, Path files) {
        Path folder = out.resolve(demo.name());
        ReportFolder reports = ReportFolder.at(folder);
        Checked checked = new Checker(BuildVersion.read()).check(demo.input(files));
        reports.put(ReportFiles.of(checked, false));
        CheckTalk talk = new CheckTalk(console);
        if (!output.json) {
            console.say(console.paint(Paint.BOLD, demo.question()));
            talk.tell(
                    checked,
                    ReportFiles.of(checked, false).keySet().stream()
                            .map(name -> folder.resolve(name).toString())
                            .toList());
            console.say("");
        }
        talk.tellFaults(checked);
        return new Shown(demo, checked, folder);
    }

    private void summary(List<Shown> shown) {
        for (Shown each : shown) {
            if (!each.asExpected()) {
                console.warn("headgate: demo " + each.demo().name() + ": came to '"
                        + each.checked().report().verdict().label()
                        + "', which is not what this release was packed with: the program is at fault.");
            }
        }
        console.say("The sample files are in " + out.resolve(SAMPLES) + ", to change and to check again.");
        console.say("The scenario is invented, and so are its figures: Lowfield and its carriage do not exist.");
    }

    private static void write(List<Shown> shown, ExitCode end, JsonGenerator json) throws IOException {
        json.writeNumberField("exit", end.number());
        json.writeArrayFieldStart("checks");
        for (Shown each : shown) {
            json.writeStartObject();
            json.writeStringField("name", each.demo().name());
            json.writeStringField("question", each.demo().question());
            json.writeStringField("verdict", each.checked().report().verdict().label());
            json.writeStringField("report", each.folder().toString());
            json.writeEndObject();
        }
        json.writeEndArray();
    }
}
