package headgate.verifier.assignment;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Looks for an assignment that has a given margin. Sliders are decided one after the other, each choice in its order; a
 * state from which none was found is remembered by what it leaves to the sliders still open, so it is looked at once.
 */
final class Search {

    /** What came of it. */
    enum End {
        FOUND,
        NONE,
        GAVE_UP
    }

    private final Field field;
    private final Field.Table table;
    private final int mostLanes;
    private final Placement placement;
    private final int[] needs;
    private final int[] stock;
    /** The lanes that each choice serves, as bits; 0 if it is not possible. */
    private final long[][] masks;

    private final int[][] stanceOf;
    private final int[] stances;
    private final int[] servers;
    /** True where no open slider can push one that is placed, so that the least set-points say all. */
    private final boolean[] forward;

    /** The least and the largest set-point of each slider in each stance. */
    private final long[][] least;

    private final long[][] most;
    /** How many lanes the sliders from one on can serve at most. */
    private final int[] capacity;

    private int open;

    private final Hopeless hopeless = new Hopeless();
    private long steps;

    private static final class Key {

        private final int slider;
        private final int[] needs;
        private final int[] stock;

        Key(int slider, int[] needs, int[] stock) {
            this.slider = slider;
            this.needs = needs.clone();
            this.stock = stock.clone();
        }

        @Override
        public boolean equals(Object other) {
            return other instanceof Key that
                    && slider == that.slider
                    && Arrays.equals(needs, that.needs)
                    && Arrays.equals(stock, that.stock);
        }

        @Override
        public int hashCode() {
            return 31 * (31 * Arrays.hashCode(needs) + Arrays.hashCode(stock)) + slider;
        }
    }

    Search(Field field, int mostLanes, long steps) {
        this.field = field;
        this.table = field.table();
        this.mostLanes = mostLanes;
        this.steps = steps;
        this.placement = new Placement(field);
        this.needs =
                table.problem().needs().stream().mapToInt(Integer::intValue).toArray();
        this.stock =
                table.problem().stock().stream().mapToInt(Integer::intValue).toArray();
        this.forward = forward();
        int n = table.size();
        this.least = new long[n][];
        this.most = new long[n][];
        this.capacity = new int[n + 1];
        this.masks = new long[n][];
        this.stanceOf = new int[n][];
        this.stances = new int[n];
        this.servers = new int[needs.length];
        for (int i = n - 1; i >= 0; i--) {
            bound(i);
        }
        this.open = Arrays.stream(needs).sum();
    }

    private void bound(int slider) {
        least[slider] = new long[table.stances(slider)];
        most[slider] = new long[table.stances(slider)];
        Arrays.fill(least[slider], Long.MAX_VALUE);
        Arrays.fill(most[slider], Long.MIN_VALUE);
        int lanes = 0;
        List<Choice> choices = table.sliders().get(slider).choices();
        masks[slider] = new long[choices.size()];
        stanceOf[slider] = new int[choices.size()];
        for (int c = 0; c < choices.size(); c++) {
            stanceOf[slider][c] = choices.get(c).stance();
            if (isOpen(slider, c)) {
                int stance = choices.get(c).stance();
                masks[slider][c] =
                        ((1L << choices.get(c).lanes()) - 1) << choices.get(c).firstLane();
                least[slider][stance] = Math.min(least[slider][stance], field.least(slider, c));
                most[slider][stance] = Math.max(most[slider][stance], field.most(slider, c));
                lanes = Math.max(lanes, choices.get(c).lanes());
            }
        }
        capacity[slider] = capacity[slider + 1] + lanes;
    }

    private boolean isOpen(int slider, int choice) {
        return table.sliders().get(slider).choices().get(choice).lanes() <= mostLanes
                && field.isPossible(slider, choice);
    }

    private boolean[] forward() {
        int n = table.size();
        boolean[] result = new boolean[n + 1];
        Arrays.fill(result, true);
        for (int i = 0; i < n; i++) {
            for (int j = i + 1; j < n; j++) {
                if (table.areLinked(i, j) || (!table.onOneBeam(i, j) && mayMeet(i, j))) {
                    Arrays.fill(result, i + 1, j + 1, false);
                }
            }
        }
        return result;
    }

