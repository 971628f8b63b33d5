package headgate.app.console;

import java.util.ArrayList;
import java.util.List;

/** Breaks prose into lines that a terminal of eighty columns shows whole. */
public final class Wrapped {

    private static final int WIDTH = 80;

    private Wrapped() {}

    /**
     * Breaks at spaces; a word that is longer than a line stands on a line of its own.
     *
     * @param indent what each line begins with
     * @param text the prose
     * @return the lines
     */
    public static List<String> lines(String indent, String text) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder(indent);
        for (String word : text.strip().split("\\s+", -1)) {
            boolean first = line.length() == indent.length();
            if (!first && line.length() + 1 + word.length() > WIDTH) {
                lines.add(line.toString());
                line = new StringBuilder(indent);
                first = true;
            }
            line.append(first ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }
}
