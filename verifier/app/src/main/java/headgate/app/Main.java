package headgate.app;

import headgate.app.console.Console;
import headgate.app.console.ExitCode;
import java.io.BufferedOutputStream;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;

/** The process: real streams, real environment, exit code. */
public final class Main {

    private Main() {}

    /**
     * Runs the program and ends the process with its exit code. An interrupt ends it with 130, by the virtual machine's
     * own rule (128 and the number of the signal).
     *
     * @param arguments the command line
     */
    public static void main(String[] arguments) {
        Map<String, String> environment = System.getenv();
        PrintStream out = stream(FileDescriptor.out);
        PrintStream err = stream(FileDescriptor.err);
        Path home = Path.of(System.getProperty("headgate.home", ""));
        Console console = new Console(out, err, wantsColour(environment), environment, home);
        ExitCode end = new Program(console).run(arguments);
        err.flush();
        System.exit(end.number());
    }

    /** The launcher looks whether the output is a terminal: from JDK 22 on the library no longer says so. */
    private static boolean wantsColour(Map<String, String> environment) {
        return Boolean.getBoolean("headgate.terminal")
                && environment.getOrDefault("NO_COLOR", "").isEmpty();
    }

    private static PrintStream stream(FileDescriptor descriptor) {
        BufferedOutputStream buffered = new BufferedOutputStream(new FileOutputStream(descriptor), 1 << 13);
        return new PrintStream(buffered, descriptor == FileDescriptor.err, StandardCharsets.UTF_8);
    }
}
