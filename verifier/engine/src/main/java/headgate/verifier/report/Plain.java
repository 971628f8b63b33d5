package headgate.verifier.report;

/**
 * Makes words that partners wrote fit to be shown: one line, no character that is not seen. A terminal obeys control
 * characters, and a page turned by direction marks reads as something else than what stands there.
 */
public final class Plain {

    /** Longest text that a report shows of one string, characters. */
    public static final int LONGEST = 1_000;

    private static final char REPLACEMENT = '\uFFFD';

    private Plain() {}

    /**
     * Cleans a text.
     *
     * @param text any text
     * @return the text on one line, with a replacement character for each control, format or broken character, cut after
     *     {@value #LONGEST} characters with an ellipsis
     */
    public static String line(String text) {
        StringBuilder clean = new StringBuilder(Math.min(text.length(), LONGEST));
        boolean space = false;
        for (int i = 0; i < text.length(); ) {
            int c = text.codePointAt(i);
            i += Character.charCount(c);
            if (Character.isWhitespace(c) || Character.isSpaceChar(c)) {
                space = !clean.isEmpty();
                continue;
            }
            if (space) {
                clean.append(' ');
                space = false;
            }
            if (clean.length() >= LONGEST) {
                return clean.append('\u2026').toString();
            }
            if (isSeen(c)) {
                clean.appendCodePoint(c);
            } else {
                clean.append(REPLACEMENT);
            }
        }
        return clean.toString();
    }

    /**
     * The name of a file without the folders that it lies in, so that a report does not depend on where it was made.
     *
     * @param file the file as it was given
     * @return the last part of its path, cleaned
     */
    public static String fileName(String file) {
        int cut = Math.max(file.lastIndexOf('/'), file.lastIndexOf('\\'));
        return line(file.substring(cut + 1));
    }

    private static boolean isSeen(int c) {
        return switch (Character.getType(c)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.SURROGATE,
                    Character.UNASSIGNED,
                    Character.PRIVATE_USE -> false;
            default -> true;
        };
    }
}