    private boolean mayMeet(int i, int j) {
        for (int si = 0; si < table.stances(i); si++) {
            for (int sj = 0; sj < table.stances(j); sj++) {
                if (field.upper(i, si, j, sj) != Field.FREE) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Looks. */
    End run() {
        return decide(0);
    }

    /** What was found. */
    Placement found() {
        return placement;
    }

    private End decide(int slider) {
        if (steps-- <= 0) {
            return End.GAVE_UP;
        }
        if (open > capacity[slider]) {
            return End.NONE;
        }
        if (slider == table.size()) {
            return End.FOUND;
        }
        long[] bounds = bounds(slider);
        if (!canServeAll(slider, bounds)) {
            return End.NONE;
        }
        Key key = forward[slider] ? new Key(slider, needs, stock) : null;
        if (key != null && hopeless.holds(key, bounds)) {
            return End.NONE;
        }
        List<Choice> choices = table.sliders().get(slider).choices();
        long[] before = placement.positions();
        for (int c = 0; c < choices.size(); c++) {
            Choice choice = choices.get(c);
            if (isOpen(slider, c) && take(choice)) {
                placement.choose(slider, c);
                stances[slider] = choice.stance();
                End end = against(slider, 0, before);
                if (end != End.NONE) {
                    return end;
                }
                give(choice);
            }
        }
        if (key != null) {
            hopeless.add(key, bounds);
        }
        return End.NONE;
    }

    private boolean take(Choice choice) {
        if (choice.item().isPresent() && stock[choice.item().getAsInt()] == 0) {
            return false;
        }
        for (int k = 0; k < choice.lanes(); k++) {
            if (needs[choice.firstLane() + k] == 0) {
                return false;
            }
        }
        for (int k = 0; k < choice.lanes(); k++) {
            needs[choice.firstLane() + k]--;
        }
        choice.item().ifPresent(item -> stock[item]--);
        open -= choice.lanes();
        return true;
    }

    private void give(Choice choice) {
        for (int k = 0; k < choice.lanes(); k++) {
            needs[choice.firstLane() + k]++;
        }
        choice.item().ifPresent(item -> stock[item]++);
        open += choice.lanes();
    }

    /** Decides on which side of each slider before it a slider stays, and goes on. */
    private End against(int slider, int other, long[] before) {
        if (other == slider) {
            placement.restore(before);
            return placement.place(slider) ? decide(slider + 1) : End.NONE;
        }
        placement.free(other, slider);
        int so = placement.stance(other);
        int ss = placement.stance(slider);
        if (table.areLinked(other, slider)) {
            long offset = table.linkOffset(other, slider);
            if (!isKept(other, so, slider, ss, offset)) {
                return End.NONE;
            }
            placement.hold(other, slider, offset);
            placement.hold(slider, other, -offset);
            return against(slider, other + 1, before);
        }
        if (table.onOneBeam(other, slider)) {
            placement.hold(other, slider, field.beyond(other, so, slider, ss));
            return against(slider, other + 1, before);
        }
        long upper = field.upper(other, so, slider, ss);
        long lower = field.lower(other, so, slider, ss);
        long leastOffset = field.least(slider, placement.choice(slider)) - field.most(other, placement.choice(other));
        long mostOffset = field.most(slider, placement.choice(slider)) - field.least(other, placement.choice(other));
        if (upper == Field.FREE || leastOffset >= upper || mostOffset <= lower) {
            return against(slider, other + 1, before);
        }
        if (mostOffset >= upper) {
            placement.hold(other, slider, upper);
            End end = against(slider, other + 1, before);
            if (end != End.NONE) {
                return end;
            }
            placement.free(other, slider);
        }
        if (leastOffset <= lower) {
            placement.hold(slider, other, -lower);
            End end = against(slider, other + 1, before);
            if (end != End.NONE) {
                return end;
            }
            placement.free(other, slider);
        }
        return End.NONE;
    }

    private boolean isKept(int i, int si, int j, int sj, long offset) {
        if (table.onOneBeam(i, j)) {
            return offset >= field.beyond(i, si, j, sj);
        }
        long upper = field.upper(i, si, j, sj);
        return upper == Field.FREE || offset >= upper || offset <= field.lower(i, si, j, sj);
    }

    /** From where on each open slider may be set in each of its stances, as those that are placed let it. */
    private long[] bounds(int slider) {
        int n = table.size();
        int length = 0;
        for (int j = slider; j < n; j++) {
            length += table.stances(j);
        }
        long[] values = new long[length];
        int at = 0;
        for (int j = slider; j < n; j++) {
            for (int sj = 0; sj < table.stances(j); sj++) {
                long bound = Long.MIN_VALUE;
                for (int i = 0; i < slider; i++) {
                    if (table.onOneBeam(i, j)) {
                        bound = Math.max(bound, placement.at(i) + field.beyond(i, stances[i], j, sj));
                    }
                }
                // A bound that changes nothing, and one that leaves nothing, need not be told apart.
                values[at++] = bound <= least[j][sj] ? Long.MIN_VALUE : bound > most[j][sj] ? Long.MAX_VALUE : bound;
            }
        }
        return values;
    }

    /** True if every lane that still needs some has enough open sliders that are not yet past it. */
    private boolean canServeAll(int slider, long[] bounds) {
        Arrays.fill(servers, 0);
        int from = 0;
        for (int j = slider; j < table.size(); j++) {
            long served = 0;
            for (int c = 0; c < masks[j].length; c++) {
                if (masks[j][c] != 0 && bounds[from + stanceOf[j][c]] <= field.most(j, c)) {
                    served |= masks[j][c];
                }
            }
            for (; served != 0; served &= served - 1) {
                servers[Long.numberOfTrailingZeros(served)]++;
            }
            from += table.stances(j);
        }
        for (int lane = 0; lane < needs.length; lane++) {
            if (needs[lane] > servers[lane]) {
                return false;
            }
        }
        return true;
    }

    /**
     * States from which nothing was found, by the lanes still to serve. A state that binds the open sliders at least as
     * much as one of these is as hopeless.
     */
    private static final class Hopeless {

        private final Map<Key, List<long[]>> known = new HashMap<>();

        boolean holds(Key key, long[] bounds) {
            for (long[] other : known.getOrDefault(key, List.of())) {
                if (isAtMost(other, bounds)) {
                    return true;
                }
            }
            return false;
        }

        void add(Key key, long[] bounds) {
            List<long[]> same = known.computeIfAbsent(key, k -> new ArrayList<>());
            same.removeIf(other -> isAtMost(bounds, other));
            same.add(bounds);
        }

        private static boolean isAtMost(long[] a, long[] b) {
            for (int i = 0; i < a.length; i++) {
                if (a[i] > b[i]) {
                    return false;
                }
            }
            return true;
        }
    }
}
