package headgate.verifier.replay;

import headgate.api.shape.Interval;
import java.util.Optional;

/**
 * Says whether two arms may do at once what they want to. It is asked before an action starts and the answer holds for
 * the whole of both, since an action cannot be interrupted. A pure function.
 */
@FunctionalInterface
public interface Interlock {

    /** Arms that can never meet. */
    Interlock NONE = (one, other) -> true;

    /**
     * What an arm does.
     *
     * @param arm its index in the setting
     * @param mount where its mount is meanwhile, y, micrometres, carriage frame
     * @param action what its head does; empty if it is ready
     */
    record Doing(int arm, Interval mount, Optional<HeadAction> action) {}

    /**
     * Asks.
     *
     * @param one what an arm does
     * @param other what another arm does
     * @return true if both may happen at once
     */
    boolean mayCoincide(Doing one, Doing other);
}
