package headgate.verifier.assignment;

import java.util.List;
import java.util.Optional;

/**
 * An arm on its rail.
 *
 * @param id how to name it
 * @param beam index of its beam; sliders of one beam keep the order in which the problem lists them
 * @param link the group that it is linked into, moving as one; empty if it is free
 * @param choices what it can do, best liked first
 */
public record Slider(String id, int beam, Optional<Link> link, List<Choice> choices) {

    /** Copies the list. */
    public Slider {
        choices = List.copyOf(choices);
    }

    /**
     * A place in a group of linked sliders.
     *
     * @param group index of the group
     * @param offset its set-point less that of the group, micrometres
     */
    public record Link(int group, long offset) {}
}
