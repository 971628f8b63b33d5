package headgate.verifier.plot;

import headgate.runtime.answers.HeadFault;
import headgate.verifier.replay.ActionObserver;
import headgate.verifier.replay.AnswerBook;
import headgate.verifier.replay.CaseSetting;
import headgate.verifier.replay.PlantSource;
import headgate.verifier.replay.Replay;
import headgate.verifier.replay.ReplayRun;
import headgate.verifier.replay.ReplaySetting;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.LongConsumer;

/**
 * Replays one plot at several speeds. They step together, so that the heads are asked for all of them at once. Each plot
 * has a book of answers of its own, so its result does not depend on which plots were replayed before.
 *
 * @param subject the case's setting; its seed is for what chance does beside the plants
 * @param speeds speeds, m/s; whole mm/s, ascending
 * @param shown the speed whose first actions are kept, m/s
 * @param budget answers that the heads are asked for at most, for one plot
 * @param threads threads that work on it
 */
public record PlotRunner(CaseSetting subject, List<Double> speeds, double shown, long budget, int threads) {

    /** How long the timeline is, s. */
    public static final double TIMELINE = 60;

    /** Most actions that a timeline holds. */
    private static final int MOST_ACTIONS = 2000;

    /** How many plants go by between two words of progress. */
    private static final int WORD = 10_000;

    /** Copies the list. */
    public PlotRunner {
        speeds = List.copyOf(speeds);
    }

    /** What came of running a plot. */
    public sealed interface Run {

        /**
         * It was replayed.
         *
         * @param result what came of it
         */
        record Done(PlotResult result) implements Run {}

        /**
         * A head broke.
         *
         * @param fault how
         */
        record Broke(HeadFault fault) implements Run {}

        /** The heads would have to be asked more than the budget allows. */
        record TooManyAnswers() implements Run {}
    }

    /**
     * Replays a plot.
     *
     * @param plot the plot
     * @param progress is told how many plants went by, now and then
     * @return what came of it
     * @throws IOException if the plot cannot be read
     */
    public Run run(Plot plot, LongConsumer progress) throws IOException {
        AnswerBook book = new AnswerBook(
                subject.setting().tools(),
                subject.heads(),
                subject.setting().crop().canopyHeight(),
                budget);
        List<Plot.Reading> readings = new ArrayList<>();
        try {
            List<Replay> replays = new ArrayList<>();
            List<Timeline> timelines = new ArrayList<>();
            for (double speed : speeds) {
                Plot.Reading reading = plot.read();
                readings.add(reading);
                ReplaySetting setting = subject.setting().withSpeed(speed);
                Timeline timeline = new Timeline(speed == shown ? TIMELINE : 0);
                timelines.add(timeline);
                PlantSource plants = replays.isEmpty() ? counted(reading.plants(), progress) : reading.plants();
                replays.add(new Replay(
                        setting, plants, book, Replay.Options.USUAL.withBound().withObserver(timeline)));
            }
            if (!ReplayRun.run(replays, book, threads)) {
                return book.fault().<Run>map(Run.Broke::new).orElseGet(Run.TooManyAnswers::new);
            }
            List<PlotResult.Pass> passes = new ArrayList<>();
            for (int i = 0; i < replays.size(); i++) {
                passes.add(new PlotResult.Pass(replays.get(i).outcome().orElseThrow(), timelines.get(i).actions));
            }
            return new Run.Done(
                    new PlotResult(plot.name(), plot.sha256(), plot.madeUp(), plot.density(), book.asked(), passes));
        } finally {
            for (Plot.Reading reading : readings) {
                reading.close();
            }
        }
    }

    private static PlantSource counted(PlantSource plants, LongConsumer progress) {
        long[] count = new long[1];
        return () -> {
            if (++count[0] % WORD == 0) {
                progress.accept(count[0]);
            }
            return plants.next();
        };
    }

    /** Keeps the first actions. */
    private static final class Timeline implements ActionObserver {
        private final double length;
        private final List<Done> actions = new ArrayList<>();
        private Optional<Double> first = Optional.empty();

        Timeline(double length) {
            this.length = length;
        }

        @Override
        public void acted(Done action) {
            if (first.isEmpty()) {
                first = Optional.of(action.shiftFrom());
            }
            if (action.shiftFrom() < first.get() + length && actions.size() < MOST_ACTIONS) {
                actions.add(action);
            }
        }
    }
}
