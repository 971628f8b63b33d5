package headgate.runtime.wire;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;

/** Writes plain values to bytes. */
public final class WireWriter {

    /** Most bytes of one text. */
    static final int LONGEST_TEXT = 16_384;

    /** Most elements of one list. */
    static final int LONGEST_LIST = 65_536;

    private byte[] bytes = new byte[512];
    private int size;

    /** Begins without a byte. */
    public WireWriter() {}

    /** Forgets what was written, to use the space again. */
    public void clear() {
        size = 0;
    }

    /** {@return how many bytes were written} */
    public int size() {
        return size;
    }

    /** {@return a copy of what was written} */
    public byte[] toBytes() {
        return Arrays.copyOf(bytes, size);
    }

    private void room(int more) {
        if (bytes.length - size < more) {
            bytes = Arrays.copyOf(bytes, Math.max(bytes.length * 2, size + more));
        }
    }

    /**
     * Writes one byte.
     *
     * @param value 0 to 255
     */
    public void octet(int value) {
        room(1);
        bytes[size++] = (byte) value;
    }

    /**
     * Writes four bytes.
     *
     * @param value any int
     */
    public void number(int value) {
        room(4);
        for (int shift = 24; shift >= 0; shift -= 8) {
            bytes[size++] = (byte) (value >>> shift);
        }
    }

    /**
     * Writes eight bytes.
     *
     * @param value any long
     */
    public void number(long value) {
        room(8);
        for (int shift = 56; shift >= 0; shift -= 8) {
            bytes[size++] = (byte) (value >>> shift);
        }
    }

    /**
     * Writes a figure.
     *
     * @param value a finite double
     * @throws WireFormatException if it is not finite
     */
    public void figure(double value) {
        if (!Double.isFinite(value)) {
            throw new WireFormatException("a figure must be finite, but is " + value);
        }
        number(Double.doubleToRawLongBits(value));
    }

    /**
     * Writes a truth value.
     *
     * @param value the value
     */
    public void flag(boolean value) {
        octet(value ? 1 : 0);
    }

    /**
     * Writes a text.
     *
     * @param value the text; at most 16 384 bytes in UTF-8
     * @throws WireFormatException if it is longer
     */
    public void text(String value) {
        byte[] utf8 = value.getBytes(StandardCharsets.UTF_8);
        if (utf8.length > LONGEST_TEXT) {
            throw new WireFormatException("a text must have at most " + LONGEST_TEXT + " bytes");
        }
        number(utf8.length);
        raw(utf8);
    }

    /**
     * Writes bytes as they are.
     *
     * @param value the bytes
     */
    public void raw(byte[] value) {
        raw(value, 0, value.length);
    }

    void raw(byte[] value, int from, int length) {
        room(length);
        System.arraycopy(value, from, bytes, size, length);
        size += length;
    }

    void flushTo(OutputStream out) throws IOException {
        out.write(bytes, 0, size);
        out.flush();
    }

    /**
     * Writes how many follow, then each.
     *
     * @param <T> type of the elements
     * @param values the elements; at most 65 536
     * @param each writes one
     * @throws WireFormatException if there are more
     */
    public <T> void list(List<? extends T> values, BiConsumer<WireWriter, ? super T> each) {
        if (values.size() > LONGEST_LIST) {
            throw new WireFormatException("a list must have at most " + LONGEST_LIST + " elements");
        }
        number(values.size());
        for (T value : values) {
            each.accept(this, value);
        }
    }

    /**
     * Writes whether there is a value, then the value.
     *
     * @param <T> type of the value
     * @param value the value, if there is one
     * @param each writes it
     */
    public <T> void maybe(Optional<? extends T> value, BiConsumer<WireWriter, ? super T> each) {
        flag(value.isPresent());
        if (value.isPresent()) {
            each.accept(this, value.get());
        }
    }
}
