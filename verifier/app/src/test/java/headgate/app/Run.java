package headgate.app;

import headgate.app.console.Console;
import headgate.app.console.ExitCode;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;

/** One run of the program in a test: what it printed and how it ended. */
record Run(ExitCode end, String out, String err) {

    static Run of(String... arguments) {
        return of(false, arguments);
    }

    static Run of(boolean colour, String... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Console console = new Console(stream(out), stream(err), colour, Map.of(), Path.of("no-such-home"));
        ExitCode end = new Program(console).run(arguments);
        return new Run(end, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    private static PrintStream stream(ByteArrayOutputStream bytes) {
        return new PrintStream(bytes, true, StandardCharsets.UTF_8);
    }
}
