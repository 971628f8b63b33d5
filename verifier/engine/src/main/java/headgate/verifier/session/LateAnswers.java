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
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * The answers of a process that is still starting: whoever asks first waits for it. Tasks that are announced are asked
 * beside the caller, so that the second instance works while the answers of the first one are looked at.
 *
 * <p>A head that starts once and not again fails every task that is asked of it; since such a head has no other sheet to
 * show, it is taken to be that of the first instance, and the answers tell.
 */
final class LateAnswers implements HeadAnswers {

    /** Tasks that were announced, with the answers to come. */
    private record Early<T, A>(List<T> tasks, FutureTask<List<A>> answers) {}

    private final HeadProcess process;
    private final HeadAnswers first;
    private @Nullable Early<LatticeSpotTask, SpotAnswer> spots;
    private @Nullable Early<LatticeRowTask, RowAnswer> rows;

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
        settle();
        return process.await() instanceof HeadStart.Running running
                ? running.head().kind()
                : first.kind();
    }

    @Override
    public HeadSheet sheet() {
        settle();
        return process.await() instanceof HeadStart.Running running
                ? running.head().sheet()
                : first.sheet();
    }

    @Override
    public void willAct(List<LatticeSpotTask> tasks) {
        settle();
        spots = early(tasks, this::askSpots);
    }

    @Override
    public void willEngage(List<LatticeRowTask> tasks) {
        settle();
        rows = early(tasks, this::askRows);
    }

    private static <T, A> Early<T, A> early(List<T> tasks, Function<List<T>, List<A>> ask) {
        FutureTask<List<A>> answers = new FutureTask<>(() -> ask.apply(tasks));
        Thread thread = new Thread(answers, "headgate-ask-early");
        thread.setDaemon(true);
        thread.start();
        return new Early<>(tasks, answers);
    }

    @Override
    public List<SpotAnswer> act(List<LatticeSpotTask> tasks) {
        settle();
        return spots != null && spots.tasks().equals(tasks) ? got(spots.answers()) : askSpots(tasks);
    }

    @Override
    public List<RowAnswer> engage(List<LatticeRowTask> tasks) {
        settle();
        return rows != null && rows.tasks().equals(tasks) ? got(rows.answers()) : askRows(tasks);
    }

    private List<SpotAnswer> askSpots(List<LatticeSpotTask> tasks) {
        return ask(tasks, head -> head.act(tasks), SpotAnswer.Failed::new);
    }

    private List<RowAnswer> askRows(List<LatticeRowTask> tasks) {
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

    /** A process is asked by one at a time: whatever was asked early is answered first. */
    private void settle() {
        if (spots != null) {
            got(spots.answers());
        }
        if (rows != null) {
            got(rows.answers());
        }
    }

    /** Every answer has a limit, so this has one. */
    private static <A> List<A> got(FutureTask<List<A>> answers) {
        boolean interrupted = false;
        try {
            while (true) {
                try {
                    return answers.get();
                } catch (InterruptedException e) {
                    interrupted = true;
                } catch (ExecutionException e) {
                    throw new IllegalStateException("asking a head failed", e);
                }
            }
        } finally {
            if (interrupted) {
                Thread.currentThread().interrupt();
            }
        }
    }

    @Override
    public void close() {
        process.close();
    }
}
