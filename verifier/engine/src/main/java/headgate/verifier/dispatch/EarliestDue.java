package headgate.verifier.dispatch;

/**
 * Earliest due job first, with a look ahead over all jobs that are known. The jobs are laid out in time, always the
 * earliest due of those that can be started; where one would be late, the longest job since the arm was last idle is
 * given up (J. M. Moore, Management Science 15, 1968) and the jobs are laid out anew. The first of what is left is taken.
 *
 * <p>If all jobs can be started now, this is the algorithm of Moore and Hodgson, and no other order does more of them in
 * time. If they become startable one after the other it need not be the best: that problem is NP-hard.
 */
public final class EarliestDue implements Dispatch {

    /** Room for rounding when times are added up in another order, s. */
    private static final double SLACK = 1e-9;

    private boolean[] dropped = new boolean[16];
    private int[] byDue = new int[16];
    private boolean[] done = new boolean[16];
    private int[] block = new int[16];

    /** Makes one; it keeps its arrays between choices, so each arm's thread has its own. */
    public EarliestDue() {}

    @Override
    public int next(Jobs jobs, double now) {
        int n = jobs.size();
        if (n == 1) {
            return 0;
        }
        makeRoom(n);
        sortByDue(jobs, n);
        java.util.Arrays.fill(dropped, 0, n, false);
        while (true) {
            int first = layOut(jobs, n, now);
            if (first != AGAIN) {
                return first;
            }
        }
    }

    private static final int AGAIN = -2;

    /** Lays the jobs out; drops one and says so if one would be late. */
    private int layOut(Jobs jobs, int n, double now) {
        java.util.Arrays.fill(done, 0, n, false);
        double time = now;
        int first = NONE;
        int inBlock = 0;
        while (true) {
            int job = earliestDueReady(jobs, n, time);
            if (job == NONE) {
                double next = nextReady(jobs, n);
                if (Double.isInfinite(next)) {
                    return first;
                }
                time = next;
                inBlock = 0;
                continue;
            }
            block[inBlock++] = job;
            if (time > jobs.lastStart(job) + SLACK) {
                dropped[longest(jobs, inBlock)] = true;
                return AGAIN;
            }
            done[job] = true;
            first = first == NONE ? job : first;
            time += jobs.busy(job);
        }
    }

    private int earliestDueReady(Jobs jobs, int n, double time) {
        for (int k = 0; k < n; k++) {
            int job = byDue[k];
            if (!done[job] && !dropped[job] && jobs.ready(job) <= time + SLACK) {
                return job;
            }
        }
        return NONE;
    }

    private double nextReady(Jobs jobs, int n) {
        double next = Double.POSITIVE_INFINITY;
        for (int job = 0; job < n; job++) {
            if (!done[job] && !dropped[job]) {
                next = Math.min(next, jobs.ready(job));
            }
        }
        return next;
    }

    /** The longest job of the block; of equally long ones the one that is due last. */
    private int longest(Jobs jobs, int inBlock) {
        int longest = block[0];
        for (int k = 1; k < inBlock; k++) {
            int job = block[k];
            int compared = Double.compare(jobs.busy(job), jobs.busy(longest));
            if (compared > 0 || (compared == 0 && jobs.dueBefore(longest, job))) {
                longest = job;
            }
        }
        return longest;
    }

    /** Few jobs, mostly in order already: insertion sort. */
    private void sortByDue(Jobs jobs, int n) {
        for (int i = 0; i < n; i++) {
            int k = i;
            while (k > 0 && jobs.dueBefore(i, byDue[k - 1])) {
                byDue[k] = byDue[k - 1];
                k--;
            }
            byDue[k] = i;
        }
    }

    private void makeRoom(int n) {
        if (dropped.length < n) {
            int grown = Math.max(n, 2 * dropped.length);
            dropped = new boolean[grown];
            byDue = new int[grown];
            done = new boolean[grown];
            block = new int[grown];
        }
    }
}
