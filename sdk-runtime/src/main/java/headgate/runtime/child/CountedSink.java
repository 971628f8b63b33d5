package headgate.runtime.child;

import java.io.OutputStream;

/** Takes the place of a standard stream: swallows what is written, and reports when it is too much. */
final class CountedSink extends OutputStream {

    private final long most;
    private final Runnable flooded;
    private long written;

    /**
     * Makes a sink.
     *
     * @param most bytes that are swallowed in silence
     * @param flooded runs at the first byte over it
     */
    CountedSink(long most, Runnable flooded) {
        this.most = most;
        this.flooded = flooded;
    }

    @Override
    public void write(int b) {
        count(1);
    }

    @Override
    public void write(byte[] bytes, int from, int length) {
        count(length);
    }

    private synchronized void count(long bytes) {
        written += bytes;
        if (written > most) {
            flooded.run();
        }
    }
}
