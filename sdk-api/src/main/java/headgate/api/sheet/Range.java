package headgate.api.sheet;

import headgate.api.annotation.ApiStatus;
import headgate.api.problem.ProblemCollector;
import java.util.List;

/**
 * A closed range of a figure, SI.
 */
@ApiStatus(value = ApiStatus.Status.EXPERIMENTAL, since = "0.1.0")
public final class Range {

    private final double least;
    private final double most;

    private Range(double least, double most) {
        this.least = least;
        this.most = most;
    }

    /**
     * Makes a range.
     *
     * @param least lower end
     * @param most upper end, at least the lower
     * @return the range
     * @throws headgate.api.problem.InvalidValueException if an end is not finite or the order is wrong
     */
    public static Range of(double least, double most) {
        ProblemCollector problems = new ProblemCollector("range");
        problems.demand(
                Double.isFinite(least) && Double.isFinite(most) && least <= most,
                "least, most",
                least + ", " + most,
                "must be finite and in rising order");
        problems.throwIfAny();
        return new Range(least, most);
    }

    /**
     * Says whether a figure lies in the range, ends included.
     *
     * @param value the figure
     * @return true if it does
     */
    public boolean contains(double value) {
        return least <= value && value <= most;
    }

    /**
     * Says whether a whole range lies in this one.
     *
     * @param other the other range
     * @return true if both its ends do
     */
    public boolean contains(Range other) {
        return contains(other.least) && contains(other.most);
    }

    /** {@return the lower end} */
    public double least() {
        return least;
    }

    /** {@return the upper end} */
    public double most() {
        return most;
    }

    private List<Object> parts() {
        return List.of(least, most);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Range that && parts().equals(that.parts());
    }

    @Override
    public int hashCode() {
        return parts().hashCode();
    }

    /** {@return the ends} */
    @Override
    public String toString() {
        return least + " to " + most;
    }
}
