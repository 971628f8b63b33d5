package headgate.runtime.process;

import java.time.Duration;
import java.util.concurrent.locks.LockSupport;

/**
 * Kills a process whose answer is late. A thread of its own waits, so that the one that reads answers can block in the
 * read: the kill ends the stream.
 */
final class Deadline implements AutoCloseable {

    private static final long NEVER = Long.MAX_VALUE;

    private final Runnable kill;
    private final Thread thread;
    private volatile long at = NEVER;
    private volatile long parkedUntil = NEVER;
    private volatile boolean struck;
    private volatile boolean closed;

    /**
     * Begins without a limit.
     *
     * @param kill what to do when it is late
     */
    Deadline(Runnable kill) {
        this.kill = kill;
        this.thread = new Thread(this::watch, "headgate-deadline");
        thread.setDaemon(true);
        thread.start();
    }

    /**
     * Sets the limit anew.
     *
     * @param limit how long from now
     */
    void set(Duration limit) {
        // Nanosecond time may wrap, but not within the life of a machine that starts near zero.
        at = System.nanoTime() + limit.toNanos();
        if (at < parkedUntil) {
            LockSupport.unpark(thread);
        }
    }

    /** Takes the limit away. */
    void lift() {
        at = NEVER;
    }

    /** {@return true if it was late and killed} */
    boolean struck() {
        return struck;
    }

    private void watch() {
        while (!closed) {
            long now = System.nanoTime();
            long due = at;
            if (due <= now) {
                struck = true;
                kill.run();
                return;
            }
            parkedUntil = due;
            if (due != at) {
                // Set anew while going to sleep: look again.
                continue;
            }
            if (due == NEVER) {
                LockSupport.park(this);
            } else {
                LockSupport.parkNanos(this, due - now);
            }
        }
    }

    @Override
    public void close() {
        closed = true;
        LockSupport.unpark(thread);
    }
}
