package headgate.runtime.wire;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Reads plain values from bytes, and refuses whatever no {@link WireWriter} writes. */
public final class WireReader {

    private final byte[] bytes;
    private int at;

    /**
     * Begins at the first byte.
     *
     * @param bytes what to read; not changed meanwhile
     */
    public WireReader(byte[] bytes) {
        this.bytes = bytes;
    }

    /**
     * Reads one value that fills all bytes.
     *
     * @param <T> type of the value
     * @param bytes the bytes
     * @param each reads it
     * @return the value
     * @throws WireFormatException if the bytes are anything else
     */
    public static <T> T whole(byte[] bytes, Function<WireReader, T> each) {
        WireReader reader = new WireReader(bytes);
        T value;
        try {
            value = each.apply(reader);
        } catch (WireFormatException e) {
            throw e;
        } catch (IllegalArgumentException e) {
            // The builders of the head API refuse with this type.
            throw new WireFormatException("a value is out of bounds: " + e.getMessage());
        }
        reader.end();
        return value;
    }

    /**
     * Checks that nothing is left.
     *
     * @throws WireFormatException if something is
     */
    public void end() {
        if (at != bytes.length) {
            throw new WireFormatException((bytes.length - at) + " bytes are left over");
        }
    }

    private void need(int count) {
        if (count < 0 || bytes.length - at < count) {
            throw new WireFormatException("the bytes end too early, at " + bytes.length);
        }
    }

    /** {@return one byte, 0 to 255} */
    public int octet() {
        need(1);
        return bytes[at++] & 0xff;
    }

    /** {@return four bytes as an int} */
    public int number() {
        need(4);
        int value = 0;
        for (int i = 0; i < 4; i++) {
            value = value << 8 | (bytes[at++] & 0xff);
        }
        return value;
    }

    /** {@return eight bytes as a long} */
    public long longNumber() {
        return (long) number() << 32 | (number() & 0xffff_ffffL);
    }

    /** {@return a finite double} */
    public double figure() {
        double value = Double.longBitsToDouble(longNumber());
        if (!Double.isFinite(value)) {
            throw new WireFormatException("a figure must be finite, but is " + value);
        }
        return value;
    }

    /** {@return a truth value} */
    public boolean flag() {
        int value = octet();
        if (value > 1) {
            throw new WireFormatException("a truth value must be 0 or 1, but is " + value);
        }
        return value == 1;
    }

    /** {@return a text} */
    public String text() {
        int length = number();
        if (length > WireWriter.LONGEST_TEXT) {
            throw new WireFormatException("a text must have at most " + WireWriter.LONGEST_TEXT + " bytes");
        }
        byte[] utf8 = raw(length);
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(utf8))
                    .toString();
        } catch (CharacterCodingException e) {
            throw new WireFormatException("a text must be UTF-8");
        }
    }

    /**
     * Reads bytes as they are.
     *
     * @param length how many
     * @return the bytes
     */
    public byte[] raw(int length) {
        need(length);
        byte[] value = new byte[length];
        System.arraycopy(bytes, at, value, 0, length);
        at += length;
        return value;
    }

    /**
     * Reads how many follow, then each.
     *
     * @param <T> type of the elements
     * @param each reads one
     * @return the elements
     */
    public <T> List<T> list(Function<WireReader, T> each) {
        int length = number();
        if (length < 0 || length > WireWriter.LONGEST_LIST) {
            throw new WireFormatException("a list must have 0 to " + WireWriter.LONGEST_LIST + " elements");
        }
        // Room for a few only: a forged length must not cost memory.
        List<T> values = new ArrayList<>(Math.min(length, 1024));
        for (int i = 0; i < length; i++) {
            values.add(each.apply(this));
        }
        return List.copyOf(values);
    }

    /**
     * Reads whether there is a value, then the value.
     *
     * @param <T> type of the value
     * @param each reads it
     * @return the value, if there is one
     */
    public <T> Optional<T> maybe(Function<WireReader, T> each) {
        return flag() ? Optional.of(each.apply(this)) : Optional.empty();
    }

    /**
     * Reads a constant by its name.
     *
     * @param <E> type of the constants
     * @param type type of the constants
     * @return the constant
     */
    public <E extends Enum<E>> E constant(Class<E> type) {
        String name = text();
        try {
            return Enum.valueOf(type, name);
        } catch (IllegalArgumentException e) {
            throw new WireFormatException("no " + type.getSimpleName() + " is named \"" + name + '"');
        }
    }
}
