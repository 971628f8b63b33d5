package headgate.verifier.plot;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.security.MessageDigest;
import java.util.Arrays;
import java.util.Optional;

/**
 * Results of finished plots in a folder, one file each, so that a run that was stopped goes on where it was. A file's name
 * is the digest of all that its result follows from; its end is the digest of what stands before. A file is written
 * aside and then moved, and one that is cut short or changed is as good as none.
 */
public final class KeptResults {

    /** How the files' names end. */
    public static final String ENDING = ".plot";

    /** What a file begins with; changes with its form. */
    private static final String FORMAT = "headgate.kept-plot/1";

    private static final int DIGEST = 32;

    /** Makes the folder ready to be written to. */
    @FunctionalInterface
    public interface Opening {

        /**
         * Makes it ready, if it is not.
         *
         * @throws IOException if that cannot be done
         */
        void open() throws IOException;
    }

    private final Path folder;
    private final Opening opening;

    /**
     * Keeps results in a folder.
     *
     * @param folder a folder; it need not be there before the first result is kept
     * @param opening makes it; asked before each result is kept
     */
    public KeptResults(Path folder, Opening opening) {
        this.folder = folder;
        this.opening = opening;
    }

    /**
     * Finds a result.
     *
     * @param key digest of all that it follows from
     * @return the result; empty if it is not kept, or not whole
     * @throws IOException if the folder cannot be read
     */
    public Optional<PlotResult> find(String key) throws IOException {
        byte[] bytes;
        try {
            bytes = Files.readAllBytes(file(key));
        } catch (NoSuchFileException none) {
            return Optional.empty();
        }
        if (bytes.length < DIGEST) {
            return Optional.empty();
        }
        byte[] content = Arrays.copyOf(bytes, bytes.length - DIGEST);
        byte[] end = Arrays.copyOfRange(bytes, bytes.length - DIGEST, bytes.length);
        if (!MessageDigest.isEqual(Digest.sha256().digest(content), end)) {
            return Optional.empty();
        }
        try (DataInputStream in = new DataInputStream(new ByteArrayInputStream(content))) {
            boolean same = in.readUTF().equals(FORMAT) && in.readUTF().equals(key);
            return same ? Optional.of(ResultCodec.read(in)) : Optional.empty();
        }
    }

    /**
     * Keeps a result.
     *
     * @param key digest of all that it follows from
     * @param result the result
     * @throws IOException if it cannot be written; then nothing is kept
     */
    public void keep(String key, PlotResult result) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (DataOutputStream out = new DataOutputStream(bytes)) {
            out.writeUTF(FORMAT);
            out.writeUTF(key);
            ResultCodec.write(result, out);
        }
        byte[] content = bytes.toByteArray();
        bytes.write(Digest.sha256().digest(content));
        opening.open();
        Path aside = Files.createTempFile(folder, ".new-", ENDING);
        try {
            Files.write(aside, bytes.toByteArray());
            try (FileChannel channel = FileChannel.open(aside, StandardOpenOption.WRITE)) {
                channel.force(true);
            }
            Files.move(aside, file(key), StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(aside);
        }
    }

    private Path file(String key) {
        return folder.resolve(key + ENDING);
    }
}
