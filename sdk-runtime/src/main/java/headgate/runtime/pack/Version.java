package headgate.runtime.pack;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A version of the form major.minor.patch, each a number without leading zeros, as in Semantic Versioning 2.0.0 (section
 * 2). Pre-release and build suffixes are not accepted: their order inside a range surprises people.
 *
 * @param major incompatible changes; 0 to 999 999
 * @param minor compatible additions; 0 to 999 999
 * @param patch compatible corrections; 0 to 999 999
 */
public record Version(int major, int minor, int patch) implements Comparable<Version> {

    /** The version of the head API that this runtime serves. */
    public static final Version OF_API = new Version(0, 1, 0);

    /** What a version looks like, for messages. */
    public static final String FORM = "major.minor.patch, such as 1.4.0";

    private static final Pattern TEXT =
            Pattern.compile("(0|[1-9][0-9]{0,5})\\.(0|[1-9][0-9]{0,5})\\.(0|[1-9][0-9]{0,5})");

    /**
     * Reads a version.
     *
     * @param text the text, nothing around it
     * @return the version, or empty if the text has another form
     */
    public static Optional<Version> parse(String text) {
        Matcher m = TEXT.matcher(text);
        return m.matches()
                ? Optional.of(new Version(
                        Integer.parseInt(m.group(1)), Integer.parseInt(m.group(2)), Integer.parseInt(m.group(3))))
                : Optional.empty();
    }

    @Override
    public int compareTo(Version other) {
        int byMajor = Integer.compare(major, other.major);
        int byMinor = Integer.compare(minor, other.minor);
        return byMajor != 0 ? byMajor : byMinor != 0 ? byMinor : Integer.compare(patch, other.patch);
    }

    /** {@return major.minor.patch} */
    @Override
    public String toString() {
        return major + "." + minor + "." + patch;
    }
}
