package headgate.runtime.wire;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;

/** Writes frames, each with one call, so that what else is written to the stream falls between frames. */
public final class FrameWriter {

    static final byte[] MARK = "HGF1".getBytes(StandardCharsets.US_ASCII);

    private final OutputStream out;
    private final byte[] nonce;
    private final WireWriter buffer = new WireWriter();

    /**
     * Makes a writer.
     *
     * @param out where to; not buffered
     * @param nonce 16 bytes that begin every frame
     */
    public FrameWriter(OutputStream out, byte[] nonce) {
        this.out = out;
        this.nonce = nonce.clone();
    }

    /**
     * Writes a frame.
     *
     * @param frame the frame
     * @throws IOException if the stream is closed
     */
    public synchronized void write(Frame frame) throws IOException {
        buffer.clear();
        buffer.raw(MARK);
        buffer.raw(nonce);
        buffer.octet(frame.type().code());
        buffer.number(frame.sequence());
        buffer.number(frame.content().length);
        buffer.raw(frame.content());
        buffer.flushTo(out);
    }
}
