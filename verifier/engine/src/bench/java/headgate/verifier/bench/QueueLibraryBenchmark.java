package headgate.verifier.bench;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import umontreal.ssj.simevents.Event;
import umontreal.ssj.simevents.Simulator;

/**
 * The queue of {@link ReplayBenchmark} with one arm, in a general-purpose library (SSJ 3.3.2, Universite de Montreal,
 * Apache-2.0): customers come at random, wait up to a patience and are then gone, and one server takes a fixed time. It
 * is the bare queue: no reach, no plants, no heads.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class QueueLibraryBenchmark {

    private static final int CUSTOMERS = ReplayBenchmark.PLANTS;

    /** Customers in the time of a service. */
    @Param({"0.5", "1", "2", "4"})
    public double load;

    /** The queue as events. */
    @Benchmark
    @OperationsPerInvocation(CUSTOMERS)
    public long asEvents() {
        return new Queue(load).run();
    }

    private static final class Queue {
        private final Simulator sim = new Simulator();
        private final SplittableRandom random = new SplittableRandom(11);
        private final Deque<Leave> waiting = new ArrayDeque<>();
        private final double load;
        private boolean busy;
        private int arrived;
        private long served;

        Queue(double load) {
            this.load = load;
        }

        long run() {
            sim.init();
            new Arrive(sim).schedule(gap());
            sim.start();
            return served;
        }

        double gap() {
            return -StrictMath.log(1 - random.nextDouble()) * ReplayBenchmark.ACTION / load;
        }

        void serve() {
            busy = true;
            served++;
            new Free(sim).schedule(ReplayBenchmark.ACTION);
        }

        private final class Arrive extends Event {
            Arrive(Simulator s) {
                super(s);
            }

            @Override
            public void actions() {
                if (++arrived < CUSTOMERS) {
                    new Arrive(sim).schedule(gap());
                }
                if (busy) {
                    Leave leave = new Leave(sim);
                    leave.schedule(ReplayBenchmark.PATIENCE);
                    waiting.add(leave);
                } else {
                    serve();
                }
            }
        }

        private final class Free extends Event {
            Free(Simulator s) {
                super(s);
            }

            @Override
            public void actions() {
                Leave next = waiting.poll();
                if (next == null) {
                    busy = false;
                } else {
                    next.cancel();
                    serve();
                }
            }
        }

        private final class Leave extends Event {
            Leave(Simulator s) {
                super(s);
            }

            @Override
            public void actions() {
                // All have the same patience, so the first to wait is the first to leave.
                waiting.poll();
            }
        }
    }
}
