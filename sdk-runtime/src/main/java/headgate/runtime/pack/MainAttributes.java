package headgate.runtime.pack;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The main section of a JAR manifest (JAR File Specification, "JAR Manifest"), read strictly: an attribute that is there
 * twice is an error and not the last one's win.
 */
final class MainAttributes {

    private final SortedMap<String, String> byName = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
    private final List<PackageProblem> problems = new ArrayList<>();
    private boolean readable = true;

    private MainAttributes() {}

    /**
     * Reads a manifest.
     *
     * @param bytes the content of {@code META-INF/MANIFEST.MF}
     * @return its main attributes, and what is wrong with them
     */
    static MainAttributes read(byte[] bytes) {
        MainAttributes result = new MainAttributes();
        if (bytes.length > PackageLimits.TEXT) {
            result.readable = false;
            result.problem("manifest", bytes.length + " bytes", "must have at most " + PackageLimits.TEXT + " bytes");
            return result;
        }
        String text;
        try {
            text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException e) {
            result.readable = false;
            result.problem("manifest", "other bytes", "must be UTF-8");
            return result;
        }
        String logical = "";
        int number = 0;
        int begun = 1;
        for (String line : text.split("\r\n|\n|\r", -1)) {
            number++;
            if (line.startsWith(" ") && !logical.isEmpty()) {
                logical += line.substring(1);
                continue;
            }
            result.add(logical, begun);
            if (line.isEmpty()) {
                logical = "";
                break;
            }
            logical = line;
            begun = number;
        }
        result.add(logical, begun);
        return result;
    }

    private void add(String line, int number) {
        if (line.isEmpty()) {
            return;
        }
        int colon = line.indexOf(": ");
        if (colon < 1 || !line.substring(0, colon).matches("[A-Za-z0-9_-]{1,70}")) {
            problem("manifest line " + number, '"' + Printable.text(line) + '"', "must have the form Name: value");
            return;
        }
        String name = line.substring(0, colon);
        if (byName.putIfAbsent(name, line.substring(colon + 2).strip()) != null) {
            problem(name, "a second one", "must be in the manifest once");
        }
    }

    private void problem(String where, String found, String expected) {
        problems.add(new PackageProblem(PackageProblem.Kind.MANIFEST, where, found, expected));
    }

    /**
     * Finds an attribute.
     *
     * @param name its name, in any case
     * @return its value
     */
    Optional<String> get(String name) {
        return Optional.ofNullable(byName.get(name));
    }

    /** {@return true if its text could be read; otherwise it is not known what it says} */
    boolean isReadable() {
        return readable;
    }

    /** {@return what is wrong with the section} */
    List<PackageProblem> problems() {
        return problems;
    }
}
