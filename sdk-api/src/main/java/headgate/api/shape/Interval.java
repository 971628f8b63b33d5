package headgate.api.shape;

import headgate.api.annotation.ApiStatus;
import headgate.api.unit.Micrometres;

/**
 * A closed interval on one axis, whole micrometres. It may be a single point.
 *
 * @param least lower end, micrometres, at most 100 m either way
 * @param most upper end, micrometres, at least the lower end
 */
@ApiStatus(value = ApiStatus.Status.EXPERIMENTAL, since = "0.1.0")
public record Interval(long least, long most) {

    /**
     * Checks order and bounds.
     *
     * @param least lower end, micrometres
     * @param most upper end, micrometres
     * @throws IllegalArgumentException if the ends are in the wrong order or over 100 m either way
     */
    public Interval {
        Bounds.check("least", least);
        Bounds.check("most", most);
        if (least > most) {
            throw new IllegalArgumentException("the lower end of an interval must not exceed the upper, but "
                    + Bounds.millimetres(least) + " mm > " + Bounds.millimetres(most) + " mm");
        }
    }

    /**
     * Makes an interval from metres, each end rounded to the nearest micrometre.
     *
     * @param least lower end, m
     * @param most upper end, m
     * @return the interval
     * @throws IllegalArgumentException if an end is not finite or out of bounds, or the ends are in the wrong order
     */
    public static Interval ofMetres(double least, double most) {
        return new Interval(Micrometres.nearest(least), Micrometres.nearest(most));
    }

    /**
     * Makes an interval of one point.
     *
     * @param at the point, micrometres
     * @return the interval
     */
    public static Interval at(long at) {
        return new Interval(at, at);
    }

    /**
     * Says whether a value lies in the interval, ends included.
     *
     * @param value the value, micrometres
     * @return true if it does
     */
    public boolean contains(long value) {
        return least <= value && value <= most;
    }

    /**
     * Moves the interval.
     *
     * @param by the displacement, micrometres
     * @return the moved interval
     */
    public Interval shifted(long by) {
        return new Interval(least + by, most + by);
    }

    /**
     * The interval of all sums.
     *
     * @param other the other interval
     * @return every sum of a value of this and a value of the other
     */
    public Interval plus(Interval other) {
        return new Interval(least + other.least, most + other.most);
    }

    /**
     * The smallest interval that holds both.
     *
     * @param other the other interval
     * @return the hull
     */
    public Interval hull(Interval other) {
        return new Interval(Math.min(least, other.least), Math.max(most, other.most));
    }

    /**
     * The empty space between two intervals.
     *
     * @param other the other interval
     * @return the gap, micrometres; 0 if they touch or overlap
     */
    public long gapTo(Interval other) {
        return Math.max(0, Math.max(other.least - most, least - other.most));
    }

    /** {@return the length, micrometres} */
    public long length() {
        return most - least;
    }

    /** {@return the ends in millimetres} */
    @Override
    public String toString() {
        return Bounds.millimetres(least) + ".." + Bounds.millimetres(most) + " mm";
    }
}
