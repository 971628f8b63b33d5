package headgate.testkit;

import headgate.api.answer.Action;
import headgate.api.answer.Engagement;
import headgate.api.head.ContinuousHead;
import headgate.api.head.SpotHead;
import headgate.api.head.ToolHead;
import headgate.api.sheet.HeadSheet;
import headgate.runtime.answers.HeadAnswers;
import headgate.runtime.answers.HeadFault;
import headgate.runtime.answers.HeadKind;
import headgate.runtime.answers.HeadStage;
import headgate.runtime.answers.RowAnswer;
import headgate.runtime.answers.SpotAnswer;
import headgate.runtime.task.LatticeRowTask;
import headgate.runtime.task.LatticeSpotTask;
import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * A head that is asked in this virtual machine. It remembers nothing: each task is asked each time. What the head throws is
 * an answer like any other, so that a test can go on and say which tasks are meant.
 */
public final class LocalHead implements HeadAnswers {

    private static final int LONGEST_MESSAGE = 500;

    private final ToolHead head;

    /**
     * Takes a head.
     *
     * @param head the head
     */
    public LocalHead(ToolHead head) {
        this.head = head;
    }

    @Override
    public HeadKind kind() {
        boolean spot = head instanceof SpotHead;
        boolean continuous = head instanceof ContinuousHead;
        if (spot && continuous) {
            return HeadKind.BOTH;
        }
        return spot ? HeadKind.SPOT : continuous ? HeadKind.CONTINUOUS : HeadKind.NEITHER;
    }

    @Override
    public HeadSheet sheet() {
        return head.sheet();
    }

    @Override
    public List<SpotAnswer> act(List<LatticeSpotTask> tasks) {
        return tasks.stream().map(this::actOnce).toList();
    }

    @Override
    public List<RowAnswer> engage(List<LatticeRowTask> tasks) {
        return tasks.stream().map(this::engageOnce).toList();
    }

    private SpotAnswer actOnce(LatticeSpotTask task) {
        if (!(head instanceof SpotHead spot)) {
            return new SpotAnswer.Failed(new HeadFault.WrongKind(HeadStage.ACT));
        }
        Given<Action> given = ask(HeadStage.ACT, () -> spot.act(task));
        return given.value() != null
                ? new SpotAnswer.Answered(given.value())
                : new SpotAnswer.Failed(fault(given, HeadStage.ACT));
    }

    private RowAnswer engageOnce(LatticeRowTask task) {
        if (!(head instanceof ContinuousHead continuous)) {
            return new RowAnswer.Failed(new HeadFault.WrongKind(HeadStage.ENGAGE));
        }
        Given<Engagement> given = ask(HeadStage.ENGAGE, () -> continuous.engage(task));
        return given.value() != null
                ? new RowAnswer.Answered(given.value())
                : new RowAnswer.Failed(fault(given, HeadStage.ENGAGE));
    }

    private record Given<T>(@Nullable T value, @Nullable HeadFault fault) {}

    private static HeadFault fault(Given<?> given, HeadStage stage) {
        return given.fault() != null ? given.fault() : new HeadFault.ReturnedNull(stage);
    }

    /** Errors are caught too: a head that recurses without end is to be reported like one that throws. */
    private static <T> Given<T> ask(HeadStage stage, Supplier<? extends @Nullable T> question) {
        try {
            return new Given<>(question.get(), null);
        } catch (StackOverflowError overflow) {
            return new Given<>(null, new HeadFault.StackOverflow(stage));
        } catch (RuntimeException | LinkageError | AssertionError thrown) {
            String message = thrown.getMessage() == null ? "" : thrown.getMessage();
            return new Given<>(
                    null,
                    new HeadFault.Threw(
                            stage,
                            thrown.getClass().getName(),
                            message.substring(0, Math.min(LONGEST_MESSAGE, message.length()))));
        }
    }

    /** Does nothing: the head is in this virtual machine and stays there. */
    @Override
    public void close() {}
}
