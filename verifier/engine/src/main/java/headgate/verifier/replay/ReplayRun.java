package headgate.verifier.replay;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/**
 * Runs replays together: all go on until they need answers, the heads are asked for all of them at once, and so on. What
 * comes out depends neither on the number of threads nor on how the replays are put together, unless the budget of
 * answers runs out.
 */
public final class ReplayRun {

    private ReplayRun() {}

    /**
     * Runs replays to their end.
     *
     * @param replays the replays, all with the same book
     * @param book the book that they were made with
     * @param threads how many threads work on them, at least 1
     * @return true if all are done; false if a head broke or the budget is used up, which the book then says
     */
    public static boolean run(List<Replay> replays, AnswerBook book, int threads) {
        if (threads <= 1) {
            return rounds(replays, book, ReplayRun::oneByOne);
        }
        ExecutorService pool = Executors.newFixedThreadPool(threads);
        try {
            return rounds(replays, book, open -> together(open, pool));
        } finally {
            pool.shutdownNow();
        }
    }

    /** Advances replays and gives those that are not done. */
    private interface Round {
        List<Replay> advance(List<Replay> open);
    }

    private static boolean rounds(List<Replay> replays, AnswerBook book, Round round) {
        List<Replay> open = List.copyOf(replays);
        while (true) {
            open = round.advance(open);
            if (open.isEmpty()) {
                return true;
            }
            List<AnswerBook.Question> questions = new ArrayList<>();
            for (Replay replay : open) {
                questions.addAll(replay.wanted());
            }
            if (!book.ask(questions)) {
                return false;
            }
        }
    }

    private static List<Replay> oneByOne(List<Replay> open) {
        List<Replay> still = new ArrayList<>();
        for (Replay replay : open) {
            if (!replay.advance()) {
                still.add(replay);
            }
        }
        return still;
    }

    private static List<Replay> together(List<Replay> open, ExecutorService pool) {
        List<Callable<Boolean>> tasks = new ArrayList<>();
        for (Replay replay : open) {
            tasks.add(replay::advance);
        }
        List<Replay> still = new ArrayList<>();
        try {
            List<Future<Boolean>> done = pool.invokeAll(tasks);
            for (int i = 0; i < done.size(); i++) {
                if (!done.get(i).get()) {
                    still.add(open.get(i));
                }
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("the replay was interrupted", stopped);
        } catch (ExecutionException broken) {
            throw new IllegalStateException("a replay broke", broken.getCause());
        }
        return still;
    }
}
