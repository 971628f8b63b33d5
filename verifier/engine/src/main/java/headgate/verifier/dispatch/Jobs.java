package headgate.verifier.dispatch;

import java.util.Arrays;

/**
 * The jobs among which an arm chooses. It is filled anew for every choice and keeps its arrays, since a replay makes
 * millions of choices.
 */
public final class Jobs {

    private int size;
    private double[] ready = new double[16];
    private double[] lastStart = new double[16];
    private double[] busy = new double[16];
    private long[] order = new long[16];

    /** Makes an empty list. */
    public Jobs() {}

    /** Takes all jobs out. */
    public void clear() {
        size = 0;
    }

    /**
     * Adds a job.
     *
     * @param canStart when it can be started at the earliest, s
     * @param mustStart when it must have been started, s
     * @param duration how long it keeps the arm busy, s
     * @param rank decides between jobs that are alike: the least goes first
     */
    public void add(double canStart, double mustStart, double duration, long rank) {
        if (size == ready.length) {
            int grown = 2 * size;
            ready = Arrays.copyOf(ready, grown);
            lastStart = Arrays.copyOf(lastStart, grown);
            busy = Arrays.copyOf(busy, grown);
            order = Arrays.copyOf(order, grown);
        }
        ready[size] = canStart;
        lastStart[size] = mustStart;
        busy[size] = duration;
        order[size] = rank;
        size++;
    }

    /** {@return the number of jobs} */
    public int size() {
        return size;
    }

    /**
     * When a job can be started.
     *
     * @param job its number, from 0 in the order of adding
     * @return the earliest start, s
     */
    public double ready(int job) {
        return ready[job];
    }

    /**
     * When a job must have been started.
     *
     * @param job its number
     * @return the latest start, s
     */
    public double lastStart(int job) {
        return lastStart[job];
    }

    /**
     * How long a job takes.
     *
     * @param job its number
     * @return the time that it keeps the arm busy, s
     */
    public double busy(int job) {
        return busy[job];
    }

    /**
     * When a job is over if it is started as late as it may be.
     *
     * @param job its number
     * @return the due time, s
     */
    public double due(int job) {
        return lastStart[job] + busy[job];
    }

    /**
     * Says which of two jobs is due first.
     *
     * @param a a job's number
     * @param b another's
     * @return true if the first is due before the second, or with it and of less rank
     */
    public boolean dueBefore(int a, int b) {
        int compared = Double.compare(due(a), due(b));
        return compared != 0 ? compared < 0 : order[a] < order[b];
    }
}
