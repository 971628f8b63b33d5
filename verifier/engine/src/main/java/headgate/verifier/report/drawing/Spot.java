package headgate.verifier.report.drawing;

import headgate.api.shape.Point3;

/**
 * A place that a finding measured, marked with a number.
 *
 * @param number the number, the same as in the list beside the picture
 * @param from a point of the one thing, carriage frame
 * @param to a point of the other
 * @param holds true if what was measured is within its limit
 */
public record Spot(int number, Point3 from, Point3 to, boolean holds) {}
