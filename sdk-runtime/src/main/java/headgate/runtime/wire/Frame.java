package headgate.runtime.wire;

import java.util.Arrays;

/**
 * One message: what it is, which request it belongs to, and its content.
 *
 * <p>On the wire: four bytes of mark, 16 bytes of nonce, one byte of type, four of sequence, four of length, the content.
 */
public final class Frame {

    /** Bytes of the nonce. */
    public static final int NONCE_BYTES = 16;

    /** Most bytes of content. */
    public static final int LARGEST = 8 * 1024 * 1024;

    /** What a message is. */
    public enum Type {
        /** From the child: the virtual machine is up. */
        HELLO('H'),
        /** From the child: the head is loaded; one byte says its kind. */
        LOADED('L'),
        /** From the child: the head's sheet. */
        SHEET('S'),
        /** From the child: what came back for one spot task. */
        SPOT_ANSWER('A'),
        /** From the child: what came back for one row task. */
        ROW_ANSWER('E'),
        /** From the child: the fault that ends it. */
        FAULT('F'),
        /** From the parent: the next part of the clean copy. */
        PACKAGE('p'),
        /** From the parent: the clean copy is complete, load it. */
        LOAD('l'),
        /** From the parent: spot tasks. */
        ACT('a'),
        /** From the parent: row tasks. */
        ENGAGE('e');

        private final char code;

        Type(char code) {
            this.code = code;
        }

        /** {@return the byte that stands for it on the wire} */
        int code() {
            return code;
        }

        static Type of(int code) {
            for (Type type : values()) {
                if (type.code == code) {
                    return type;
                }
            }
            throw new WireFormatException("no frame has the type " + code);
        }
    }

    private final Type type;
    private final int sequence;
    private final byte[] content;

    /**
     * Makes a frame.
     *
     * @param type what it is
     * @param sequence number of the request, from 0
     * @param content its content; not copied, at most 8 MiB
     */
    public Frame(Type type, int sequence, byte[] content) {
        if (content.length > LARGEST) {
            throw new WireFormatException("a frame must have at most " + LARGEST + " bytes");
        }
        this.type = type;
        this.sequence = sequence;
        this.content = content;
    }

    /** {@return what it is} */
    public Type type() {
        return type;
    }

    /** {@return the number of the request that it belongs to} */
    public int sequence() {
        return sequence;
    }

    /** {@return its content; not a copy} */
    public byte[] content() {
        return content;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Frame that
                && type == that.type
                && sequence == that.sequence
                && Arrays.equals(content, that.content);
    }

    @Override
    public int hashCode() {
        return 31 * (31 * type.code() + sequence) + Arrays.hashCode(content);
    }

    /** {@return type, sequence and length} */
    @Override
    public String toString() {
        return type + " of request " + sequence + ", " + content.length + " bytes";
    }
}
