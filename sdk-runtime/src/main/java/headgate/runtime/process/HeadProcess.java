package headgate.runtime.process;

import headgate.api.sheet.HeadSheet;
import headgate.runtime.answers.HeadAnswers;
import headgate.runtime.answers.HeadFault;
import headgate.runtime.answers.HeadKind;
import headgate.runtime.answers.HeadStage;
import headgate.runtime.answers.RowAnswer;
import headgate.runtime.answers.SpotAnswer;
import headgate.runtime.pack.CleanJar;
import headgate.runtime.task.LatticeRowTask;
import headgate.runtime.task.LatticeSpotTask;
import headgate.runtime.wire.AnswerCodec;
import headgate.runtime.wire.Frame;
import headgate.runtime.wire.SheetCodec;
import headgate.runtime.wire.TaskCodec;
import headgate.runtime.wire.WireReader;
import headgate.runtime.wire.WireWriter;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * A head in a process of its own. Open it early: the virtual machine starts while the caller reads files. Then load a
 * clean copy, and wait for what came of it:
 *
 * <pre>{@code
 * try (HeadProcess process = HeadProcess.open(HeadLimits.STANDARD)) {
 *     process.load(jar);
 *     if (process.await() instanceof HeadStart.Running running) {
 *         ... running.head() ...
 *     }
 * }
 * }</pre>
 *
 * <p>However the process ends, one fault says how, no process is left, and no file.
 */
public final class HeadProcess implements AutoCloseable {

    /** Most tasks in one request; more are asked in several. */
    static final int BATCH = 1024;

    private final HeadLimits limits;
    private final Surroundings surroundings;
    private final Walls walls;
    private final Tools tools;
    private @Nullable Child child;
    private @Nullable HeadFault ended;
    private @Nullable CleanJar jar;
    private @Nullable HeadStart outcome;
    private boolean closed;

    private HeadProcess(HeadLimits limits, Surroundings surroundings, Walls walls, Tools tools) {
        this.tools = tools;
        this.limits = limits;
        this.surroundings = surroundings;
        this.walls = walls;
    }

    /**
     * Starts an empty process in the usual surroundings and does not wait for it.
     *
     * @param limits what it may use
     * @return the process; if it cannot be started, {@link #await()} says so
     */
    public static HeadProcess open(HeadLimits limits) {
        return open(limits, Surroundings.USUAL);
    }

    /**
     * Starts an empty process and does not wait for it.
     *
     * @param limits what it may use
     * @param surroundings what a head must not depend on
     * @return the process; if it cannot be started, {@link #await()} says so
     */
    public static HeadProcess open(HeadLimits limits, Surroundings surroundings) {
        return open(limits, surroundings, Walls.standard());
    }

    /**
     * Starts an empty process behind a wall of the caller's choice and does not wait for it.
     *
     * @param limits what it may use
     * @param surroundings what a head must not depend on
     * @param walls the walls to try
     * @return the process; if it cannot be started, {@link #await()} says so
     */
    public static HeadProcess open(HeadLimits limits, Surroundings surroundings, Walls walls) {
        return open(limits, surroundings, walls, Tools.OF_MACHINE);
    }

    static HeadProcess open(HeadLimits limits, Surroundings surroundings, Walls walls, Tools tools) {
        HeadProcess process = new HeadProcess(limits, surroundings, walls, tools);
        process.startBehind(walls.best());
        return process;
    }

    /**
     * Starts an empty process behind a wall, waits for its first word, and ends it.
     *
     * @param wall the wall
     * @return what went wrong; empty if the wall works here
     */
    public static Optional<String> tryOut(Wall wall) {
        try (HeadProcess process = open(HeadLimits.STANDARD, Surroundings.USUAL, Walls.only(wall))) {
            process.greeted();
            return Optional.empty();
        } catch (Child.Ended e) {
            return Optional.of(
                    e.fault() instanceof HeadFault.StartFailed failed
                            ? failed.reason()
                            : e.fault().sentence());
        }
    }

    /** Starts behind a wall, or behind the next one that this machine has got the tools for. */
    private void startBehind(Wall first) {
        Optional<Wall> wall = Optional.of(first);
        while (wall.isPresent()) {
            try {
                child = Child.start(limits, surroundings, wall.get(), tools);
                return;
            } catch (IOException e) {
                ended = new HeadFault.StartFailed(String.valueOf(e.getMessage()));
                wall = walls.insteadOf(wall.get());
            }
        }
    }

    /**
     * Opens a process, loads a head and waits.
     *
     * @param jar the clean copy
     * @param limits what the process may use
     * @return the running head, whose {@code close()} ends the process, or a fault
     */
    public static HeadStart start(CleanJar jar, HeadLimits limits) {
        HeadProcess process = open(limits);
        process.load(jar);
        return process.await();
    }

    /**
     * Tells the process what to load and does not wait for it.
     *
     * @param jar the clean copy
     * @throws IllegalStateException if it was told before
     */
    public void load(CleanJar jar) {
        if (this.jar != null) {
            throw new IllegalStateException("a head process loads one head, once");
        }
        this.jar = jar;
        if (child != null) {
            child.load(jar);
        }
    }

