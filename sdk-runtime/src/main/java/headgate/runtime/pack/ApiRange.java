package headgate.runtime.pack;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The versions of the head API that a head works with, written in one form only: {@code >=a.b.c & <d.e.f}.
 *
 * @param from the first version that does
 * @param before the first version that may not; above the other
 */
public record ApiRange(Version from, Version before) {

    /** What a range looks like, for messages. */
    public static final String FORM = ">=a.b.c & <d.e.f, such as >=0.1.0 & <0.2.0";

    private static final Pattern TEXT = Pattern.compile(">=([0-9.]+) & <([0-9.]+)");

    /**
     * Checks the order.
     *
     * @throws IllegalArgumentException if the range is empty
     */
    public ApiRange {
        if (from.compareTo(before) >= 0) {
            throw new IllegalArgumentException("a version range must not be empty: >=" + from + " & <" + before);
        }
    }

    /**
     * Reads a range.
     *
     * @param text the text, nothing around it
     * @return the range, or empty if the text has another form or the range is empty
     */
    public static Optional<ApiRange> parse(String text) {
        Matcher m = TEXT.matcher(text);
        if (!m.matches()) {
            return Optional.empty();
        }
        Optional<Version> from = Version.parse(m.group(1));
        Optional<Version> before = Version.parse(m.group(2));
        return from.isPresent() && before.isPresent() && from.get().compareTo(before.get()) < 0
                ? Optional.of(new ApiRange(from.get(), before.get()))
                : Optional.empty();
    }

    /**
     * Says whether a version lies in the range.
     *
     * @param version the version
     * @return true if it does
     */
    public boolean contains(Version version) {
        return from.compareTo(version) <= 0 && version.compareTo(before) < 0;
    }

    /** {@return the range as it is written} */
    @Override
    public String toString() {
        return ">=" + from + " & <" + before;
    }
}
