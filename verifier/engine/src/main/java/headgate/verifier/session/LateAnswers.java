package headgate.verifier.session;

import headgate.api.sheet.HeadSheet;
import headgate.runtime.answers.HeadAnswers;
import headgate.runtime.answers.HeadFault;
import headgate.runtime.answers.HeadKind;
import headgate.runtime.answers.RowAnswer;
import headgate.runtime.answers.SpotAnswer;
import headgate.runtime.process.HeadProcess;
import headgate.runtime.process.HeadStart;
import headgate.runtime.task.LatticeRowTask;
import headgate.runtime.task.LatticeSpotTask;
import java.util.List;
import java.util.function.Function;

/**
 * The answers of a process that is still starting: whoever asks first waits for it. A head that starts once and not again
 * fails every task that is asked of it; since such a head has no other sheet to show, it is taken to be that of the first
 * instance, and the answers tell.
 */
final class LateAnswers implements HeadAnswers {

    private final HeadProcess process;
    private final HeadAnswers first;

    /**
     * Takes a process that was given a head.
     *
     * @param process the process, loading
     * @param first the answers of an instance that runs
     */
    LateAnswers(HeadProcess process, HeadAnswers first) {
        this.process = process;
        this.first = first;
    }

    @Override
    public HeadKind kind() {
        return process.await() instanceof HeadStart.Running running
                ? running.head().kind()
                : first.kind();
    }

    @Override
    public HeadSheet sheet() {
        return process.await() instanceof HeadStart.Running running
                ? running.head().sheet()
                : first.sheet();
    }

    @Override
    public List<SpotAnswer> act(List<LatticeSpotTask> tasks) {
        return ask(tasks, head -> head.act(tasks), SpotAnswer.Failed::new);
    }

    @Override
    public List<RowAnswer> engage(List<LatticeRowTask> tasks) {
        return ask(tasks, head -> head.engage(tasks), RowAnswer.Failed::new);
    }

    private <T, A> List<A> ask(List<T> tasks, Function<HeadAnswers, List<A>> ask, Function<HeadFault, A> failed) {
        HeadStart start = process.await();
        if (start instanceof HeadStart.Running running) {
            return ask.apply(running.head());
        }
        HeadFault fault = ((HeadStart.Refused) start).fault();
        return tasks.stream().map(t -> failed.apply(fault)).toList();
    }

    @Override
    public void close() {
        process.close();
    }
}
