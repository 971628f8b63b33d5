package headgate.runtime.answers;

import headgate.api.sheet.HeadSheet;
import headgate.runtime.task.LatticeRowTask;
import headgate.runtime.task.LatticeSpotTask;
import java.util.List;

/**
 * A head, seen as tasks in and answers out. Behind it is a head process, a memory of one, or a transcript. One caller
 * at a time.
 *
 * <p>A head whose process has ended stays ended: every later task is answered by the fault that ended it. So one broken
 * head costs one fault's time, however many tasks follow.
 */
public interface HeadAnswers extends AutoCloseable {

    /** {@return which interface the head implements} */
    HeadKind kind();

    /** {@return what the head says of itself} */
    HeadSheet sheet();

    /**
     * Asks a spot head.
     *
     * @param tasks any number of tasks, any order; an answer does not depend on how tasks are batched
     * @return one answer a task, in the order of the tasks
     */
    List<SpotAnswer> act(List<LatticeSpotTask> tasks);

    /**
     * Asks a continuous head.
     *
     * @param tasks any number of tasks, any order; an answer does not depend on how tasks are batched
     * @return one answer a task, in the order of the tasks
     */
    List<RowAnswer> engage(List<LatticeRowTask> tasks);

    /**
     * Asks a spot head one task.
     *
     * @param task the task
     * @return the answer
     */
    default SpotAnswer act(LatticeSpotTask task) {
        return act(List.of(task)).get(0);
    }

    /**
     * Asks a continuous head one task.
     *
     * @param task the task
     * @return the answer
     */
    default RowAnswer engage(LatticeRowTask task) {
        return engage(List.of(task)).get(0);
    }

    /**
     * Says which tasks will be asked next, all at once and in this order. A head whose answers take long may then begin with
     * them beside the caller; the answers are the same as without.
     *
     * @param tasks the tasks
     */
    default void willAct(List<LatticeSpotTask> tasks) {}

    /**
     * Says which tasks will be asked next, as {@link #willAct} does.
     *
     * @param tasks the tasks
     */
    default void willEngage(List<LatticeRowTask> tasks) {}

    /** {@return what a report has to say of how the head is run, as sentences; mostly nothing} */
    default List<String> notes() {
        return List.of();
    }

    /** Ends what runs behind it, if anything does. Closing twice is the same as once. */
    @Override
    void close();
}
