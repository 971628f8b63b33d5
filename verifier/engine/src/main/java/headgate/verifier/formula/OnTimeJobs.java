package headgate.verifier.formula;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * The most jobs that one machine can finish on time if all may start now: by due date, and whenever one would be late
 * the longest so far is dropped (J. M. Moore, Management Science 15, 1968; with T. J. Hodgson).
 */
public final class OnTimeJobs {

    /**
     * A job.
     *
     * @param duration how long it takes, s; 0 or more
     * @param due when it must be finished, s after now
     */
    public record Job(double duration, double due) {

        /**
         * Checks the bounds.
         *
         * @param duration how long it takes, s
         * @param due when it must be finished, s
         * @throws IllegalArgumentException if a figure is out of bounds
         */
        public Job {
            Figures.notNegative("duration", duration, "s");
            if (!Double.isFinite(due)) {
                throw new IllegalArgumentException("due must be finite, but is " + due);
            }
        }
    }

    private OnTimeJobs() {}

    /**
     * Chooses the jobs.
     *
     * @param jobs the jobs
     * @return the indices in the list of the jobs to do, in the order to do them; as many as possible are on time
     */
    public static List<Integer> of(List<Job> jobs) {
        List<Integer> byDue = new ArrayList<>();
        for (int i = 0; i < jobs.size(); i++) {
            byDue.add(i);
        }
        byDue.sort(Comparator.<Integer>comparingDouble(i -> jobs.get(i).due()).thenComparingInt(i -> i));
        Set<Integer> dropped = new HashSet<>();
        List<Integer> kept = new ArrayList<>();
        double time = 0;
        for (int i : byDue) {
            kept.add(i);
            time += jobs.get(i).duration();
            if (time > jobs.get(i).due()) {
                int longest = kept.stream()
                        .max(Comparator.<Integer>comparingDouble(
                                        k -> jobs.get(k).duration())
                                .thenComparingInt(k -> k))
                        .orElseThrow();
                kept.remove(Integer.valueOf(longest));
                dropped.add(longest);
                time -= jobs.get(longest).duration();
            }
        }
        return byDue.stream().filter(i -> !dropped.contains(i)).toList();
    }
}
