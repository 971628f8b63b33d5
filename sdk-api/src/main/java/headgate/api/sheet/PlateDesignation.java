package headgate.api.sheet;

import headgate.api.annotation.ApiStatus;
import headgate.api.problem.ProblemCollector;
import java.math.BigDecimal;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The designation of a circular mount plate in the form of ISO 9409-1: pitch circle diameter in mm, number of threaded
 * holes, thread; such as {@code 9409-1-50-4-M6}.
 */
@ApiStatus(value = ApiStatus.Status.EXPERIMENTAL, since = "0.1.0")
public final class PlateDesignation {

    private static final Pattern FORM =
            Pattern.compile("9409-1-([1-9][0-9]{0,2}(?:\\.[0-9])?)-([1-9][0-9]?)-M([1-9][0-9]?)");

    private final String text;
    private final double pitchCircle;
    private final int holes;
    private final int thread;

    private PlateDesignation(String text, double pitchCircle, int holes, int thread) {
        this.text = text;
        this.pitchCircle = pitchCircle;
        this.holes = holes;
        this.thread = thread;
    }

    /**
     * Reads a designation.
     *
     * @param text the designation, such as {@code 9409-1-50-4-M6}
     * @return the designation
     * @throws headgate.api.problem.InvalidValueException if the text has another form or fewer than three holes
     */
    public static PlateDesignation of(String text) {
        Matcher matcher = FORM.matcher(text);
        ProblemCollector problems = new ProblemCollector("plate");
        problems.demand(
                matcher.matches() && Integer.parseInt(matcher.group(2)) >= 3,
                "plate",
                '"' + text + '"',
                "must have the form 9409-1-<pitch circle in mm>-<holes, at least 3>-M<thread>, such as 9409-1-50-4-M6");
        problems.throwIfAny();
        return new PlateDesignation(
                text,
                new BigDecimal(matcher.group(1)).movePointLeft(3).doubleValue(),
                Integer.parseInt(matcher.group(2)),
                Integer.parseInt(matcher.group(3)));
    }

    /** {@return the diameter of the pitch circle, m} */
    public double pitchCircle() {
        return pitchCircle;
    }

    /** {@return the number of threaded holes, at least 3} */
    public int holes() {
        return holes;
    }

    /** {@return the nominal diameter of the metric thread, mm} */
    public int thread() {
        return thread;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof PlateDesignation that && text.equals(that.text);
    }

    @Override
    public int hashCode() {
        return text.hashCode();
    }

    /** {@return the designation as it is written} */
    @Override
    public String toString() {
        return text;
    }
}
