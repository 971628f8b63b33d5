package headgate.app.command;

import headgate.app.console.Console;
import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.IVersionProvider;

/** The root of the command line: it only holds the commands. */
@Command(
        name = "headgate",
        description = "Checks tool heads for multi-arm field carriages before they are bolted on.",
        versionProvider = HeadgateCommand.Version.class,
        mixinStandardHelpOptions = true,
        synopsisSubcommandLabel = "COMMAND",
        footer = {
            "",
            "Exit codes: 0 fits or fits within limits, 1 does not fit or undecided, 2 wrong input or",
            "usage, 3 fault of the program, 130 interrupted."
        })
public final class HeadgateCommand implements Runnable {

    private HeadgateCommand() {}

    /**
     * Builds the command line.
     *
     * @param console where the commands print
     * @return the command line, ready to run
     */
    public static CommandLine line(Console console) {
        CommandLine line = new CommandLine(new HeadgateCommand());
        line.addSubcommand("demo", new DemoCommand(console));
        line.addSubcommand("check", new CheckCommand(console));
        line.addSubcommand("fit", new FitCommand(console));
        line.addSubcommand("replay", new ReplayCommand(console));
        line.addSubcommand("rules", new RulesCommand(console));
        line.addSubcommand("doctor", new DoctorCommand(console));
        line.setOut(writer(console.out()));
        line.setErr(writer(console.err()));
        line.setColorScheme(CommandLine.Help.defaultColorScheme(console.colour() ? Ansi.ON : Ansi.OFF));
        line.setUsageHelpWidth(100);
        line.setCaseInsensitiveEnumValuesAllowed(true);
        return line;
    }

    private static PrintWriter writer(PrintStream stream) {
        return new PrintWriter(new OutputStreamWriter(stream, StandardCharsets.UTF_8), true);
    }

    /** Without a command the program shows what it can do. */
    @Override
    public void run() {
        throw new CommandLine.ParameterException(new CommandLine(this), "A command is missing.");
    }

    /** Says the version. */
    static final class Version implements IVersionProvider {

        @Override
        public String[] getVersion() {
            return new String[] {"headgate " + BuildVersion.read()};
        }
    }
}
