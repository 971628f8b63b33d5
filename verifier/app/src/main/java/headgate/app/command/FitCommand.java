package headgate.app.command;

import headgate.app.check.Checked;
import headgate.app.check.Checker;
import headgate.app.check.Fitted;
import headgate.app.check.ReportFiles;
import headgate.app.console.Console;
import headgate.app.console.ExitCode;
import headgate.app.output.ReportFolder;
import headgate.verifier.report.json.JsonReport;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Checks a whole fitting: different heads on one carriage. */
@Command(
        name = "fit",
        description = "Checks a whole fitting, the heads on all arms together, and says whether it fits.",
        mixinStandardHelpOptions = true)
final class FitCommand implements Callable<Integer> {

    private final Console console;

    @Mixin
    private OutputOptions output = new OutputOptions();

    @Parameters(
            paramLabel = "FITTING.json",
            description = "Which head is on which arm; it names the carriage, the crop plan and the heads' packages.")
    private Path fitting = Path.of("");

    @Option(names = "--out", paramLabel = "DIR", description = "Where the report goes: a new or empty folder.")
    private @Nullable Path out;

    @Mixin
    private FittingSearchOptions search = new FittingSearchOptions();

    FitCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        Optional<ReportFolder> folder = Optional.ofNullable(out).map(ReportFolder::at);
        Optional<Path> checkedFile = search.run(fitting, console, output.json);
        if (checkedFile.isEmpty()) {
            return ExitCode.REFUSED.number();
        }
        Fitted fitted = new Checker(BuildVersion.read()).fit(checkedFile.get());
        Checked checked = fitted.checked();
        SortedMap<String, byte[]> files = new TreeMap<>();
        if (folder.isPresent()) {
            files.putAll(ReportFiles.of(checked, false));
            if (!fitted.spacings().isEmpty()) {
                files.put("spacings.json", SpacingTalk.json(fitted).getBytes(StandardCharsets.UTF_8));
            }
        }
        folder.ifPresent(each -> each.put(files));
        CheckTalk talk = new CheckTalk(console);
        if (output.json) {
            console.out().print(JsonReport.of(checked.report()));
        } else {
            talk.tell(checked, written(files));
            SpacingTalk.tell(fitted, console);
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
