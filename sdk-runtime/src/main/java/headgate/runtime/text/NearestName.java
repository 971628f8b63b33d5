package headgate.runtime.text;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** Finds the known name that somebody probably meant. */
public final class NearestName {

    private NearestName() {}

    /**
     * Finds the known name nearest to a written one: by swapped, changed, missing and added characters, upper and lower
     * case and hyphens, underscores and spaces not counted.
     *
     * @param written what was written
     * @param known the known names; of several equally near the first is taken
     * @return the nearest, if at most a third of its characters differ
     */
    public static Optional<String> of(String written, Collection<String> known) {
        String from = plain(written);
        String best = null;
        int least = Integer.MAX_VALUE;
        // A name far longer than every known one cannot be near one, and would cost time.
        if (from.length() > 80) {
            return Optional.empty();
        }
        for (String name : known) {
            String to = plain(name);
            int distance = distance(from, to);
            if (distance < least && distance <= Math.max(from.length(), to.length()) / 3) {
                least = distance;
                best = name;
            }
        }
        return Optional.ofNullable(best);
    }

    private static String plain(String name) {
        return name.replaceAll("[-_ ]", "").toLowerCase(Locale.ROOT);
    }

    /** Edit distance in which a swap of two neighbours counts one: optimal string alignment. */
    static int distance(String a, String b) {
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                if (i == 0 || j == 0) {
                    d[i][j] = i + j;
                    continue;
                }
                int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                d[i][j] = Math.min(Math.min(d[i - 1][j], d[i][j - 1]) + 1, d[i - 1][j - 1] + change);
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
                }
            }
        }
        return d[a.length()][b.length()];
    }
}
