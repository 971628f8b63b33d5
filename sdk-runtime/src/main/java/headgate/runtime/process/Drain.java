package headgate.runtime.process;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;

/** Empties a stream so that its writer never blocks, keeps the beginning, and says when it is too much. */
final class Drain {

    private static final int KEPT = 4096;

    private final InputStream in;
    private final long most;
    private final Runnable flooded;
    private final ByteArrayOutputStream kept = new ByteArrayOutputStream();
    private final Thread thread;
    private volatile boolean over;

    /**
     * Begins.
     *
     * @param in the stream
     * @param most bytes that are let through
     * @param flooded what to do at the first byte over it, once
     */
    Drain(InputStream in, long most, Runnable flooded) {
        this.in = in;
        this.most = most;
        this.flooded = flooded;
        this.thread = new Thread(this::run, "headgate-drain");
        thread.setDaemon(true);
        thread.start();
    }

    private void run() {
        byte[] buffer = new byte[8192];
        long seen = 0;
        try {
            for (int n = in.read(buffer); n >= 0; n = in.read(buffer)) {
                synchronized (kept) {
                    kept.write(buffer, 0, Math.min(n, KEPT - kept.size()));
                }
                seen += n;
                if (seen > most && !over) {
                    over = true;
                    flooded.run();
                }
            }
        } catch (IOException e) {
            // The process is gone, and its stream with it.
        }
    }

    /** {@return true if it was too much} */
    boolean over() {
        return over;
    }

    /**
     * Waits a little for the end of the stream.
     *
     * @return the first 4096 bytes as text
     */
    String text() {
        try {
            thread.join(500);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        synchronized (kept) {
            return kept.toString(StandardCharsets.UTF_8);
        }
    }
}
