package headgate.verifier.assignment;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Finds the best assignment. Better is, in this order: every pitch is kept; the busiest slider serves fewer lanes; the
 * margin is larger; the choices come first in the order of sliders and choices. The set-points of the assignment that is
 * chosen are those that keep its margin with the least largest distance from where the sliders would be set alone; then
 * each is as near to that as its neighbours let it.
 *
 * <p>Exact, for whole micrometres, unless it says otherwise: a search that takes too many steps ends, and the result says
 * what no assignment can exceed.
 */
public final class Assigner {

    /** The margin of an assignment that nothing limits, micrometres: no two sliders are ever that far apart. */
    public static final long PLENTY = 10_000_000L;

    /** Steps of one search after which it gives up; some seconds. */
    public static final long STEPS = 2_000_000L;

    private final Field.Table table;
    private final long steps;
    private boolean gaveUp;

    private Assigner(Problem problem, long steps) {
        this.table = new Field.Table(problem);
        this.steps = steps;
    }

    /**
     * Finds the best assignment.
     *
     * @param problem the problem
     * @return the assignment; one that breaks a pitch only if none keeps them all; empty if the sliders cannot serve every
     *     lane even if they may meet, or the search for one gave up
     */
    public static Optional<Assignment> best(Problem problem) {
        return best(problem, STEPS);
    }

    /**
     * Finds the best assignment within a number of steps.
     *
     * @param problem the problem
     * @param steps steps after which each search gives up
     * @return as above
     */
    public static Optional<Assignment> best(Problem problem, long steps) {
        return new Assigner(problem, steps).best();
    }

    private Optional<Assignment> best() {
        int longest = table.sliders().stream()
                .flatMap(s -> s.choices().stream())
                .mapToInt(Choice::lanes)
                .max()
                .orElse(0);
        for (long margin : new long[] {0, -PLENTY}) {
            for (int lanes = Math.min(1, longest); lanes <= longest; lanes++) {
                Search search = search(margin, lanes);
                Search.End end = search.run();
                gaveUp |= end == Search.End.GAVE_UP;
                if (end == Search.End.FOUND) {
                    return Optional.of(improve(search.found(), margin, lanes));
                }
            }
        }
        return Optional.empty();
    }

    private Search search(long margin, int lanes) {
        return new Search(new Field(table, margin), lanes, steps);
    }

    /** Raises the margin until a search shows that there is no more. */
    private Assignment improve(Placement first, long margin, int lanes) {
        Plan best = widest(new Plan(first, table), margin);
        long none = PLENTY + 1;
        boolean next = true;
        while (none - best.margin() > 1) {
            // The first try is a hair more: most often the choice at hand is the best already.
            long tried = next ? best.margin() + 1 : middle(best.margin(), none);
            next = !next;
            Search search = search(tried, lanes);
            Search.End end = search.run();
            if (end == Search.End.GAVE_UP) {
                break;
            }
            if (end == Search.End.FOUND) {
                best = widest(new Plan(search.found(), table), tried);
            } else {
                none = tried;
            }
        }
        // The search for the best margin may have met another choice with the same margin first.
        Search again = search(best.margin(), lanes);
        if (again.run() == Search.End.FOUND) {
            best = new Plan(again.found(), table).withMargin(best.margin());
        }
        long[] at = best.settled(table);
        return new Assignment(
                Arrays.stream(best.choices()).boxed().toList(),
                Arrays.stream(at).boxed().toList(),
                best.margin(),
                gaveUp ? PLENTY : none - 1,
                lanes);
    }

    private static long middle(long least, long most) {
        return least + (most - least) / 2;
    }

    /** The largest margin that a plan can have. */
    private Plan widest(Plan plan, long margin) {
        long has = margin;
        long lacks = PLENTY + 1;
        while (lacks - has > 1) {
            long tried = middle(has, lacks);
            if (plan.isPossible(table, tried)) {
                has = tried;
            } else {
                lacks = tried;
            }
        }
        return plan.withMargin(has);
    }

    /** Which choice each slider takes, and on which side of each other one it stays. */
    private static final class Plan {

        private final int[] choices;
        private final boolean[][] isBefore;
        private final long margin;

        Plan(Placement placement, Field.Table table) {
            this(placement.choices(), sides(placement, table), Long.MIN_VALUE);
        }

