package headgate.runtime.text;

import headgate.runtime.origin.FileProblem;
import headgate.runtime.origin.InvalidFileException;
import headgate.runtime.origin.Place;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;

/**
 * The text of a file that somebody wrote, with the digest of its bytes.
 *
 * @param name the file's name as it was given
 * @param text its text
 * @param sha256 digest of its bytes, lower-case hexadecimal
 */
public record SourceFile(String name, String text, String sha256) {

    /** Largest file that is read, bytes: 4 MiB. A carriage with all its arms takes some 30 kB. */
    public static final int MOST_BYTES = 4 << 20;

    /**
     * Reads a file.
     *
     * @param path the file
     * @return its text and digest
     * @throws InvalidFileException if it is missing, a directory, empty, over {@link #MOST_BYTES}, not UTF-8, begins with
     *     a byte order mark, or cannot be read
     */
    public static SourceFile read(Path path) throws InvalidFileException {
        String name = path.toString();
        if (Files.isDirectory(path)) {
            throw refused(name, "a directory", "a file", "name the file itself");
        }
        byte[] bytes;
        // One byte more than the limit tells a file that is too large, without reading all of it.
        try (InputStream in = Files.newInputStream(path)) {
            bytes = in.readNBytes(MOST_BYTES + 1);
        } catch (java.nio.file.NoSuchFileException missing) {
            throw refused(name, "no such file", "a file", "check the name and the folder");
        } catch (java.nio.file.AccessDeniedException denied) {
            throw refused(name, "a file that may not be read", "a readable file", "check the file's permissions");
        } catch (IOException broken) {
            throw refused(
                    name,
                    "a read error (" + Quote.of(String.valueOf(broken.getMessage())) + ")",
                    "a readable file",
                    "check the disk");
        }
        return of(name, bytes);
    }

    /**
     * Takes the bytes of a file.
     *
     * @param name the file's name, for messages
     * @param bytes its bytes
     * @return its text and digest
     * @throws InvalidFileException as {@link #read}
     */
    public static SourceFile of(String name, byte[] bytes) throws InvalidFileException {
        if (bytes.length == 0) {
            throw refused(name, "an empty file", "a JSON object", "");
        }
        if (bytes.length > MOST_BYTES) {
            throw refused(name, "more than " + MOST_BYTES + " bytes", "a file of at most 4 MiB", "");
        }
        return new SourceFile(name, decode(name, bytes), sha256(bytes));
    }

    private static InvalidFileException refused(String name, String found, String expected, String advice) {
        return new InvalidFileException(List.of(new FileProblem(Place.ofFile(name), "", found, expected, advice)));
    }

    private static String decode(String name, byte[] bytes) throws InvalidFileException {
        if (bytes.length >= 3 && (bytes[0] & 0xff) == 0xef && (bytes[1] & 0xff) == 0xbb && (bytes[2] & 0xff) == 0xbf) {
            throw problem(
                    name, 1, 1, "a byte order mark", "UTF-8 without a byte order mark", "save the file without it");
        }
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(bytes.length);
        CoderResult result = decoder.decode(in, out, true);
        String text = out.flip().toString();
        if (result.isError()) {
            Place at = placeAt(name, text, text.length());
            int octet = bytes[in.position()] & 0xff;
            throw problem(
                    name,
                    at.line(),
                    at.column(),
                    String.format(Locale.ROOT, "the byte 0x%02X", octet),
                    "text in UTF-8",
                    "save the file as UTF-8");
        }
        return text;
    }

    private static InvalidFileException problem(
            String name, int line, int column, String found, String expected, String advice) {
        return new InvalidFileException(
                List.of(new FileProblem(new Place(name, line, column), "", found, expected, advice)));
    }

    /** Counts lines up to a character: a line ends with LF, CR or CR LF, as in the parser's own count. */
    static Place placeAt(String name, String text, int offset) {
        int line = 1;
        int start = 0;
        for (int i = 0; i < offset; i++) {
            char c = text.charAt(i);
            if (c == '\n' || (c == '\r' && !(i + 1 < text.length() && text.charAt(i + 1) == '\n'))) {
                line++;
                start = i + 1;
            }
        }
        return new Place(name, line, offset - start + 1);
    }

    private static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java platform has SHA-256", impossible);
        }
    }
}
