package headgate.runtime.stand;

import headgate.runtime.form.ObjectForm;
import headgate.runtime.origin.FileProblem;
import headgate.runtime.origin.InvalidFileException;
import headgate.runtime.origin.Place;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.function.Consumer;

/**
 * Reads stands as streams: comma-separated values, or GeoJSON points in local metres. Which of the two a file is, its
 * first character says. However many plants there are, only one is held at a time.
 */
public final class StandReader {

    private StandReader() {}

    /**
     * Reads a stand.
     *
     * @param path the file
     * @param plants takes each plant, in the order of the file; it is not called again once something is wrong
     * @return what the stand holds
     * @throws InvalidFileException if the file cannot be read or is not a stand; it holds the first hundred problems
     */
    public static StandSummary read(Path path, Consumer<Plant> plants) throws InvalidFileException {
        String name = path.toString();
        if (Files.isDirectory(path)) {
            throw refused(name, "a directory", "name the file itself");
        }
        try (InputStream in = Files.newInputStream(path)) {
            return read(name, in, plants);
        } catch (NoSuchFileException missing) {
            throw refused(name, "no such file", "check the name and the folder");
        } catch (AccessDeniedException denied) {
            throw refused(name, "a file that may not be read", "check the file's permissions");
        } catch (IOException broken) {
            throw refused(name, "a read error", "check the disk");
        }
    }

    /**
     * Reads a stand from a stream.
     *
     * @param name the file's name, for messages
     * @param in its bytes; read to the end, not closed
     * @param plants takes each plant, in the order of the file
     * @return what the stand holds
     * @throws IOException if the stream breaks
     * @throws InvalidFileException if the bytes are not a stand; it holds the first hundred problems
     */
    public static StandSummary read(String name, InputStream in, Consumer<Plant> plants)
            throws IOException, InvalidFileException {
        MessageDigest digest = sha256();
        BufferedInputStream bytes = new BufferedInputStream(new DigestInputStream(in, digest), 1 << 16);
        Reader text = new InputStreamReader(
                bytes,
                StandardCharsets.UTF_8
                        .newDecoder()
                        .onMalformedInput(CodingErrorAction.REPORT)
                        .onUnmappableCharacter(CodingErrorAction.REPORT));
        StandTally tally = new StandTally(plants);
        bytes.mark(1);
        int first = bytes.read();
        bytes.reset();
        try {
            if (first == '{') {
                StandGeoJson.read(name, text, tally);
            } else {
                StandCsv.read(name, text, tally);
            }
        } catch (UncheckedIOException broken) {
            if (broken.getCause() instanceof CharacterCodingException) {
                throw refused(name, "bytes that are not UTF-8", "save the file as UTF-8");
            }
            throw broken.getCause();
        }
        return tally.summary(name, HexFormat.of().formatHex(digest.digest()));
    }

    /** {@return what a stand in GeoJSON may hold} */
    public static ObjectForm geoJsonForm() {
        return StandGeoJson.COLLECTION;
    }

    private static InvalidFileException refused(String name, String found, String advice) {
        return new InvalidFileException(
                List.of(new FileProblem(Place.ofFile(name), "", found, "a readable file of a stand", advice)));
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java platform has SHA-256", impossible);
        }
    }
}
