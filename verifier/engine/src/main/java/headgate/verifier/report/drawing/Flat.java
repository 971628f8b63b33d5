package headgate.verifier.report.drawing;

/**
 * A point of a picture before it is scaled.
 *
 * @param right to the right, micrometres
 * @param up upwards, micrometres
 */
record Flat(long right, long up) {

    /** The distance to another point, micrometres. */
    double distance(Flat other) {
        return Math.hypot((double) other.right - right, (double) other.up - up);
    }
}
