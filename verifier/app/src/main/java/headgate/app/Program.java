package headgate.app;

import headgate.app.command.HeadgateCommand;
import headgate.app.console.Complaint;
import headgate.app.console.Complaints;
import headgate.app.console.Console;
import headgate.app.console.ExitCode;
import headgate.app.console.RefusedInputException;
import java.util.Arrays;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;

/** The program without its process: reads a command line, runs the command, prints, and says how it ended. */
public final class Program {

    private final Console console;

    /**
     * Makes the program.
     *
     * @param console where it prints
     */
    public Program(Console console) {
        this.console = console;
    }

    /**
     * Runs one command line. Never throws: what the user did wrong is a complaint, a mistake of ours is a fault.
     *
     * @param arguments the command line
     * @return how it ended
     */
    public ExitCode run(String... arguments) {
        ExitCode end = runCommand(arguments);
        if (console.out().checkError()) {
            // The answer did not reach its reader, so no script may take the run for a good one.
            console.warn("headgate: standard output: cannot be written. Is the disk full or the reader gone?");
            return end.and(ExitCode.INPUT);
        }
        return end;
    }

    private ExitCode runCommand(String... arguments) {
        boolean json = Arrays.asList(arguments).contains("--json");
        try {
            CommandLine line = HeadgateCommand.line(console);
            line.setParameterExceptionHandler(
                    (wrong, ignored) -> usage(wrong, json).number());
            line.setExecutionExceptionHandler(
                    (thrown, ignored, parsed) -> ended(thrown, json).number());
            int number = line.execute(arguments);
            return Arrays.stream(ExitCode.values())
                    .filter(each -> each.number() == number)
                    .findFirst()
                    .orElse(ExitCode.FAULT);
        } catch (Throwable thrown) {
            return ended(thrown, json);
        }
    }

    private ExitCode usage(ParameterException wrong, boolean json) {
        String command = wrong.getCommandLine().getCommandSpec().qualifiedName();
        String advice = "Type '" + command + " --help' for what it takes.";
        String message = String.valueOf(wrong.getMessage()).strip();
        String sentence = message.endsWith(".") ? message : message + ".";
        Complaints.print(List.of(Complaint.of(sentence, advice)), ExitCode.INPUT, json, console);
        return ExitCode.INPUT;
    }

    private ExitCode ended(Throwable thrown, boolean json) {
        if (thrown instanceof RefusedInputException refused) {
            Complaints.print(refused.complaints(), ExitCode.INPUT, json, console);
            return ExitCode.INPUT;
        }
        String what =
                thrown.getClass().getSimpleName() + (thrown.getMessage() == null ? "" : ": " + thrown.getMessage());
        Complaint fault = Complaint.of(
                "the program is at fault, not your files (" + what + ").",
                "Please report it with the lines on standard error.");
        Complaints.print(List.of(fault), ExitCode.FAULT, json, console);
        thrown.printStackTrace(console.err());
        return ExitCode.FAULT;
    }
}
