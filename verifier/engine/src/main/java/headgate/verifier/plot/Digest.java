package headgate.verifier.plot;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** A digest of named values, in their order. Each is led by its length, so that no two lists of values meet. */
public final class Digest {

    private final MessageDigest sha = sha256();

    /** Begins a digest of nothing. */
    public Digest() {}

    static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java platform has SHA-256", impossible);
        }
    }

    /**
     * Adds a text.
     *
     * @param name what it is
     * @param value the text
     * @return this
     */
    public Digest add(String name, String value) {
        bytes(name.getBytes(StandardCharsets.UTF_8));
        bytes(value.getBytes(StandardCharsets.UTF_8));
        return this;
    }

    /**
     * Adds a number.
     *
     * @param name what it is
     * @param value the number
     * @return this
     */
    public Digest add(String name, double value) {
        return add(name, Long.toHexString(Double.doubleToLongBits(value)));
    }

    /**
     * Adds a whole number.
     *
     * @param name what it is
     * @param value the number
     * @return this
     */
    public Digest add(String name, long value) {
        return add(name, Long.toString(value));
    }

    private void bytes(byte[] bytes) {
        sha.update(ByteBuffer.allocate(Integer.BYTES).putInt(bytes.length).flip());
        sha.update(bytes);
    }

    /** {@return the digest of what was added, lower-case hexadecimal; nothing can be added after that} */
    public String hex() {
        return HexFormat.of().formatHex(sha.digest());
    }
}
