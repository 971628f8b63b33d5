package headgate.verifier.bench;

import headgate.api.shape.Point3;
import headgate.api.task.Velocity;
import headgate.api.vocabulary.PlantClass;
import headgate.api.vocabulary.SoilClass;
import headgate.runtime.answers.HeadAnswers;
import headgate.runtime.answers.SpotAnswer;
import headgate.runtime.pack.HeadPackage;
import headgate.runtime.pack.Inspection;
import headgate.runtime.process.HeadLimits;
import headgate.runtime.process.HeadProcess;
import headgate.runtime.process.HeadStart;
import headgate.runtime.process.Surroundings;
import headgate.runtime.process.Wall;
import headgate.runtime.process.Walls;
import headgate.runtime.task.LatticeSpotTask;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
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
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/** What it costs to ask the sample gripper, in a process of its own, in batches of several sizes and behind a wall or not. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
public class AnswersBenchmark {

    private static final Path GRIPPER =
            Path.of("..", "..", "sample-heads", "gripper", "target", "headgate-sample-gripper-0.1.0.jar");

    /** How many tasks go in one request. */
    @Param({"1", "64", "1024"})
    public int batch;

    /** What holds the process. */
    @Param({"BWRAP", "NONE"})
    public Wall wall;

    private HeadAnswers head;
    private List<LatticeSpotTask> tasks;

    /** Starts the head. */
    @Setup
    public void start() {
        Path jar = GRIPPER.toAbsolutePath().normalize();
        HeadProcess process = HeadProcess.open(HeadLimits.STANDARD, Surroundings.USUAL, Walls.only(wall));
        if (!(HeadPackage.inspect(jar) instanceof Inspection.Inspected gripper)) {
            throw new IllegalStateException(jar + " is not there; make it with: mvn package -pl sample-heads/gripper -am");
        }
        process.load(gripper.clean().orElseThrow());
        head = ((HeadStart.Running) process.await()).head();
        tasks = IntStream.range(0, batch).mapToObj(AnswersBenchmark::task).toList();
    }

    private static LatticeSpotTask task(int number) {
        return LatticeSpotTask.nearest(
                Point3.ofMetres(0.1 + number % 100 / 1000.0, number % 7 / 100.0, -0.5),
                Velocity.ofMetresPerSecond(-0.3, 0),
                PlantClass.BROADLEAF,
                0.004,
                0.1,
                SoilClass.MEDIUM,
                0.25);
    }

    /** Ends the head. */
    @TearDown
    public void end() {
        head.close();
    }

    /** One request with all tasks of the batch. */
    @Benchmark
    public List<SpotAnswer> ask() {
        return head.act(tasks);
    }
}
