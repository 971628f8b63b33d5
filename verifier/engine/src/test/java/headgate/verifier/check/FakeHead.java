package headgate.verifier.check;

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
import java.util.function.Function;

/**
 * A head that answers from functions, without a process.
 *
 * @param kind which interface it implements
 * @param sheet what it says of itself
 * @param spot how it answers spot tasks
 * @param row how it answers row tasks
 */
public record FakeHead(
        HeadKind kind,
        HeadSheet sheet,
        Function<LatticeSpotTask, SpotAnswer> spot,
        Function<LatticeRowTask, RowAnswer> row)
        implements HeadAnswers {

    /**
     * A spot head.
     *
     * @param sheet what it says of itself
     * @param spot how it answers
     * @return the head
     */
    public static FakeHead spot(HeadSheet sheet, Function<LatticeSpotTask, SpotAnswer> spot) {
        return new FakeHead(
                HeadKind.SPOT, sheet, spot, task -> new RowAnswer.Failed(new HeadFault.WrongKind(HeadStage.ENGAGE)));
    }

    /**
     * A continuous head.
     *
     * @param sheet what it says of itself
     * @param row how it answers
     * @return the head
     */
    public static FakeHead continuous(HeadSheet sheet, Function<LatticeRowTask, RowAnswer> row) {
        return new FakeHead(
                HeadKind.CONTINUOUS, sheet, task -> new SpotAnswer.Failed(new HeadFault.WrongKind(HeadStage.ACT)), row);
    }

    @Override
    public List<SpotAnswer> act(List<LatticeSpotTask> tasks) {
        return tasks.stream().map(spot).toList();
    }

    @Override
    public List<RowAnswer> engage(List<LatticeRowTask> tasks) {
        return tasks.stream().map(row).toList();
    }

    @Override
    public void close() {
        // Nothing runs behind it.
    }
}
