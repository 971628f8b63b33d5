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
import java.util.Objects;
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
    private final @Nullable Child child;
    private @Nullable HeadFault ended;
    private boolean loading;
    private @Nullable HeadStart outcome;

    private HeadProcess(HeadLimits limits, @Nullable Child child, @Nullable HeadFault ended) {
        this.limits = limits;
        this.child = child;
        this.ended = ended;
    }

    /**
     * Starts an empty process and does not wait for it.
     *
     * @param limits what it may use
     * @return the process; if it cannot be started, {@link #await()} says so
     */
    public static HeadProcess open(HeadLimits limits) {
        try {
            return new HeadProcess(limits, Child.start(limits), null);
        } catch (IOException e) {
            return new HeadProcess(limits, null, new HeadFault.StartFailed(String.valueOf(e.getMessage())));
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
        if (loading) {
            throw new IllegalStateException("a head process loads one head, once");
        }
        loading = true;
        if (child != null) {
            try {
                child.load(jar);
            } catch (IOException e) {
                // A process that died early has closed its input; waiting for it finds out how it ended.
                child.inputFailed();
            }
        }
    }

    /**
     * Waits for the head and its sheet.
     *
     * @return the running head, whose {@code close()} ends the process, or a fault; the same at every call
     * @throws IllegalStateException if nothing was loaded
     */
    public HeadStart await() {
        if (!loading) {
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
        if (child == null) {
            return new HeadStart.Refused(ended == null ? new HeadFault.StartFailed("it is not running") : ended);
        }
        try {
            child.expect(Frame.Type.HELLO, HeadStage.START, limits.start());
            byte[] kind = child.expect(Frame.Type.LOADED, HeadStage.LOAD, limits.load());
            byte[] sheet = child.expect(Frame.Type.SHEET, HeadStage.SHEET, limits.load());
            child.rest();
            return new HeadStart.Running(new Answers(
                    child.decoded(HeadStage.LOAD, kind, in -> in.constant(HeadKind.class)),
                    child.decoded(HeadStage.SHEET, sheet, SheetCodec::read)));
        } catch (Child.Ended e) {
            ended = e.fault();
            child.close();
            return new HeadStart.Refused(e.fault());
        }
    }

    /** Ends the process, if it still runs. */
    @Override
    public void close() {
        if (child != null) {
            child.close();
        }
    }

    private final class Answers implements HeadAnswers {

        private final HeadKind kind;
        private final HeadSheet sheet;
        private int sequence;

        Answers(HeadKind kind, HeadSheet sheet) {
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

        private <T, A> List<A> ask(
                List<T> tasks,
                Frame.Type question,
                HeadStage stage,
                Frame.Type answer,
                BiConsumer<WireWriter, T> write,
                Function<WireReader, A> read,
                Function<HeadFault, A> failed) {
            Child running = Objects.requireNonNull(child);
            List<A> answers = new ArrayList<>(tasks.size());
            for (int from = 0; from < tasks.size() && ended == null; from += BATCH) {
                List<T> batch = tasks.subList(from, Math.min(tasks.size(), from + BATCH));
                WireWriter content = new WireWriter();
                content.list(batch, write);
                sequence++;
                try {
                    running.send(new Frame(question, sequence, content.toBytes()), stage, limits.answer());
                    for (int i = 0; i < batch.size(); i++) {
                        byte[] bytes = running.expect(answer, sequence, stage, limits.answer());
                        answers.add(running.decoded(stage, bytes, read));
                    }
                    running.rest();
                } catch (Child.Ended e) {
                    ended = e.fault();
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
