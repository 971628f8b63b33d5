package headgate.runtime.process;

import headgate.runtime.answers.HeadFault;
import headgate.runtime.answers.HeadStage;
import headgate.runtime.pack.CleanJar;
import headgate.runtime.scratch.ScratchFolder;
import headgate.runtime.wire.FaultCodec;
import headgate.runtime.wire.Frame;
import headgate.runtime.wire.FrameReader;
import headgate.runtime.wire.FrameWriter;
import headgate.runtime.wire.WireFormatException;
import headgate.runtime.wire.WireReader;
import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.security.SecureRandom;
import java.time.Duration;
import java.util.Arrays;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Function;

/** One child process and its streams; turns every way in which it can end into a fault. */
final class Child implements AutoCloseable {

    /** The process has ended, or was ended, with the fault that says how. */
    static final class Ended extends Exception {
        private static final long serialVersionUID = 1L;

        private final transient HeadFault fault;

        Ended(HeadFault fault) {
            super(fault.sentence());
            this.fault = fault;
        }

        HeadFault fault() {
            return fault;
        }
    }

    private static final String OUT_OF_MEMORY = "java.lang.OutOfMemoryError";
    private static final int OUT_OF_MEMORY_CODE = 3;
    private static final String NO_NATIVE_MEMORY = "insufficient memory for the Java Runtime";

    /** A process that a signal ended has an exit code from here on. */
    private static final int FIRST_SIGNAL_CODE = 128;

    /** 128 and the number of SIGXCPU, with which the system ends who has used up the processor time. */
    private static final int OUT_OF_PROCESSOR_CODE = 152;

    /** Most of a clean copy that goes into one frame: bytes. */
    private static final int PART = 1 << 20;

    private static final long PATIENCE_MILLIS = 2_000;
    private static final long DEATH_SECONDS = 60;

    /** Children that run; ended by a hook if this program is told to stop. */
    private static final Set<Child> RUNNING = ConcurrentHashMap.newKeySet();

    private static final AtomicBoolean HOOKED = new AtomicBoolean();

