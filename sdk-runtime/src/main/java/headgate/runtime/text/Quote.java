package headgate.runtime.text;

/** Puts what stands in a file into a message: in quotes, on one line, cut to a readable length. */
public final class Quote {

    private static final int LONGEST = 60;

    private Quote() {}

    /**
     * Quotes a text.
     *
     * @param text any text
     * @return the text in double quotes; control characters shown by their code, the rest after 60 characters left out
     */
    public static String of(String text) {
        StringBuilder out = new StringBuilder(LONGEST + 8).append('"');
        int used = 0;
        for (int i = 0; i < text.length(); used++) {
            int c = text.codePointAt(i);
            if (used == LONGEST) {
                return out.append("\"... (")
                        .append(text.length())
                        .append(" characters)")
                        .toString();
            }
            out.append(shown(c));
            i += Character.charCount(c);
        }
        return out.append('"').toString();
    }

    /**
     * Shows one character.
     *
     * @param codePoint the character
     * @return the character itself, or its code if it cannot be seen or would change how a line reads
     */
    static String shown(int codePoint) {
        int type = Character.getType(codePoint);
        boolean unseen = type == Character.CONTROL
                || type == Character.FORMAT
                || type == Character.SURROGATE
                || type == Character.PRIVATE_USE
                || type == Character.UNASSIGNED
                || type == Character.LINE_SEPARATOR
                || type == Character.PARAGRAPH_SEPARATOR
                || (type == Character.SPACE_SEPARATOR && codePoint != ' ');
        return unseen ? String.format(java.util.Locale.ROOT, "<U+%04X>", codePoint) : Character.toString(codePoint);
    }
}