        private Plan(int[] choices, boolean[][] isBefore, long margin) {
            this.choices = choices;
            this.isBefore = isBefore;
            this.margin = margin;
        }

        private static boolean[][] sides(Placement placement, Field.Table table) {
            int n = table.size();
            boolean[][] before = new boolean[n][n];
            for (int i = 0; i < n; i++) {
                for (int j = i + 1; j < n; j++) {
                    // Twice the middle of what is forbidden: whatever is held apart is on one side of it.
                    long middle = table.upper(i, placement.stance(i), j, placement.stance(j))
                            + table.lower(i, placement.stance(i), j, placement.stance(j));
                    boolean isHeld = placement.edge(i, j) != placement.edge(j, i) && !table.areLinked(i, j);
                    before[i][j] = isHeld
                            ? placement.edge(i, j) != Placement.NO_EDGE
                            : 2 * (placement.at(j) - placement.at(i)) >= middle;
                }
            }
            return before;
        }

        int[] choices() {
            return choices.clone();
        }

        long margin() {
            return margin;
        }

        Plan withMargin(long value) {
            return new Plan(choices, isBefore, value);
        }

        boolean isPossible(Field.Table table, long tried) {
            return placement(new Field(table, tried)).placeAll();
        }

        private Placement placement(Field field) {
            Field.Table table = field.table();
            Placement placement = new Placement(field);
            for (int i = 0; i < choices.length; i++) {
                placement.choose(i, choices[i]);
            }
            for (int i = 0; i < choices.length; i++) {
                for (int j = i + 1; j < choices.length; j++) {
                    int si = placement.stance(i);
                    int sj = placement.stance(j);
                    if (table.onOneBeam(i, j)) {
                        placement.hold(i, j, field.beyond(i, si, j, sj));
                    } else if (field.upper(i, si, j, sj) != Field.FREE) {
                        if (isBefore[i][j]) {
                            placement.hold(i, j, field.upper(i, si, j, sj));
                        } else {
                            placement.hold(j, i, -field.lower(i, si, j, sj));
                        }
                    }
                    if (table.areLinked(i, j)) {
                        long offset = table.linkOffset(i, j);
                        placement.hold(i, j, Math.max(offset, placement.edge(i, j)));
                        placement.hold(j, i, Math.max(-offset, placement.edge(j, i)));
                    }
                }
            }
            return placement;
        }

        /** The set-points: the margin kept, near to where each slider would be set alone. */
        long[] settled(Field.Table table) {
            long none = -1;
            long enough = 4 * PLENTY;
            while (enough - none > 1) {
                long tried = middle(none, enough);
                if (placement(new Field(near(table, tried), margin)).placeAll()) {
                    enough = tried;
                } else {
                    none = tried;
                }
            }
            Field field = new Field(near(table, enough), margin);
            Placement placement = placement(field);
            if (!placement.placeAll()) {
                throw new IllegalStateException("an assignment that was found cannot be set");
            }
            return pulled(field, placement);
        }

        /** The same problem with working sliders held near to where they would be set alone. */
        private Field.Table near(Field.Table table, long distance) {
            List<Slider> sliders = IntStream.range(0, choices.length)
                    .mapToObj(i -> {
                        Slider s = table.sliders().get(i);
                        List<Choice> held = new ArrayList<>(s.choices());
                        Choice c = held.get(choices[i]);
                        if (c.cover().isPresent()) {
                            held.set(choices[i], Near.within(c, distance));
                        }
                        return new Slider(s.id(), s.beam(), s.link(), held);
                    })
                    .toList();
            return table.with(sliders);
        }

        /** Moves each slider to the left towards where it would be set alone, as far as the others let it. */
        private long[] pulled(Field field, Placement placement) {
            long[] at = placement.positions();
            boolean moved = true;
            while (moved) {
                moved = false;
                for (int i = choices.length - 1; i >= 0; i--) {
                    long most = field.table()
                            .sliders()
                            .get(i)
                            .choices()
                            .get(choices[i])
                            .preferred();
                    for (int j = 0; j < choices.length; j++) {
                        if (placement.edge(i, j) != Placement.NO_EDGE) {
                            most = Math.min(most, at[j] - placement.edge(i, j));
                        }
                    }
                    long to = field.upTo(i, choices[i], most);
                    if (to > at[i]) {
                        at[i] = to;
                        moved = true;
                    }
                }
            }
            return at;
        }
    }
}
