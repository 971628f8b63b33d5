package headgate.it.layout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.NavigableMap;
import java.util.NavigableSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a table of a page: the rows under a heading, names in back quotes. */
final class MarkdownTable {

    private static final Pattern NAME = Pattern.compile("`([^`]+)`");

    private MarkdownTable() {}

    /**
     * Reads the first two columns.
     *
     * @param page the page's text
     * @param heading the heading above the table, with its marks
     * @return for the name in each row's first column the names in its second; the row's order does not matter
     */
    static NavigableMap<String, NavigableSet<String>> under(String page, String heading) {
        NavigableMap<String, NavigableSet<String>> rows = new TreeMap<>();
        for (String line : section(page, heading)) {
            String[] cells = line.split("\\|", -1);
            if (line.startsWith("| `") && cells.length > 3) {
                NavigableSet<String> before = rows.put(names(cells[1]).first(), names(cells[2]));
                if (before != null) {
                    throw new IllegalStateException("two rows under " + heading + " for " + cells[1]);
                }
            }
        }
        if (rows.isEmpty()) {
            throw new IllegalStateException("no table under " + heading);
        }
        return rows;
    }

    private static List<String> section(String page, String heading) {
        List<String> lines = new ArrayList<>();
        boolean inside = false;
        for (String line : Arrays.asList(page.split("\n", -1))) {
            if (line.startsWith("#")) {
                inside = line.equals(heading);
            } else if (inside) {
                lines.add(line);
            }
        }
        return lines;
    }

    private static NavigableSet<String> names(String cell) {
        NavigableSet<String> names = new TreeSet<>();
        Matcher found = NAME.matcher(cell);
        while (found.find()) {
            names.add(found.group(1));
        }
        return names;
    }
}
