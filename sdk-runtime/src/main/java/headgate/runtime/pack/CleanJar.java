package headgate.runtime.pack;

import java.util.Objects;

/**
 * A plain JAR written by us: a manifest, an index with one class, and the classes that were read, stored without
 * compression, sorted, at one fixed time. Same classes, same bytes, on every machine.
 */
public final class CleanJar {

    private final String id;
    private final String extension;
    private final String subject;
    private final byte[] bytes;

    /**
     * Makes one.
     *
     * @param id the plugin's id
     * @param extension binary name of the head's class
     * @param subject digest of the partner's file
     * @param bytes the JAR
     */
    CleanJar(String id, String extension, String subject, byte[] bytes) {
        this.id = Objects.requireNonNull(id, "id");
        this.extension = Objects.requireNonNull(extension, "extension");
        this.subject = Objects.requireNonNull(subject, "subject");
        this.bytes = bytes.clone();
    }

    /** {@return the plugin's id} */
    public String id() {
        return id;
    }

    /** {@return binary name of the head's class} */
    public String extension() {
        return extension;
    }

    /** {@return SHA-256 of the partner's file that this was made from, lower-case hexadecimal} */
    public String subject() {
        return subject;
    }

    /** {@return a copy of the JAR's bytes} */
    public byte[] bytes() {
        return bytes.clone();
    }
}
