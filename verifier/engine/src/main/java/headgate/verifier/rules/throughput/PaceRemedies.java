package headgate.verifier.rules.throughput;

import headgate.verifier.check.Case;
import headgate.verifier.check.Edit;
import headgate.verifier.check.HeadUnderTest;
import headgate.verifier.remedy.ShortenReturn;
import java.util.Optional;
import java.util.function.Predicate;

/** Changes beside a lower speed by which heads treat more plants. Each is tried before it is proposed. */
public final class PaceRemedies {

    /** Steps in which an action is made shorter, s, and how many are tried at most. */
    private static final double SHORTER = 0.1;

    private static final int SHORTENINGS = 8;

    private PaceRemedies() {}

    /**
     * One more arm on each lane for which there is one to spare.
     *
     * @param subject the case
     * @param does says whether a change would do
     * @return the change; empty if no arm is to spare, or it would not do
     */
    public static Optional<Edit> oneMoreArm(Case subject, Predicate<Edit> does) {
        return SpareArms.of(subject).<Edit>map(edit -> edit).filter(does);
    }

    /**
     * A shorter return from a plant, by the fewest tenths of a second that would do.
     *
     * @param subject the case
     * @param does says whether a change would do; it is taken that a shorter action does if a longer one does
     * @return the change; empty if it would not do
     */
    public static Optional<Edit> shorterAction(Case subject, Predicate<Edit> does) {
        return subject.heads().stream()
                .filter(h -> h.answers().isPresent())
                .map(HeadUnderTest::id)
                .findFirst()
                .flatMap(head -> shorter(does, head));
    }

    private static Optional<Edit> shorter(Predicate<Edit> does, String head) {
        int fails = 0;
        int passes = SHORTENINGS;
        if (!does.test(edit(head, passes))) {
            return Optional.empty();
        }
        while (passes - fails > 1) {
            int middle = (passes + fails) / 2;
            if (does.test(edit(head, middle))) {
                passes = middle;
            } else {
                fails = middle;
            }
        }
        return Optional.of(edit(head, passes));
    }

    private static Edit edit(String head, int steps) {
        return new ShortenReturn(head, steps * SHORTER);
    }
}
