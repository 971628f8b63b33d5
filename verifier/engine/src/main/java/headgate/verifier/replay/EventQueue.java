package headgate.verifier.replay;

import java.util.Arrays;
import java.util.NoSuchElementException;
import org.jspecify.annotations.Nullable;

/** What will happen when: a binary heap over plain arrays, since a replay makes and takes millions of events. */
final class EventQueue {

    private double[] times = new double[64];
    private int[] arms = new int[64];
    private @Nullable Candidate[] known = new @Nullable Candidate[64];
    private int size;

    /** An arm has something to decide. */
    void wake(double time, int arm) {
        add(time, arm, null);
    }

    /** An arm comes to know of a target. */
    void known(double time, Candidate candidate) {
        add(time, candidate.arm, candidate);
    }

    boolean isEmpty() {
        return size == 0;
    }

    /** When the next event is; infinite if there is none. */
    double nextTime() {
        return size == 0 ? Double.POSITIVE_INFINITY : times[0];
    }

    int nextArm() {
        demandSome();
        return arms[0];
    }

    /** What becomes known; null if an arm wakes. */
    @Nullable
    Candidate nextKnown() {
        demandSome();
        return known[0];
    }

    private void demandSome() {
        if (size == 0) {
            throw new NoSuchElementException("no event is left");
        }
    }

    private void add(double time, int arm, @Nullable Candidate candidate) {
        if (size == times.length) {
            times = Arrays.copyOf(times, 2 * size);
            arms = Arrays.copyOf(arms, 2 * size);
            known = Arrays.copyOf(known, 2 * size);
        }
        int at = size++;
        while (at > 0) {
            int parent = (at - 1) >>> 1;
            if (times[parent] <= time) {
                break;
            }
            move(parent, at);
            at = parent;
        }
        set(at, time, arm, candidate);
    }

    void removeNext() {
        demandSome();
        size--;
        double time = times[size];
        int arm = arms[size];
        Candidate candidate = known[size];
        known[size] = null;
        int at = 0;
        while (true) {
            int child = 2 * at + 1;
            if (child >= size) {
                break;
            }
            if (child + 1 < size && times[child + 1] < times[child]) {
                child++;
            }
            if (times[child] >= time) {
                break;
            }
            move(child, at);
            at = child;
        }
        if (size > 0) {
            set(at, time, arm, candidate);
        }
    }

    private void move(int from, int to) {
        set(to, times[from], arms[from], known[from]);
    }

    private void set(int at, double time, int arm, @Nullable Candidate candidate) {
        times[at] = time;
        arms[at] = arm;
        known[at] = candidate;
    }
}
