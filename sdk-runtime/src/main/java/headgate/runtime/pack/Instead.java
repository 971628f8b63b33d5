package headgate.runtime.pack;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;

/** What to use instead of a member that a head must not use: a text resource, by the beginning of its name. */
final class Instead {

    private static final String RESOURCE = "instead-of-java-members.txt";
    private static final String DIVIDER = " -> ";

    /** Longer than any beginning in the list: names in a package may be very long. */
    private static final int LONGEST = 100;

    private static final Map<String, String> BY_BEGINNING = load();

    private Instead() {}

    private static Map<String, String> load() {
        try (InputStream in = Instead.class.getResourceAsStream(RESOURCE)) {
            if (in == null) {
                throw new IllegalStateException("the resource " + RESOURCE + " is missing from this program");
            }
            Map<String, String> result = new TreeMap<>();
            new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#") && !line.isBlank())
                    .forEach(line -> {
                        int at = line.indexOf(DIVIDER);
                        result.put(line.substring(0, at), line.substring(at + DIVIDER.length()));
                    });
            return result;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * Finds what to use.
     *
     * @param refused a class or member, as a message shows it
     * @return what to do instead, without a full stop
     */
    static String of(String refused) {
        for (int length = Math.min(refused.length(), LONGEST); length > 0; length--) {
            String advice = BY_BEGINNING.get(refused.substring(0, length));
            if (advice != null) {
                return advice;
            }
        }
        return "work it out in the package's own classes";
    }
}
