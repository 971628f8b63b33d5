package headgate.verifier.bench;

import headgate.api.shape.Interval;
import headgate.verifier.assignment.Assigner;
import headgate.verifier.assignment.Assignment;
import headgate.verifier.assignment.Choice;
import headgate.verifier.assignment.Problem;
import headgate.verifier.assignment.Slider;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * What it costs to assign 16 arms to 24 lanes, so that half of the arms serve two lanes each. The figures are invented:
 * lanes 60 mm wide and 150 mm apart, rails of 0.8 m about places that are a little off, on two beams.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
public class AssignmentBenchmark {

    private static final int ARMS = 16;
    private static final int BEAMS = 2;
    private static final int LANES = 24;
    private static final long APART = 150_000;
    private static final long HALF_LANE = 30_000;
    private static final long HALF_STRIP = 200_000;
    private static final long HALF_RAIL = 400_000;

    /** How far apart two mounts on one beam must stand, micrometres. */
    @Param({"300000", "420000", "500000"})
    public long pitch;

    private Problem problem;

    /** Makes the problem. */
    @Setup
    public void make() {
        Random random = new Random(7);
        List<Slider> sliders = new ArrayList<>();
        for (int i = 0; i < ARMS; i++) {
            long middle =
                    Math.round(((i + 0.5) / ARMS - 0.5) * LANES * APART) + random.nextInt(40_000) - 20_000;
            sliders.add(new Slider("arm " + i, i % BEAMS, Optional.empty(), choices(middle)));
        }
        problem = new Problem(
                sliders,
                Collections.nCopies(LANES, 1),
                (i, si, j, sj) ->
                        i % BEAMS == j % BEAMS ? Optional.of(new Interval(-pitch, pitch)) : Optional.empty());
    }

    private static List<Choice> choices(long middle) {
        List<Interval> rail = List.of(new Interval(middle - HALF_RAIL, middle + HALF_RAIL));
        List<Choice> choices = new ArrayList<>();
        for (int run = 1; run <= 2; run++) {
            for (int lane = 0; lane + run <= LANES; lane++) {
                long least = lane(lane + run - 1) + HALF_LANE - HALF_STRIP;
                long most = lane(lane) - HALF_LANE + HALF_STRIP;
                Choice choice = new Choice(
                        0, lane, run, rail, Optional.of(new Interval(least, most)), Math.floorDiv(least + most, 2L));
                if (choice.mostCover().orElseThrow() >= 0) {
                    choices.add(choice);
                }
            }
        }
        choices.add(new Choice(1, 0, 0, rail, Optional.empty(), middle));
        return choices;
    }

    private static long lane(int number) {
        return Math.round((number - (LANES - 1) / 2.0) * APART);
    }

    /** Assigns. */
    @Benchmark
    public Optional<Assignment> assign() {
        return Assigner.best(problem);
    }
}
