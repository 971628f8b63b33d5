package headgate.verifier.check;

import headgate.api.shape.Point3;

/**
 * Two points that show what was measured. Both are in the carriage frame.
 *
 * @param from a point of the first thing
 * @param to a point of the second thing
 * @param label what stands beside the line between them in a picture
 */
public record Witness(Point3 from, Point3 to, String label) {}
