package headgate.runtime.wire;

import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.util.Optional;

/** Reads frames, and skips what is no frame, up to a limit. */
public final class FrameReader {

    private final InputStream in;
    private final byte[] prefix;
    private final long mostNoise;
    private final byte[] buffer = new byte[65_536];
    private int from;
    private int to;
    private long noise;

    /**
     * Makes a reader.
     *
     * @param in where from; need not be buffered
     * @param nonce 16 bytes that begin every frame
     * @param mostNoise how many bytes that belong to no frame are skipped before reading is given up
     */
    public FrameReader(InputStream in, byte[] nonce, long mostNoise) {
        this.in = in;
        this.prefix = new byte[FrameWriter.MARK.length + nonce.length];
        System.arraycopy(FrameWriter.MARK, 0, prefix, 0, FrameWriter.MARK.length);
        System.arraycopy(nonce, 0, prefix, FrameWriter.MARK.length, nonce.length);
        this.mostNoise = mostNoise;
    }

    /** {@return true if reading was given up, since too much was no frame} */
    public boolean flooded() {
        return noise > mostNoise;
    }

    /**
     * Reads the next frame.
     *
     * @return the frame, or empty at the end of the stream or when {@link #flooded()}
     * @throws IOException if the stream fails
     * @throws WireFormatException if a frame begins that is none
     */
    public Optional<Frame> next() throws IOException {
        int matched = 0;
        while (matched < prefix.length) {
            int b = read();
            if (b < 0 || flooded()) {
                noise += matched;
                return Optional.empty();
            }
            if ((byte) b == prefix[matched]) {
                matched++;
            } else {
                int kept = longestRestart(matched, (byte) b);
                noise += matched + 1L - kept;
                matched = kept;
            }
        }
        try {
            Frame.Type type = Frame.Type.of(octet());
            int sequence = number();
            int length = number();
            if (length < 0 || length > Frame.LARGEST) {
                throw new WireFormatException("a frame must have 0 to " + Frame.LARGEST + " bytes, but says " + length);
            }
            return Optional.of(new Frame(type, sequence, content(length)));
        } catch (EOFException e) {
            return Optional.empty();
        }
    }

    /** How much of the prefix still matches when the byte after a partial match differs. */
    private int longestRestart(int matched, byte b) {
        for (int kept = matched; kept > 0; kept--) {
            boolean same = prefix[kept - 1] == b;
            for (int i = 0; same && i < kept - 1; i++) {
                same = prefix[i] == prefix[matched - kept + 1 + i];
            }
            if (same) {
                return kept;
            }
        }
        return 0;
    }

    private int read() throws IOException {
        if (from == to) {
            from = 0;
            to = Math.max(0, in.read(buffer, 0, buffer.length));
            if (to == 0) {
                return -1;
            }
        }
        return buffer[from++] & 0xff;
    }

    private int octet() throws IOException {
        int b = read();
        if (b < 0) {
            throw new EOFException();
        }
        return b;
    }

    private int number() throws IOException {
        return octet() << 24 | octet() << 16 | octet() << 8 | octet();
    }

    private byte[] content(int length) throws IOException {
        // Grows with what has come, so that a forged length costs no memory.
        WireWriter content = new WireWriter();
        while (content.size() < length) {
            if (from == to) {
                content.octet(octet());
            }
            int chunk = Math.min(length - content.size(), to - from);
            content.raw(buffer, from, chunk);
            from += chunk;
        }
        return content.toBytes();
    }
}
