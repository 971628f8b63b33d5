package headgate.verifier.check;

import headgate.api.shape.Point3;
import java.util.Optional;

/**
 * Two points that show what was measured. Both are in the carriage frame.
 *
 * @param from a point of the first thing
 * @param to a point of the second thing
 * @param label what stands beside the line between them in a picture
 * @param fold the shape of the carriage in which they are, if it is folded; empty for a carriage that is set for work
 */
public record Witness(Point3 from, Point3 to, String label, Optional<Fold> fold) {

    /**
     * A carriage on the way to the road, or on it.
     *
     * @param stance the name of its stance
     * @param step which of its fold steps, from 1; one more than there are steps for the stance itself
     */
    public record Fold(String stance, int step) {}

    /**
     * What is seen on a carriage that is set for work.
     *
     * @param from a point of the first thing
     * @param to a point of the second thing
     * @param label what stands beside the line between them in a picture
     */
    public Witness(Point3 from, Point3 to, String label) {
        this(from, to, label, Optional.empty());
    }

    /**
     * The same on a folded carriage.
     *
     * @param stance the name of its stance
     * @param step which of its fold steps, from 1; one more than there are steps for the stance itself
     * @return the witness
     */
    public Witness folded(String stance, int step) {
        return new Witness(from, to, label, Optional.of(new Fold(stance, step)));
    }
}