    /**
     * Waits for the head and its sheet.
     *
     * @return the running head, whose {@code close()} ends the process, or a fault; the same at every call
     * @throws IllegalStateException if nothing was loaded
     */
    public HeadStart await() {
        if (jar == null) {
            throw new IllegalStateException("load a head first");
        }
        HeadStart known = outcome;
        if (known == null) {
            known = started();
            outcome = known;
        }
        return known;
    }

    private HeadStart started() {
        try {
            Child running = greeted();
            byte[] kind = running.expect(Frame.Type.LOADED, HeadStage.LOAD, limits.load());
            byte[] sheet = running.expect(Frame.Type.SHEET, HeadStage.SHEET, limits.load());
            running.rest();
            ended = null;
            return new HeadStart.Running(new Answers(
                    running,
                    running.decoded(HeadStage.LOAD, kind, in -> in.constant(HeadKind.class)),
                    running.decoded(HeadStage.SHEET, sheet, SheetCodec::read)));
        } catch (Child.Ended e) {
            ended = e.fault();
            close();
            return new HeadStart.Refused(e.fault());
        }
    }

    /**
     * Waits until the virtual machine is up. Nothing of the head has run by then; so if it does not come up, that is the
     * wall's doing or the machine's, and the next wall is tried.
     */
    private Child greeted() throws Child.Ended {
        while (true) {
            Child starting = child;
            if (starting == null) {
                throw new Child.Ended(ended == null ? new HeadFault.StartFailed("it is not running") : ended);
            }
            try {
                starting.expect(Frame.Type.HELLO, HeadStage.START, limits.start());
                return starting;
            } catch (Child.Ended e) {
                boolean refused = e.fault() instanceof HeadFault.StartFailed && starting.endedByItself();
                starting.close();
                Optional<Wall> next = refused && !closed ? walls.insteadOf(starting.wall()) : Optional.empty();
                if (next.isEmpty()) {
                    throw e;
                }
                child = null;
                startBehind(next.get());
                if (child != null && jar != null) {
                    child.load(jar);
                }
            }
        }
    }

    /** {@return what the operating system holds the process with; known for certain once {@link #await()} has returned} */
    public Wall wall() {
        return child == null ? Wall.NONE : child.wall();
    }

    /** Ends the process, if it still runs. */
    @Override
    public void close() {
        closed = true;
        if (child != null) {
            child.close();
        }
    }

    private final class Answers implements HeadAnswers {

        private final Child running;
        private final HeadKind kind;
        private final HeadSheet sheet;
        private final Patience patience = new Patience(limits);
        private int sequence;

        Answers(Child running, HeadKind kind, HeadSheet sheet) {
            this.running = running;
            this.kind = kind;
            this.sheet = sheet;
        }

        @Override
        public HeadKind kind() {
            return kind;
        }

        @Override
        public HeadSheet sheet() {
            return sheet;
        }

        @Override
        public List<SpotAnswer> act(List<LatticeSpotTask> tasks) {
            return ask(
                    tasks,
                    Frame.Type.ACT,
                    HeadStage.ACT,
                    Frame.Type.SPOT_ANSWER,
                    TaskCodec::spot,
                    AnswerCodec::spot,
                    SpotAnswer.Failed::new);
        }

        @Override
        public List<RowAnswer> engage(List<LatticeRowTask> tasks) {
            return ask(
                    tasks,
                    Frame.Type.ENGAGE,
                    HeadStage.ENGAGE,
                    Frame.Type.ROW_ANSWER,
                    TaskCodec::row,
                    AnswerCodec::row,
                    RowAnswer.Failed::new);
        }

        @Override
        public List<String> notes() {
            return running.wall().note().stream().toList();
        }

        private <T, A> List<A> ask(
                List<T> tasks,
                Frame.Type question,
                HeadStage stage,
                Frame.Type answer,
                BiConsumer<WireWriter, T> write,
                Function<WireReader, A> read,
                Function<HeadFault, A> failed) {
            List<A> answers = new ArrayList<>(tasks.size());
            for (int from = 0; from < tasks.size() && ended == null; from += BATCH) {
                List<T> batch = tasks.subList(from, Math.min(tasks.size(), from + BATCH));
                WireWriter content = new WireWriter();
                content.list(batch, write);
                sequence++;
                patience.begin(batch.size());
                try {
                    running.send(new Frame(question, sequence, content.toBytes()), stage, patience.left());
                    for (int i = 0; i < batch.size(); i++) {
                        byte[] bytes = running.expect(answer, sequence, stage, patience.left());
                        answers.add(running.decoded(stage, bytes, read));
                    }
                    running.rest();
                    patience.end();
                } catch (Child.Ended e) {
                    ended = patience.blame(e.fault());
                    running.close();
                }
            }
            HeadFault fault = ended;
            while (answers.size() < tasks.size() && fault != null) {
                answers.add(failed.apply(fault));
            }
            return List.copyOf(answers);
        }

        @Override
        public void close() {
            HeadProcess.this.close();
            if (ended == null) {
                ended = new HeadFault.StartFailed("its process was closed");
            }
        }
    }
}
