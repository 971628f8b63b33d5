package headgate.verifier.dispatch;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.TreeSet;

/**
 * An upper bound on how many plants any dispatch could treat, whatever it knew beforehand.
 *
 * <p><b>What is bounded.</b> Plant j may be treated by any of its arms. If arm a treats it, the arm is busy with it for at
 * least b(j, a), all of that between a release r(j, a) and a due time d(j, a); and an arm is busy with one plant at a time.
 *
 * <p><b>Proof.</b> Let b(j) be the least of b(j, a) over the arms. Take any schedule, and let x(j) be 1 if it treats plant j
 * and 0 if not. Cut the time of each arm into slots at all releases and due times. Let y(j, s) be the part of the first b(j)
 * of plant j's busy time that falls into slot s. Then y(j, s) is 0 for slots outside of the plant's window; the sum over
 * plants in a slot is at most the slot's length; and the sum over slots is b(j) x(j). So x is feasible for the relaxation in
 * which x(j) may be any share from 0 to 1, and work may be interrupted, go on with another arm, and be done by two arms at
 * once. The greatest sum of x(j) in the relaxation is therefore at least the number treated.
 *
 * <p>The vectors of b(j) x(j) that can be routed through the slots form a polymatroid (they are the flows out of sources of
 * a network, N. Megiddo, Mathematical Programming 7 (1974) 97-107), so the greedy algorithm is exact for the relaxation (J.
 * Edmonds, 1970): plants by ascending b(j), each given as much flow as is left by augmenting paths. The sum is rounded down,
 * since plants are whole. Times are taken to nanoseconds, slots up and work down, which can only raise it.
 */
public final class MostTreatable {

    private static final double NANOSECONDS = 1e9;

    /**
     * One arm's chance to treat a plant.
     *
     * @param arm the arm's number
     * @param release before this the arm is not busy with the plant, s
     * @param due after this it is not, s
     * @param busy it is busy with it for at least so long in between, s
     */
    public record Chance(int arm, double release, double due, double busy) {

        /** Whether the time suffices. */
        boolean isWorthATry() {
            return due - release >= busy - 1e-9;
        }
    }

    private final int plants;
    private final int[][] first;
    private final int[][] end;
    private final long[][][] flow;
    private final long[] left;
    private final List<List<Link>> users;

    /** A plant that may use a slot, by which of its chances. */
    private record Link(int plant, int chance, int slot) {}

    private MostTreatable(List<List<Chance>> chances) {
        plants = chances.size();
        first = new int[plants][];
        end = new int[plants][];
        flow = new long[plants][][];
        List<long[]> slots = slots(chances);
        left = new long[slots.size()];
        users = new ArrayList<>();
        for (int s = 0; s < left.length; s++) {
            left[s] = slots.get(s)[2] - slots.get(s)[1];
            users.add(new ArrayList<>());
        }
        for (int j = 0; j < plants; j++) {
            open(j, chances.get(j), slots);
        }
    }

    private void open(int plant, List<Chance> chances, List<long[]> slots) {
        int n = chances.size();
        first[plant] = new int[n];
        end[plant] = new int[n];
        flow[plant] = new long[n][];
        for (int c = 0; c < n; c++) {
            Chance chance = chances.get(c);
            int from = find(slots, chance.arm(), down(chance.release()));
            int to = find(slots, chance.arm(), up(chance.due()));
            first[plant][c] = from;
            end[plant][c] = to;
            flow[plant][c] = new long[to - from];
            for (int s = from; s < to; s++) {
                users.get(s).add(new Link(plant, c, s));
            }
        }
    }

    /** Arm, begin and end of every slot, in order. Slots of one arm follow one another. */
    private static List<long[]> slots(List<List<Chance>> chances) {
        int arms = chances.stream()
                .flatMap(List::stream)
                .mapToInt(c -> c.arm() + 1)
                .max()
                .orElse(0);
        List<TreeSet<Long>> cuts = new ArrayList<>();
        for (int a = 0; a < arms; a++) {
            cuts.add(new TreeSet<>());
        }
        for (List<Chance> own : chances) {
            for (Chance chance : own) {
                cuts.get(chance.arm()).add(down(chance.release()));
                cuts.get(chance.arm()).add(up(chance.due()));
            }
        }
        List<long[]> slots = new ArrayList<>();
        for (int a = 0; a < arms; a++) {
            Long before = null;
            for (long cut : cuts.get(a)) {
                if (before != null) {
                    slots.add(new long[] {a, before, cut});
                }
                before = cut;
            }
        }
        return slots;
    }

