package headgate.verifier.assignment;

import java.util.Arrays;

/**
 * Sliders placed one after the other, each as far to the right as the others let it. The set-points are the least ones
 * that keep every "at least so far beyond": such constraints have one least solution, also where what is allowed has gaps.
 */
final class Placement {

    /** Nothing holds one slider off another. */
    static final long NO_EDGE = Long.MIN_VALUE;

    private final Field field;
    private final int[] choice;
    private final long[] at;
    /** How far beyond the first the second must be. */
    private final long[][] edge;

    Placement(Field field) {
        this.field = field;
        int n = field.table().size();
        choice = new int[n];
        at = new long[n];
        edge = new long[n][n];
        for (long[] row : edge) {
            Arrays.fill(row, NO_EDGE);
        }
    }

    int choice(int slider) {
        return choice[slider];
    }

    int stance(int slider) {
        return field.table().sliders().get(slider).choices().get(choice[slider]).stance();
    }

    long at(int slider) {
        return at[slider];
    }

    long[] positions() {
        return at.clone();
    }

    int[] choices() {
        return choice.clone();
    }

    long edge(int from, int to) {
        return edge[from][to];
    }

    void restore(long[] positions) {
        System.arraycopy(positions, 0, at, 0, at.length);
    }

    void choose(int slider, int chosen) {
        choice[slider] = chosen;
    }

    void hold(int from, int to, long distance) {
        edge[from][to] = distance;
    }

    void free(int a, int b) {
        edge[a][b] = NO_EDGE;
        edge[b][a] = NO_EDGE;
    }

    /**
     * Places a slider, and moves those placed before as far as it pushes them.
     *
     * @return false if there is no room
     */
    boolean place(int slider) {
        long least = field.least(slider, choice[slider]);
        for (int j = 0; j < slider; j++) {
            if (edge[j][slider] != NO_EDGE) {
                least = Math.max(least, at[j] + edge[j][slider]);
            }
        }
        at[slider] = field.from(slider, choice[slider], least);
        return at[slider] != Long.MAX_VALUE && settle(slider, slider + 1);
    }

    /** Places all sliders afresh. */
    boolean placeAll() {
        int n = at.length;
        for (int i = 0; i < n; i++) {
            if (!field.isPossible(i, choice[i])) {
                return false;
            }
            at[i] = field.least(i, choice[i]);
        }
        boolean[] dirty = new boolean[n];
        Arrays.fill(dirty, true);
        return push(dirty, n);
    }

    private boolean settle(int moved, int count) {
        boolean pushes = false;
        for (int j = 0; j < count && !pushes; j++) {
            pushes = j != moved && edge[moved][j] != NO_EDGE;
        }
        if (!pushes) {
            return true;
        }
        boolean[] dirty = new boolean[count];
        dirty[moved] = true;
        return push(dirty, count);
    }

    private boolean push(boolean[] dirty, int count) {
        // Between two jumps over a gap, distances without a contradiction settle in as many rounds as there are
        // sliders.
        int rounds = count + 1;
        for (int i = 0; i < count; i++) {
            rounds += (count + 1) * (field.pieces(i, choice[i]) - 1);
        }
        boolean moved = true;
        while (moved) {
            if (rounds-- < 0) {
                return false;
            }
            moved = false;
            for (int i = 0; i < count; i++) {
                if (dirty[i]) {
                    dirty[i] = false;
                    for (int j = 0; j < count; j++) {
                        long w = edge[i][j];
                        if (w != NO_EDGE && at[j] < at[i] + w) {
                            at[j] = field.from(j, choice[j], at[i] + w);
                            if (at[j] == Long.MAX_VALUE) {
                                return false;
                            }
                            dirty[j] = true;
                            moved = true;
                        }
                    }
                }
            }
        }
        return true;
    }
}
