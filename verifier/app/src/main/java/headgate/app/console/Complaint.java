package headgate.app.console;

import org.jspecify.annotations.Nullable;

/**
 * One thing that is wrong with what the user gave: where, what, and what to do.
 *
 * @param place file, or file with line and column, or option; null if it is about the command line as a whole
 * @param message what is wrong and what was expected; one sentence
 * @param advice what to do about it; null if the message says so
 */
public record Complaint(
        @Nullable String place, String message, @Nullable String advice) {

    /**
     * Complains about a file or an option.
     *
     * @param place file or option
     * @param message what is wrong and what was expected
     * @param advice what to do
     * @return the complaint
     */
    public static Complaint about(String place, String message, String advice) {
        return new Complaint(place, message, advice);
    }

    /** {@return one line for people} */
    public String line() {
        String start = place == null ? "" : place + ": ";
        return start + message + (advice == null ? "" : " " + advice);
    }
}
