package headgate.app.command;

import headgate.app.check.Checked;
import headgate.app.check.Checker;
import headgate.app.check.ReportFiles;
import headgate.app.console.Complaint;
import headgate.app.console.Console;
import headgate.app.console.RefusedInputException;
import headgate.app.output.ReportFolder;
import headgate.verifier.report.json.JsonReport;
import headgate.verifier.session.CheckInput;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Checks one head on a carriage for a crop plan. */
@Command(
        name = "check",
        description = "Checks a head on a carriage for a crop plan, and says whether it fits.",
        mixinStandardHelpOptions = true)
final class CheckCommand implements Callable<Integer> {

    private final Console console;

    @Mixin
    private OutputOptions output = new OutputOptions();

    @Parameters(paramLabel = "HEAD.jar", description = "The head's package.")
    private Path head = Path.of("");

    @Option(names = "--carriage", required = true, paramLabel = "FILE", description = "The carriage.")
    private Path carriage = Path.of("");

    @Option(names = "--crop", required = true, paramLabel = "FILE", description = "The crop plan.")
    private Path crop = Path.of("");

    @Option(names = "--policy", paramLabel = "FILE", description = "The limits; the built-in ones if not given.")
    private @Nullable Path policy;

    @Option(
            names = "--stand",
            paramLabel = "FILE",
            description = "A recorded stand to replay, y = 0 in the middle of the pass.")
    private @Nullable Path stand;

    @Option(names = "--out", paramLabel = "DIR", description = "Where the report goes: a new or empty folder.")
    private @Nullable Path out;

    @Option(names = "--trace", description = "Keep what the head was asked and answered; needs --out.")
    private boolean trace;

    CheckCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        if (trace && out == null) {
            throw new RefusedInputException(
                    Complaint.about("--trace", "needs a folder to keep it in.", "Give one by --out DIR."));
        }
        Optional<ReportFolder> folder = Optional.ofNullable(out).map(ReportFolder::at);
        Checked checked = new Checker(BuildVersion.read())
                .check(new CheckInput(head, carriage, crop, Optional.ofNullable(policy), Optional.ofNullable(stand)));
        Map<String, byte[]> files = folder.isPresent() ? ReportFiles.of(checked, trace) : Map.of();
        folder.ifPresent(each -> each.put(files));
        CheckTalk talk = new CheckTalk(console);
        if (output.json) {
            console.out().print(JsonReport.of(checked.report()));
        } else {
            talk.tell(checked, written(files));
        }
        talk.tellFaults(checked);
        return checked.end().number();
    }

    private List<String> written(Map<String, byte[]> files) {
        return files.keySet().stream()
                .map(name -> String.valueOf(out == null ? name : out.resolve(name)))
                .toList();
    }
}
