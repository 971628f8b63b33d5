package headgate.verifier.replay;

/** Is told of every action of a replay, in the order in which they are begun: the timeline. */
@FunctionalInterface
public interface ActionObserver {

    /** Tells nobody. */
    ActionObserver NONE = action -> {};

    /**
     * An action.
     *
     * @param arm index of the arm in the setting
     * @param plantX where its plant stands, ground frame, micrometres
     * @param plantY where its plant stands, micrometres
     * @param shiftFrom when the arm began to shift for it, or to act if it did not shift, s
     * @param start when the head began, s
     * @param contactStart when it came into contact, s
     * @param contactEnd when it was out of contact, s
     * @param end when the arm was free again, s
     * @param mount where the mount was, y, micrometres
     * @param treated how many plants were treated by it
     */
    record Done(
            int arm,
            long plantX,
            long plantY,
            double shiftFrom,
            double start,
            double contactStart,
            double contactEnd,
            double end,
            long mount,
            int treated) {}

    /**
     * An action was begun.
     *
     * @param action the action
     */
    void acted(Done action);
}
