package headgate.verifier.bench;

import headgate.api.answer.Action;
import headgate.api.answer.Contact;
import headgate.api.answer.Phase;
import headgate.api.shape.Interval;
import headgate.api.shape.Outline;
import headgate.api.shape.Point;
import headgate.api.shape.Point3;
import headgate.runtime.answers.HeadAnswers;
import headgate.runtime.answers.SpotAnswer;
import headgate.runtime.stand.Plant;
import headgate.runtime.task.LatticeSpotTask;
import headgate.verifier.behaviour.Chord;
import headgate.verifier.dispatch.Dispatch;
import headgate.verifier.dispatch.EarliestDue;
import headgate.verifier.dispatch.Jobs;
import headgate.verifier.replay.ReplayArm;
import headgate.verifier.replay.ReplaySetting;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import umontreal.ssj.simevents.Event;
import umontreal.ssj.simevents.Simulator;

/**
 * The plots of {@link ReplayBenchmark} as one would program them on a general-purpose library (SSJ 3.3.2, Universite de
 * Montreal, Apache-2.0) in its own style, with an event class for each thing that happens. The same plants, reach, windows,
 * head and dispatch, and every action is asked from the head for where the plant is; answers are kept in a map. The library's
 * view by processes is not in its package any more. Before anything is timed both must have reached the same number.
 *
 * <p>It leaves out what no plot of the benchmark has: shifts, links, interlocks, supplies, cameras, crop, reasons for misses.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class PlotOnLibraryBenchmark {

    private static final double SLACK = 1e-9;

    /** Arms side by side, each on its own lane. */
    @Param({"1", "8"})
    public int arms;

    /** Plants for each arm in the time of an action. */
    @Param({"0.5", "1", "2", "4"})
    public double load;

    private final ReplayBenchmark plots = new ReplayBenchmark();

    /** Makes the plants, and holds the result against the replay's. */
    @Setup
    public void make() {
        plots.arms = arms;
        plots.load = load;
        plots.make();
        long here = run();
        long replayed = plots.replay().reached();
        if (here != replayed) {
            throw new IllegalStateException("reached here: " + here + ", by the replay: " + replayed);
        }
    }

    /** Runs the plants through the library. */
    @Benchmark
    @OperationsPerInvocation(ReplayBenchmark.PLANTS)
    public long run() {
        return new Plot(plots.setting(), plots.plants(), plots.head()).run();
    }

    private static final class Weed {
        private final Plant plant;
        private boolean taken;

        Weed(Plant plant) {
            this.plant = plant;
        }

        long x() {
            return plant.position().x();
        }

        long y() {
            return plant.position().y();
        }
    }

    /** A weed that an arm may take, and when. */
    private record Chance(Weed weed, int number, double enters, double leaves, Times first) {}

    /** What the head answered, in times. */
    private record Times(double approach, double inGround, double busy, Point3 end, @Nullable Outline treated) {

        static Times of(Action action) {
            double time = 0;
            double from = 0;
            double to = 0;
            boolean contact = false;
            Point3 end = action.phases().get(0).toolPoint();
            Outline treated = null;
            for (Phase phase : action.phases()) {
                if (phase.contact().equals(Contact.SOIL)) {
                    from = contact ? from : time;
                    contact = true;
                    to = time + phase.duration();
                    end = phase.toolPoint();
                    treated = phase.treated().orElse(null);
                }
                time += phase.duration();
            }
            return new Times(from, to - from, time, end, treated);
        }
    }

    private static final class Arm {
        private final ReplayArm arm;
        private final Outline reach;
        private final Dispatch dispatch = new EarliestDue();
        private final List<Chance> waiting = new ArrayList<>();
        private boolean busy;
        private @Nullable Event wake;

        Arm(ReplayArm arm, Outline reach) {
            this.arm = arm;
            this.reach = reach;
        }
    }

    private static final class Plot {
        private final Simulator sim = new Simulator();
        private final ReplaySetting setting;
        private final double perSecond;
        private final HeadAnswers head;
        private final Iterator<Plant> plants;
        private final List<Arm> arms = new ArrayList<>();
        private final Deque<Weed> near = new ArrayDeque<>();
        private final Map<LatticeSpotTask, Times> known = new HashMap<>();
        private final Jobs jobs = new Jobs();
        private final List<Chance> jobOf = new ArrayList<>();
        private int numbered;
        private long reached;

        Plot(ReplaySetting setting, List<Plant> plants, HeadAnswers head) {
            this.setting = setting;
            this.perSecond = setting.speed() * 1e6;
            this.head = head;
            this.plants = plants.iterator();
            Outline reach =
                    setting.tools().get(0).sheet().reach().outline().orElseThrow();
            setting.arms().forEach(arm -> arms.add(new Arm(arm, reach)));
        }

        long run() {
            sim.init();
            next();
            sim.start();
            return reached;
        }

        void next() {
            if (plants.hasNext()) {
                Plant plant = plants.next();
                double time = (plant.position().x() - setting.ahead() * 1e6) / perSecond;
                // The library's clock begins at 0, and the first plants are known before the carriage starts.
                new Seen(plant).schedule(Math.max(0, time + START - sim.time()));
            }
        }

        /** Time of the library's clock when the carriage is at x = 0, s. */
        private static final double START = 100;

        double now() {
            return sim.time() - START;
        }

        Times ask(Arm arm, Weed weed, double ahead) {
            LatticeSpotTask task = LatticeSpotTask.nearest(
                    new Point3(Math.round(ahead), weed.y() - arm.arm.setPoint(), -arm.arm.height()),
                    arm.arm.facing().ground(setting.speed()),
                    weed.plant.kind(),
                    weed.plant.stem(),
                    weed.plant.height(),
                    setting.soil(),
                    setting.moisture());
            return known.computeIfAbsent(
                    task,
                    asked -> Times.of(
                            ((SpotAnswer.Answered) head.act(List.of(asked)).get(0)).action()));
        }

        void decide(Arm arm) {
            if (arm.busy) {
                return;
            }
            while (true) {
                list(arm);
                if (jobs.size() == 0) {
                    return;
                }
                int job = arm.dispatch.next(jobs, now());
                if (job == Dispatch.NONE) {
                    return;
                }
                if (jobs.ready(job) > now() + SLACK) {
                    wake(arm, jobs.ready(job));
                    return;
                }
                Chance chance = jobOf.get(job);
                Times times = ask(arm, chance.weed(), chance.weed().x() - arm.arm.mountX() - perSecond * now());
                double contact = now() + times.approach();
                if (contact >= chance.enters() - SLACK && contact + times.inGround() <= chance.leaves() + SLACK) {
                    begin(arm, chance.weed(), times);
                    return;
                }
                arm.waiting.remove(chance);
            }
        }

        void list(Arm arm) {
            jobs.clear();
            jobOf.clear();
            arm.waiting.removeIf(c ->
                    c.weed().taken || now() > c.leaves() - c.first().inGround() + SLACK);
            for (Chance c : arm.waiting) {
                double ready = Math.max(c.enters() - c.first().approach(), now());
                double last = Math.max(
                        c.leaves() - c.first().approach() - c.first().inGround(), ready);
                jobs.add(ready, last, c.first().busy(), c.number());
                jobOf.add(c);
            }
        }

        void wake(Arm arm, double time) {
            if (arm.wake != null) {
                arm.wake.cancel();
            }
            arm.wake = new Decide(arm);
            arm.wake.schedule(Math.max(0, time - now()));
        }

        void begin(Arm arm, Weed own, Times times) {
            arm.busy = true;
            own.taken = true;
            reached++;
            new Free(arm).schedule(times.busy());
            Outline treated = times.treated();
            if (treated == null) {
                return;
            }
            double atX = arm.arm.mountX()
                    + perSecond * (now() + times.approach() + times.inGround())
                    + times.end().x();
            double atY = arm.arm.setPoint() + times.end().y();
            while (!near.isEmpty() && near.element().x() < perSecond * now() - 1e6) {
                near.remove();
            }
            Interval along = treated.xExtent();
            for (Weed weed : near) {
                double dx = weed.x() - atX;
                if (dx > along.most()) {
                    break;
                }
                if (!weed.taken
                        && dx >= along.least()
                        && treated.contains(new Point(Math.round(dx), Math.round(weed.y() - atY)))) {
                    weed.taken = true;
                    reached++;
                }
            }
        }

        /** A plant becomes known. */
        private final class Seen extends Event {
            private final Plant plant;

            Seen(Plant plant) {
                super(Plot.this.sim);
                this.plant = plant;
            }

            @Override
            public void actions() {
                next();
                Weed weed = new Weed(plant);
                near.add(weed);
                int number = numbered++;
                for (Arm arm : arms) {
                    List<Interval> pieces = Chord.at(arm.reach, weed.y() - arm.arm.setPoint());
                    if (!pieces.isEmpty()) {
                        Interval piece = pieces.get(pieces.size() - 1);
                        double at = weed.x() - (double) arm.arm.mountX();
                        Times first = ask(arm, weed, (double) piece.most());
                        arm.waiting.add(new Chance(
                                weed, number, (at - piece.most()) / perSecond, (at - piece.least()) / perSecond, first));
                        decide(arm);
                    }
                }
            }
        }

        /** An arm has something to decide. */
        private final class Decide extends Event {
            private final Arm arm;

            Decide(Arm arm) {
                super(Plot.this.sim);
                this.arm = arm;
            }

            @Override
            public void actions() {
                arm.wake = null;
                decide(arm);
            }
        }

        /** An arm is free again. */
        private final class Free extends Event {
            private final Arm arm;

            Free(Arm arm) {
                super(Plot.this.sim);
                this.arm = arm;
            }

            @Override
            public void actions() {
                arm.busy = false;
                decide(arm);
            }
        }
    }
}