    /** The first slot of an arm that begins at a time or later; where the next arm's begin, if there is none. */
    private static int find(List<long[]> slots, int arm, long time) {
        int low = 0;
        int high = slots.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            long[] slot = slots.get(middle);
            if (slot[0] < arm || (slot[0] == arm && slot[1] < time)) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private static long down(double seconds) {
        return (long) Math.floor(seconds * NANOSECONDS);
    }

    private static long up(double seconds) {
        return (long) Math.ceil(seconds * NANOSECONDS);
    }

    /**
     * Works out the bound.
     *
     * @param plants for each plant the chances to treat it, none if there are none
     * @return a number of plants that no dispatch exceeds
     */
    public static long of(List<List<Chance>> plants) {
        List<List<Chance>> worthATry = plants.stream()
                .map(own -> own.stream().filter(Chance::isWorthATry).toList())
                .filter(own -> !own.isEmpty())
                .toList();
        long[] work = worthATry.stream()
                .mapToLong(
                        own -> down(own.stream().mapToDouble(Chance::busy).min().orElseThrow()))
                .toArray();
        MostTreatable network = new MostTreatable(worthATry);
        double sum = 0;
        for (int j : shortestFirst(work)) {
            sum += work[j] <= 0 ? 1 : (double) network.route(j, work[j]) / work[j];
        }
        return (long) Math.floor(sum + 1e-6);
    }

    private static List<Integer> shortestFirst(long[] work) {
        List<Integer> order = new ArrayList<>();
        for (int j = 0; j < work.length; j++) {
            order.add(j);
        }
        order.sort(Comparator.comparingLong(j -> work[j]));
        return order;
    }

    /** Routes as much of a plant's work as possible, and says how much; no other plant loses any. */
    private long route(int plant, long work) {
        long routed = 0;
        while (routed < work) {
            long more = augment(plant, work - routed);
            if (more == 0) {
                break;
            }
            routed += more;
        }
        return routed;
    }

    private long augment(int plant, long most) {
        long direct = direct(plant, most);
        return direct > 0 ? direct : around(plant, most);
    }

    private long direct(int plant, long most) {
        for (int c = 0; c < first[plant].length; c++) {
            for (int s = first[plant][c]; s < end[plant][c]; s++) {
                if (left[s] > 0) {
                    long more = Math.min(most, left[s]);
                    left[s] -= more;
                    flow[plant][c][s - first[plant][c]] += more;
                    return more;
                }
            }
        }
        return 0;
    }

    /** A shortest augmenting path: others move some of their work to other slots to make room. */
    private long around(int plant, long most) {
        // How a slot was reached: the plant that would move into it, by which chance; how a plant was: the slot it
        // leaves.
        Link[] into = new Link[left.length];
        Link[] outOf = new Link[plants];
        boolean[] seen = new boolean[plants];
        Deque<Integer> queue = new ArrayDeque<>();
        seen[plant] = true;
        queue.add(plant);
        while (!queue.isEmpty()) {
            int j = queue.remove();
            for (int c = 0; c < first[j].length; c++) {
                for (int s = first[j][c]; s < end[j][c]; s++) {
                    if (into[s] != null) {
                        continue;
                    }
                    into[s] = new Link(j, c, s);
                    if (left[s] > 0) {
                        return push(plant, s, Math.min(most, left[s]), into, outOf);
                    }
                    for (Link user : users.get(s)) {
                        if (!seen[user.plant()] && flowOf(user) > 0) {
                            seen[user.plant()] = true;
                            outOf[user.plant()] = user;
                            queue.add(user.plant());
                        }
                    }
                }
            }
        }
        return 0;
    }

    private long flowOf(Link link) {
        return flow[link.plant()][link.chance()][link.slot() - first[link.plant()][link.chance()]];
    }

    private void add(Link link, long amount) {
        flow[link.plant()][link.chance()][link.slot() - first[link.plant()][link.chance()]] += amount;
    }

    private long push(int plant, int slot, long most, Link[] into, Link[] outOf) {
        long amount = most;
        for (Link step = into[slot]; step.plant() != plant; step = into[outOf[step.plant()].slot()]) {
            amount = Math.min(amount, flowOf(outOf[step.plant()]));
        }
        left[slot] -= amount;
        Link step = into[slot];
        add(step, amount);
        while (step.plant() != plant) {
            Link from = outOf[step.plant()];
            add(from, -amount);
            step = into[from.slot()];
            add(step, amount);
        }
        return amount;
    }
}
