package headgate.sample.planter;

/**
 * A driven axis that moves from rest to rest: it speeds up, runs, and slows down at one rate.
 *
 * @param speed fastest speed, micrometres per second
 * @param acceleration rate of speeding up and slowing down, micrometres per second squared
 */
record Axis(double speed, double acceleration) {

    /** The controller starts and ends each phase on a tick of its clock. */
    static final long TICK = 10;

    /**
     * The time to move. A short move never reaches the fastest speed and takes 2 sqrt(L / a); a long one takes
     * L / v + v / a. The two agree at L = v² / a. Only the square root is not plain arithmetic, and it is exact on every
     * machine.
     *
     * @param distance length of the move, micrometres; 0 or more
     * @return the time, milliseconds, rounded up to a tick
     */
    long time(long distance) {
        double length = distance;
        double seconds = length < speed * speed / acceleration
                ? 2.0 * StrictMath.sqrt(length / acceleration)
                : length / speed + speed / acceleration;
        return toTick(seconds * 1000.0);
    }

    /**
     * Rounds a duration up to a tick.
     *
     * @param milliseconds the duration, milliseconds
     * @return the least multiple of {@link #TICK} that is not shorter
     */
    static long toTick(double milliseconds) {
        return TICK * (long) StrictMath.ceil(milliseconds / TICK);
    }
}
