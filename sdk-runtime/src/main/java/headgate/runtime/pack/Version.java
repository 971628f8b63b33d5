package headgate.runtime.pack;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A version as Semantic Versioning 2.0.0 defines it, at most 100 characters long. Versions are ordered by precedence
 * (section 11): a pre-release comes before its release, and what stands behind the plus sign does not count.
 *
 * @param major incompatible changes; 0 to 999 999
 * @param minor compatible additions; 0 to 999 999
 * @param patch compatible corrections; 0 to 999 999
 * @param preRelease what stands between hyphen and plus sign, such as {@code rc.1}; empty for a release
 * @param build what stands behind the plus sign; empty if nothing does
 */
public record Version(int major, int minor, int patch, String preRelease, String build) implements Comparable<Version> {

    /** The version of the head API that this runtime serves. */
    public static final Version OF_API = new Version(0, 1, 0);

    /** What a version looks like, for messages. */
    public static final String FORM = "major.minor.patch, such as 1.4.0, or 1.4.0-rc.1 before it is released";

    private static final int LONGEST = 100;
    private static final String NUMBER = "(0|[1-9][0-9]{0,5})";
    private static final String BEFORE = "(?:0|[1-9][0-9]*|[0-9]*[A-Za-z-][0-9A-Za-z-]*)";
    private static final String BUILT = "[0-9A-Za-z-]+";

    private static final Pattern TEXT = Pattern.compile(NUMBER + "\\." + NUMBER + "\\." + NUMBER + "(?:-(" + BEFORE
            + "(?:\\." + BEFORE + ")*))?(?:\\+(" + BUILT + "(?:\\." + BUILT + ")*))?");

    /**
     * A released version.
     *
     * @param major incompatible changes
     * @param minor compatible additions
     * @param patch compatible corrections
     */
    public Version(int major, int minor, int patch) {
        this(major, minor, patch, "", "");
    }

    /**
     * Reads a version.
     *
     * @param text the text, nothing around it
     * @return the version, or empty if the text has another form
     */
    public static Optional<Version> parse(String text) {
        Matcher m = TEXT.matcher(text);
        return text.length() <= LONGEST && m.matches()
                ? Optional.of(new Version(
                        Integer.parseInt(m.group(1)),
                        Integer.parseInt(m.group(2)),
                        Integer.parseInt(m.group(3)),
                        Optional.ofNullable(m.group(4)).orElse(""),
                        Optional.ofNullable(m.group(5)).orElse("")))
                : Optional.empty();
    }

    /** Orders by precedence; versions that differ only behind the plus sign compare as equal, and are not equal. */
    @Override
    public int compareTo(Version other) {
        int byMajor = Integer.compare(major, other.major);
        int byMinor = Integer.compare(minor, other.minor);
        int byPatch = Integer.compare(patch, other.patch);
        return byMajor != 0
                ? byMajor
                : byMinor != 0 ? byMinor : byPatch != 0 ? byPatch : comparePreReleases(preRelease, other.preRelease);
    }

    private static int comparePreReleases(String one, String other) {
        if (one.isEmpty() || other.isEmpty()) {
            return Boolean.compare(one.isEmpty(), other.isEmpty());
        }
        String[] left = one.split("\\.", -1);
        String[] right = other.split("\\.", -1);
        for (int i = 0; i < Math.min(left.length, right.length); i++) {
            int byPart = compareParts(left[i], right[i]);
            if (byPart != 0) {
                return byPart;
            }
        }
        return Integer.compare(left.length, right.length);
    }

    /** Numbers by value, and before words; words by their characters. */
    private static int compareParts(String one, String other) {
        boolean number = one.matches("[0-9]+");
        boolean otherIsNumber = other.matches("[0-9]+");
        if (number != otherIsNumber) {
            return number ? -1 : 1;
        }
        return number && one.length() != other.length()
                ? Integer.compare(one.length(), other.length())
                : one.compareTo(other);
    }

    /** {@return the version as it is written} */
    @Override
    public String toString() {
        return major + "." + minor + "." + patch + (preRelease.isEmpty() ? "" : "-" + preRelease)
                + (build.isEmpty() ? "" : "+" + build);
    }
}
