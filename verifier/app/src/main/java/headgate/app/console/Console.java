package headgate.app.console;

import java.io.PrintStream;
import java.nio.file.Path;
import java.util.Map;

/**
 * Where the program writes and what it may know of its surroundings. Handed in, so that a test never touches the real
 * streams.
 *
 * @param out results; UTF-8
 * @param err complaints and progress; UTF-8
 * @param colour true if the results go to a terminal that wants colour
 * @param environment the environment variables
 * @param home the folder that the program was installed to
 */
public record Console(PrintStream out, PrintStream err, boolean colour, Map<String, String> environment, Path home) {

    /** Copies the environment. */
    public Console {
        environment = Map.copyOf(environment);
    }

    /**
     * Prints one line of results. Always ends it with a line feed, so that the bytes are the same on every system.
     *
     * @param line the line, without its end
     */
    public void say(String line) {
        out.print(line + "\n");
    }

    /**
     * Prints one line beside the results.
     *
     * @param line the line, without its end
     */
    public void warn(String line) {
        err.print(line + "\n");
    }

    /**
     * Paints a text if this console has colour.
     *
     * @param paint the colour
     * @param text the text
     * @return the text, painted or as it was
     */
    public String paint(Paint paint, String text) {
        return colour ? paint.apply(text) : text;
    }
}
