package headgate.verifier.assignment;

import headgate.api.shape.Interval;
import java.util.Optional;

/** How near two sliders may come. */
@FunctionalInterface
public interface Pitch {

    /**
     * The set-points of one slider less those of another at which the two are too near.
     *
     * @param first index of the slider that the problem lists first
     * @param firstStance its stance
     * @param second index of the other
     * @param secondStance its stance
     * @return the offsets, micrometres, as an open interval: its ends are allowed; empty if no offset is forbidden
     */
    Optional<Interval> forbidden(int first, int firstStance, int second, int secondStance);
}
