package headgate.verifier.dispatch;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Worked problems of one machine, as jobs with a duration and a due time; all can start at once. */
class EarliestDueTest {

    /**
     * Ten jobs, duration and due time, from a course on scheduling; eight can be on time, found by trying all 1024 sets
     * (J. M. Moore, Management Science 15, 1968, proves that the algorithm finds it).
     */
    private static final double[][] COURSE = {
        {19, 48}, {23, 75}, {5, 170}, {31, 215}, {17, 205}, {8, 240}, {32, 85}, {41, 67}, {26, 100}, {18, 95}
    };

    @Test
    void doesAsManyAsMooreAndHodgson() {
        assertThat(onTime(COURSE)).isEqualTo(8);
        assertThat(onTime(new double[][] {{10, 15}, {3, 6}, {4, 9}, {8, 23}, {10, 20}, {6, 30}}))
                .isEqualTo(4);
        assertThat(onTime(new double[][] {{2, 3}, {4, 5}, {1, 6}, {3, 7}, {2, 8}}))
                .isEqualTo(4);
    }

    @Test
    void waitsForAnUrgentJobRatherThanBlockIt() {
        // The long job may start at once but would be over at 10; the two short ones must start by 2 and 4.
        Jobs jobs = new Jobs();
        jobs.add(0, 20, 10, 0);
        jobs.add(1, 2, 1, 1);
        jobs.add(3, 4, 1, 2);
        assertThat(new EarliestDue().next(jobs, 0)).isEqualTo(1);
    }

    @Test
    void prefersTheLowerRankAmongEqualJobs() {
        Jobs jobs = new Jobs();
        jobs.add(0, 5, 1, 9);
        jobs.add(0, 5, 1, 4);
        assertThat(new EarliestDue().next(jobs, 0)).isEqualTo(1);
    }

    /** Runs one machine by the dispatch until no job can be started in time. */
    private static int onTime(double[][] jobs) {
        boolean[] done = new boolean[jobs.length];
        double now = 0;
        int count = 0;
        while (true) {
            Jobs left = new Jobs();
            List<Integer> numbers = new java.util.ArrayList<>();
            for (int i = 0; i < jobs.length; i++) {
                if (!done[i] && now + jobs[i][0] <= jobs[i][1]) {
                    left.add(now, jobs[i][1] - jobs[i][0], jobs[i][0], i);
                    numbers.add(i);
                }
            }
            if (left.size() == 0) {
                return count;
            }
            int next = numbers.get(new EarliestDue().next(left, now));
            done[next] = true;
            now += jobs[next][0];
            count++;
        }
    }
}
