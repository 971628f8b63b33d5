package headgate.runtime.pack;

import java.util.Locale;

/** Text from a package, made fit for one line of a message. */
final class Printable {

    private static final int LONGEST = 120;

    private Printable() {}

    /**
     * Shows a text.
     *
     * @param text any text
     * @return the text with characters that cannot be seen shown by their code, and at most 120 characters
     */
    static String text(String text) {
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < text.length(); ) {
            if (out.length() >= LONGEST) {
                return out.substring(0, LONGEST - 3) + "...";
            }
            int c = text.codePointAt(i);
            if (isSeen(c)) {
                out.appendCodePoint(c);
            } else {
                out.append(String.format(Locale.ROOT, "<U+%04X>", c));
            }
            i += Character.charCount(c);
        }
        return out.length() <= LONGEST ? out.toString() : out.substring(0, LONGEST - 3) + "...";
    }

    /**
     * Says whether all of a text can be seen.
     *
     * @param text any text
     * @return true unless it holds characters that are not seen or that change how a line reads
     */
    static boolean isSeen(String text) {
        for (int i = 0; i < text.length(); ) {
            int c = text.codePointAt(i);
            if (!isSeen(c)) {
                return false;
            }
            i += Character.charCount(c);
        }
        return true;
    }

    /**
     * By ranges and not by the platform's tables: those differ between Java versions. Control and format characters,
     * halves of pairs, line and paragraph separators, tags (The Unicode Standard, chapter 23).
     */
    private static boolean isSeen(int c) {
        boolean ascii = within(c, ' ', '~');
        return ascii || seenBeyondAscii(c);
    }

    private static boolean seenBeyondAscii(int c) {
        return !Character.isISOControl(c)
                && c != 0x00AD
                && c != 0x061C
                && c != 0x180E
                && !within(c, 0x200B, 0x200F)
                && !within(c, 0x2028, 0x202E)
                && !within(c, 0x2060, 0x206F)
                && !within(c, 0xD800, 0xDFFF)
                && c != 0xFEFF
                && !within(c, 0xFFF9, 0xFFFB)
                && !within(c, 0xE0000, 0xE007F);
    }

    private static boolean within(int c, int first, int last) {
        return first <= c && c <= last;
    }
}
