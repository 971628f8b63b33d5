package headgate.runtime.child;

import headgate.api.answer.Action;
import headgate.api.answer.Engagement;
import headgate.api.head.ContinuousHead;
import headgate.api.head.SpotHead;
import headgate.api.head.ToolHead;
import headgate.api.sheet.HeadSheet;
import headgate.runtime.answers.HeadFault;
import headgate.runtime.answers.HeadKind;
import headgate.runtime.answers.HeadStage;
import headgate.runtime.answers.RowAnswer;
import headgate.runtime.answers.SpotAnswer;
import headgate.runtime.scratch.ScratchFolder;
import headgate.runtime.task.LatticeRowTask;
import headgate.runtime.task.LatticeSpotTask;
import headgate.runtime.wire.AnswerCodec;
import headgate.runtime.wire.FaultCodec;
import headgate.runtime.wire.Frame;
import headgate.runtime.wire.FrameReader;
import headgate.runtime.wire.FrameWriter;
import headgate.runtime.wire.SheetCodec;
import headgate.runtime.wire.TaskCodec;
import headgate.runtime.wire.WireFormatException;
import headgate.runtime.wire.WireReader;
import headgate.runtime.wire.WireWriter;
import java.io.DataInputStream;
import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.SynchronousQueue;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.pf4j.PluginManager;

/**
 * The program of a head process.
 *
 * <p>It takes standard output for frames before anything else can, and gives the head streams that only count. Requests
 * come in on standard input, behind 16 bytes of nonce; when that ends, the parent is gone or done, and the process ends
 * at once, whatever the head is doing. Each answer is sent before the next task is looked at, so that the parent knows
 * which task a head died of.
 */
public final class HeadChild {

    /** Name of the switch that makes the process end in the way that writes a class-data archive. */
    public static final String ORDERLY_END = "headgate.child.orderly-end";

    private final FrameWriter frames;
    private final SynchronousQueue<Frame> requests = new SynchronousQueue<>();
    private final long mostOutput;
    private final Optional<ScratchFolder> own;
    private volatile HeadStage stage = HeadStage.START;
    private int sequence;

    private HeadChild(FrameWriter frames, long mostOutput, Optional<ScratchFolder> own) {
        this.frames = frames;
        this.mostOutput = mostOutput;
        this.own = own;
    }

    /**
     * Runs the process.
     *
     * @param args how many bytes the head may write to its standard streams; the salt of unordered sets; {@code clear} if
     *     the folder for temporary files is this process's own and goes with it
     */
    public static void main(String[] args) {
        OutputStream out = new FileOutputStream(FileDescriptor.out);
        InputStream in = new FileInputStream(FileDescriptor.in);
        Optional<ScratchFolder> own =
                args[2].equals("clear") ? Optional.of(new ScratchFolder(scratch())) : Optional.empty();
        byte[] nonce = new byte[Frame.NONCE_BYTES];
        try {
            new DataInputStream(in).readFully(nonce);
        } catch (IOException e) {
            // The parent is gone before it has said anything.
            leave(own);
        }
        Salt.set(Long.parseLong(args[1]));
        HeadChild child = new HeadChild(new FrameWriter(out, nonce), Long.parseLong(args[0]), own);
        System.setIn(InputStream.nullInputStream());
        System.setOut(child.sink());
        System.setErr(child.sink());
        child.listen(new FrameReader(in, nonce, 0));
        child.run();
    }

    private PrintStream sink() {
        return new PrintStream(
                new CountedSink(mostOutput, () -> end(new HeadFault.OutputFlood(stage, mostOutput))),
                false,
                StandardCharsets.UTF_8);
    }

    private void listen(FrameReader reader) {
        Thread listener = new Thread(
                () -> {
                    try {
                        for (Optional<Frame> frame = reader.next(); frame.isPresent(); frame = reader.next()) {
                            requests.put(frame.get());
                        }
                    } catch (IOException | WireFormatException | InterruptedException e) {
                        // Then the parent is as good as gone, too.
                    } finally {
                        leave(own);
                    }
                },
                "headgate-requests");
        listener.setDaemon(true);
        listener.start();
    }

    private static Path scratch() {
        return Path.of(System.getProperty("java.io.tmpdir"));
    }

    /** Nobody listens any more, and nobody else is left to clear up. */
    private static void leave(Optional<ScratchFolder> own) {
        own.ifPresent(ScratchFolder::delete);
        if (Boolean.getBoolean(ORDERLY_END)) {
            Runtime.getRuntime().exit(0);
        }
        Runtime.getRuntime().halt(0);
    }

