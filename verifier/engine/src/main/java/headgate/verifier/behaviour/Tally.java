package headgate.verifier.behaviour;

import java.util.List;

/**
 * How often a trait was looked at and broken.
 *
 * @param trait the trait
 * @param examined how many answers, actions, phases or corners were looked at
 * @param broken how many broke it
 * @param first the first violations in the order of the tasks, at most {@link #KEPT}
 */
public record Tally(Trait trait, long examined, long broken, List<Violation> first) {

    /** How many violations are kept; the rest is counted. */
    public static final int KEPT = 5;

    /** Copies the list. */
    public Tally {
        first = List.copyOf(first);
    }

    /** {@return true if something was looked at and nothing broken} */
    public boolean kept() {
        return examined > 0 && broken == 0;
    }

    static Tally of(Trait trait, long examined, List<Violation> all) {
        return new Tally(trait, examined, all.size(), all.subList(0, Math.min(KEPT, all.size())));
    }
}
