package headgate.verifier.dispatch;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.verifier.evidence.Evidence;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * The dispatch and the upper bound against the optimum of an exact solver, on random cases in which plants come one after
 * the other, as they do under a moving carriage.
 */
class DispatchAgainstExactSolverTest {

    private static final String ID = "dispatch-against-optimum";
    private static final int CASES = 500;
    private static final int SLICE = 40;

    /** What was found over some cases. */
    private record Sum(int cases, long jobs, long optimum, long dispatched, long bound, int atOptimum, double share) {}

    @Test
    @Tag("evidence")
    void neverBeatsTheOptimumAndTheBoundIsNeverBelowIt() throws IOException {
        Sum slice = run(SLICE);
        Sum all = run(CASES);
        Evidence.of(ID)
                .with(
                        "claim",
                        "on random cases with releases no dispatch of ours beats the optimum of choco-solver 5.0.0, and"
                                + " the upper bound is never below it")
                .with("command", "mvn -B -ntp -Pevidence verify -pl verifier/engine -am")
                .with("cases", all.cases())
                .with("jobs", all.jobs())
                .with("optimum", all.optimum())
                .with("dispatched", all.dispatched())
                .with("bound", all.bound())
                .with("cases in which the dispatch is optimal", all.atOptimum())
                .with("mean share of the optimum", decimal(all.share()))
                .with("slice cases", slice.cases())
                .with("slice optimum", slice.optimum())
                .with("slice dispatched", slice.dispatched())
                .with("slice bound", slice.bound())
                .write();
    }

    @Test
    void findsInASliceWhatTheEvidenceSays() throws IOException {
        Evidence evidence = Evidence.read(ID);
        Sum slice = run((int) evidence.whole("slice cases"));
        assertThat(slice.optimum()).isEqualTo(evidence.whole("slice optimum"));
        assertThat(slice.dispatched()).isEqualTo(evidence.whole("slice dispatched"));
        assertThat(slice.bound()).isEqualTo(evidence.whole("slice bound"));
        assertThat(evidence.whole("cases")).isEqualTo(CASES);
        assertThat(evidence.decimal("mean share of the optimum")).isGreaterThan(0.95);
    }

    private static Sum run(int cases) {
        long jobs = 0;
        long optimum = 0;
        long dispatched = 0;
        long bound = 0;
        int atOptimum = 0;
        double share = 0;
        for (int seed = 1; seed <= cases; seed++) {
            List<ExactOrder.WholeJob> problem = problem(seed);
            int best = ExactOrder.most(problem);
            int ours = dispatched(problem);
            long most = MostTreatable.of(problem.stream()
                    .map(j -> List.of(new MostTreatable.Chance(
                            0, j.release(), (double) j.lastStart() + j.duration(), j.duration())))
                    .toList());
            assertThat(ours).as("seed %d: dispatched", seed).isLessThanOrEqualTo(best);
            assertThat(most).as("seed %d: bound", seed).isGreaterThanOrEqualTo(best);
            jobs += problem.size();
            optimum += best;
            dispatched += ours;
            bound += most;
            atOptimum += ours == best ? 1 : 0;
            share += (double) ours / best;
        }
        return new Sum(cases, jobs, optimum, dispatched, bound, atOptimum, share / cases);
    }

    /** 12 to 20 plants, releases over time at about the rate that the arm can bear, or twice that; times in tenths. */
    private static List<ExactOrder.WholeJob> problem(int seed) {
        Random random = new Random(seed);
        int n = 12 + random.nextInt(9);
        int span = n * (6 + random.nextInt(7));
        List<ExactOrder.WholeJob> jobs = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            int release = random.nextInt(span);
            jobs.add(new ExactOrder.WholeJob(release, release + random.nextInt(25), 4 + random.nextInt(15)));
        }
        return jobs;
    }

    /** Runs one machine that knows of all jobs and decides by the dispatch. */
    private static int dispatched(List<ExactOrder.WholeJob> problem) {
        EarliestDue dispatch = new EarliestDue();
        boolean[] done = new boolean[problem.size()];
        double now = 0;
        int count = 0;
        while (true) {
            Jobs known = new Jobs();
            List<Integer> numbers = new ArrayList<>();
            for (int i = 0; i < problem.size(); i++) {
                ExactOrder.WholeJob job = problem.get(i);
                if (!done[i] && job.lastStart() >= now) {
                    known.add(Math.max(now, job.release()), job.lastStart(), job.duration(), i);
                    numbers.add(i);
                }
            }
            if (known.size() == 0) {
                return count;
            }
            int chosen = dispatch.next(known, now);
            int job = numbers.get(chosen);
            now = known.ready(chosen) + known.busy(chosen);
            done[job] = true;
            count++;
        }
    }

    private static String decimal(double value) {
        return BigDecimal.valueOf(value).setScale(4, RoundingMode.HALF_UP).toPlainString();
    }
}