    /** Takes in the clean copy, part by part. */
    private Path received() {
        Path jar = scratch().resolve("head.jar");
        try (OutputStream out = Files.newOutputStream(jar)) {
            for (Frame frame = next(); frame.type() == Frame.Type.PACKAGE; frame = next()) {
                out.write(frame.content());
            }
        } catch (IOException e) {
            end(new HeadFault.StartFailed("the clean copy could not be put into its folder: " + Throwables.message(e)));
        }
        return jar;
    }

    private void run() {
        send(Frame.Type.HELLO, new WireWriter());
        PluginManager host = HeadLoader.host();
        Path jar = received();
        Threads threads = new Threads();
        stage = HeadStage.LOAD;
        ToolHead head;
        try {
            head = HeadLoader.load(host, jar);
        } catch (HeadLoader.NotLoaded e) {
            end(e.fault());
            return;
        }
        endIfLeft(threads);
        WireWriter kind = new WireWriter();
        kind.text(kind(head).name());
        send(Frame.Type.LOADED, kind);

        stage = HeadStage.SHEET;
        sendSheet(head);
        endIfLeft(threads);

        while (true) {
            Frame request = next();
            sequence = request.sequence();
            if (request.type() == Frame.Type.ACT) {
                stage = HeadStage.ACT;
                for (LatticeSpotTask task : WireReader.whole(request.content(), in -> in.list(TaskCodec::spot))) {
                    answer(threads, Frame.Type.SPOT_ANSWER, out -> act(out, head, task));
                }
            } else {
                stage = HeadStage.ENGAGE;
                for (LatticeRowTask task : WireReader.whole(request.content(), in -> in.list(TaskCodec::row))) {
                    answer(threads, Frame.Type.ROW_ANSWER, out -> engage(out, head, task));
                }
            }
        }
    }

    private static HeadKind kind(ToolHead head) {
        boolean spot = head instanceof SpotHead;
        boolean continuous = head instanceof ContinuousHead;
        return spot && continuous
                ? HeadKind.BOTH
                : spot ? HeadKind.SPOT : continuous ? HeadKind.CONTINUOUS : HeadKind.NEITHER;
    }

    private void sendSheet(ToolHead head) {
        WireWriter out = new WireWriter();
        try {
            @Nullable HeadSheet sheet = head.sheet();
            if (sheet == null) {
                end(new HeadFault.ReturnedNull(stage));
                return;
            }
            SheetCodec.write(out, sheet);
        } catch (Throwable t) {
            end(Throwables.fault(stage, t));
            return;
        }
        send(Frame.Type.SHEET, out);
    }

    private void answer(Threads threads, Frame.Type type, Consumer<WireWriter> asking) {
        WireWriter out = new WireWriter();
        try {
            asking.accept(out);
        } catch (Throwable t) {
            HeadFault fault = Throwables.fault(stage, t);
            if (fault.ended()) {
                end(fault);
            }
            out.clear();
            out.flag(false);
            FaultCodec.write(out, fault);
        }
        endIfLeft(threads);
        send(type, out);
    }

    private void act(WireWriter out, ToolHead head, LatticeSpotTask task) {
        if (!(head instanceof SpotHead spot)) {
            AnswerCodec.spot(out, new SpotAnswer.Failed(new HeadFault.WrongKind(stage)));
            return;
        }
        @Nullable Action action = spot.act(task);
        AnswerCodec.spot(
                out,
                action == null
                        ? new SpotAnswer.Failed(new HeadFault.ReturnedNull(stage))
                        : new SpotAnswer.Answered(action));
    }

    private void engage(WireWriter out, ToolHead head, LatticeRowTask task) {
        if (!(head instanceof ContinuousHead continuous)) {
            AnswerCodec.row(out, new RowAnswer.Failed(new HeadFault.WrongKind(stage)));
            return;
        }
        @Nullable Engagement engagement = continuous.engage(task);
        AnswerCodec.row(
                out,
                engagement == null
                        ? new RowAnswer.Failed(new HeadFault.ReturnedNull(stage))
                        : new RowAnswer.Answered(engagement));
    }

    private void endIfLeft(Threads threads) {
        threads.extra().ifPresent(name -> end(new HeadFault.LeftThread(stage, name)));
    }

    private Frame next() {
        // A head may have interrupted this thread, its own.
        Thread.interrupted();
        try {
            return requests.take();
        } catch (InterruptedException e) {
            // Nobody but a thread that the head left behind can do this.
            Runtime.getRuntime().halt(0);
            throw new IllegalStateException(e);
        }
    }

    private void send(Frame.Type type, WireWriter content) {
        try {
            frames.write(new Frame(type, sequence, content.toBytes()));
        } catch (IOException e) {
            leave(own);
        }
    }

    /** Says why, and ends the process without giving the head another instruction. */
    private void end(HeadFault fault) {
        WireWriter out = new WireWriter();
        FaultCodec.write(out, fault);
        send(Frame.Type.FAULT, out);
        Runtime.getRuntime().halt(0);
    }
}
