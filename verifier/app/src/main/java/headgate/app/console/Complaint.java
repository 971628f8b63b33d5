package headgate.app.console;

import headgate.runtime.origin.FileProblem;
import org.jspecify.annotations.Nullable;

/**
 * One thing that is wrong with what the user gave: where, what, and what to do.
 *
 * @param place file or option; null if it is about the command line as a whole, or said by the message
 * @param message what is wrong and what was expected; one sentence
 * @param advice what to do about it; null if the message says so
 * @param located the problem with its line, column and field, if it is about a field of a file
 */
public record Complaint(
        @Nullable String place,
        String message,
        @Nullable String advice,
        @Nullable FileProblem located) {

    /**
     * Complains about the command line as a whole.
     *
     * @param message what is wrong and what was expected
     * @param advice what to do
     * @return the complaint
     */
    public static Complaint of(String message, String advice) {
        return new Complaint(null, message, advice, null);
    }

    /**
     * Complains about a file or an option.
     *
     * @param place file or option
     * @param message what is wrong and what was expected
     * @param advice what to do
     * @return the complaint
     */
    public static Complaint about(String place, String message, String advice) {
        return new Complaint(place, message, advice, null);
    }

    /**
     * Complains about a field of a file.
     *
     * @param problem what is wrong
     * @return the complaint
     */
    public static Complaint of(FileProblem problem) {
        return new Complaint(problem.place().file(), problem.toString(), null, problem);
    }

    /**
     * Passes a sentence on that says everything itself.
     *
     * @param place the file that it is about
     * @param sentence the sentence, with the file's name in it
     * @return the complaint
     */
    public static Complaint said(String place, String sentence) {
        return new Complaint(place, sentence, null, null);
    }

    /** {@return one line for people} */
    public String line() {
        String start = place == null || message.startsWith(place) ? "" : place + ": ";
        return start + message + (advice == null ? "" : " " + advice);
    }
}