    /**
     * Starts all processes. The system can end a process when its parent ends, but takes the thread that started it for the
     * parent; this one lasts as long as the program.
     */
    private static final ExecutorService STARTER = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "headgate-start");
        thread.setDaemon(true);
        return thread;
    });

    private final HeadLimits limits;
    private final Wall wall;
    private final Optional<ScratchFolder> scratch;
    private final Process process;
    private final OutputStream input;
    private final FrameWriter writer;
    private final FrameReader reader;
    private final Deadline deadline;
    private final Drain errors;
    private final AtomicBoolean closed = new AtomicBoolean();

    private Child(HeadLimits limits, Wall wall, Optional<ScratchFolder> scratch, Process process, byte[] nonce) {
        this.limits = limits;
        this.wall = wall;
        this.scratch = scratch;
        this.process = process;
        this.input = process.getOutputStream();
        this.writer = new FrameWriter(input, nonce);
        this.reader = new FrameReader(process.getInputStream(), nonce, limits.outputBytes());
        this.deadline = new Deadline(this::kill);
        this.errors = new Drain(process.getErrorStream(), limits.outputBytes(), this::kill);
    }

    /**
     * Starts a process behind a wall and does not wait for it.
     *
     * @throws IOException if this machine has not got what the wall takes, or refuses a new process
     */
    static Child start(HeadLimits limits, Surroundings surroundings, Wall wall, Tools tools) throws IOException {
        WallCommand command = WallCommand.of(wall, limits, surroundings, tools)
                .orElseThrow(() -> new IOException("this machine has no " + wall.word()));
        ProcessBuilder builder = new ProcessBuilder(command.command());
        builder.environment().clear();
        builder.directory(new File("/"));
        Process process = started(builder);
        byte[] nonce = new byte[Frame.NONCE_BYTES];
        new SecureRandom().nextBytes(nonce);
        Child child = new Child(limits, wall, command.scratch(), process, nonce);
        RUNNING.add(child);
        if (HOOKED.compareAndSet(false, true)) {
            Runtime.getRuntime().addShutdownHook(new Thread(() -> RUNNING.forEach(Child::close), "headgate-end-heads"));
        }
        try {
            child.input.write(nonce);
            child.input.flush();
        } catch (IOException e) {
            // It died at once; waiting for its greeting finds out how.
        }
        return child;
    }

    private static Process started(ProcessBuilder builder) throws IOException {
        try {
            return STARTER.submit(builder::start).get();
        } catch (ExecutionException e) {
            Throwable cause = e.getCause();
            throw new IOException(String.valueOf(cause == null ? e.getMessage() : cause.getMessage()), e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException("starting it was interrupted", e);
        }
    }

    /** {@return what holds it} */
    Wall wall() {
        return wall;
    }

    /** {@return true if it has ended, and nobody killed it: a wall that is refused ends so} */
    boolean endedByItself() {
        return !process.isAlive() && process.exitValue() < FIRST_SIGNAL_CODE;
    }

    /**
     * Sends what to load, beside the caller: a pipe holds less than a package, and the process may not read yet. Nothing
     * else may be sent until it has answered.
     */
    void load(CleanJar jar) {
        Thread thread = new Thread(() -> send(jar.bytes()), "headgate-load");
        thread.setDaemon(true);
        thread.start();
    }

    private void send(byte[] jar) {
        try {
            for (int from = 0; from < jar.length; from += PART) {
                byte[] part = Arrays.copyOfRange(jar, from, Math.min(jar.length, from + PART));
                writer.write(new Frame(Frame.Type.PACKAGE, 0, part));
            }
            writer.write(new Frame(Frame.Type.LOAD, 0, new byte[0]));
        } catch (IOException e) {
            // A process that died early has closed its input; waiting for it finds out how it ended.
        }
    }

    void send(Frame frame, HeadStage stage, Duration limit) throws Ended {
        deadline.set(limit);
        try {
            writer.write(frame);
        } catch (IOException e) {
            throw new Ended(howItEnded(stage, limit));
        }
    }

    byte[] expect(Frame.Type type, HeadStage stage, Duration limit) throws Ended {
        return expect(type, 0, stage, limit);
    }

    byte[] expect(Frame.Type type, int sequence, HeadStage stage, Duration limit) throws Ended {
        deadline.set(limit);
        Optional<Frame> next;
        try {
            next = reader.next();
        } catch (WireFormatException e) {
            throw new Ended(new HeadFault.BadFrame(stage, String.valueOf(e.getMessage())));
        } catch (IOException e) {
            next = Optional.empty();
        }
        if (next.isEmpty()) {
            throw new Ended(howItEnded(stage, limit));
        }
        Frame frame = next.get();
        if (frame.type() == Frame.Type.FAULT) {
            throw new Ended(decoded(stage, frame.content(), FaultCodec::read));
        }
        if (frame.type() != type || frame.sequence() != sequence) {
            throw new Ended(
                    new HeadFault.BadFrame(stage, "expected " + type + " of request " + sequence + ", got " + frame));
        }
        return frame.content();
    }

    /** Nothing is asked now, so nothing can be late. */
    void rest() {
        deadline.lift();
    }

    <T> T decoded(HeadStage stage, byte[] content, Function<WireReader, T> read) throws Ended {
        try {
            return WireReader.whole(content, read);
        } catch (WireFormatException e) {
            throw new Ended(new HeadFault.BadFrame(stage, String.valueOf(e.getMessage())));
        }
    }

    private HeadFault howItEnded(HeadStage stage, Duration limit) {
        if (reader.flooded() || errors.over()) {
            return new HeadFault.OutputFlood(stage, limits.outputBytes());
        }
        if (deadline.struck()) {
            return new HeadFault.TimedOut(stage, limit);
        }
        try {
            if (!process.waitFor(PATIENCE_MILLIS, TimeUnit.MILLISECONDS)) {
                return deadline.struck()
                        ? new HeadFault.TimedOut(stage, limit)
                        : new HeadFault.BadFrame(stage, "it closed its output and went on running");
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return new HeadFault.BadFrame(stage, "waiting for it was interrupted");
        }
        String said = errors.text();
        if (errors.over()) {
            return new HeadFault.OutputFlood(stage, limits.outputBytes());
        }
        int code = process.exitValue();
        if ((code == OUT_OF_MEMORY_CODE && said.contains(OUT_OF_MEMORY))
                || (code == 1 && said.contains(NO_NATIVE_MEMORY))) {
            return new HeadFault.OutOfMemory(stage);
        }
        if (code == OUT_OF_PROCESSOR_CODE) {
            return new HeadFault.OutOfProcessorTime(stage, limits.processor());
        }
        if (stage == HeadStage.START) {
            String first = said.lines().findFirst().orElse("it said nothing");
            return new HeadFault.StartFailed("it ended with exit code " + code + "; " + first);
        }
        return new HeadFault.Exited(stage, code);
    }

    /** Kills the process, and before it whatever it has started: later nobody would know whose that is. */
    private void kill() {
        if (process.isAlive()) {
            process.descendants().forEach(ProcessHandle::destroyForcibly);
            process.destroyForcibly();
        }
    }

    @Override
    public void close() {
        if (!closed.compareAndSet(false, true)) {
            return;
        }
        deadline.close();
        try {
            input.close();
        } catch (IOException e) {
            // It is closed either way.
        }
        try {
            if (ChildCommand.endsInOrder()) {
                process.waitFor(PATIENCE_MILLIS * 10, TimeUnit.MILLISECONDS);
            }
            kill();
            // A killed process is gone as soon as the system gets to it; on a busy machine that may take a while.
            process.waitFor(DEATH_SECONDS, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            kill();
            Thread.currentThread().interrupt();
        }
        scratch.ifPresent(ScratchFolder::delete);
        RUNNING.remove(this);
    }
}
