package headgate.verifier.setup;

import headgate.api.shape.Point;
import headgate.runtime.carriage.Arm;

/**
 * An arm without a head. It stands lifted on its rail, and takes room there.
 *
 * @param arm the arm
 * @param mount where the mount is set, seen from above, carriage frame
 */
public record EmptyArm(Arm arm, Point mount) {}
