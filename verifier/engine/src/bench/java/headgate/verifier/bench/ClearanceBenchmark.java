package headgate.verifier.bench;

import headgate.api.shape.Body;
import headgate.api.shape.Interval;
import headgate.api.shape.Outline;
import headgate.api.shape.Point;
import headgate.api.shape.Point3;
import headgate.api.shape.Prism;
import headgate.api.sheet.Reach;
import headgate.verifier.geometry.Box;
import headgate.verifier.geometry.Gap;
import headgate.verifier.geometry.Occupied;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
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
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/**
 * What clearance costs. The heads are invented, of a demo head's make: a body and a strut that stand still, a gripper of
 * 16 sides and a weed that move over an L-shaped reach, on arms 0.45 m apart on two beams, each at work and lifted.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class ClearanceBenchmark {

    /** Number of arms. */
    @Param({"4", "8", "16", "32"})
    public int arms;

    private final List<Point3> mounts = new ArrayList<>();
    private final List<Occupied> atWork = new ArrayList<>();
    private final List<Occupied> lifting = new ArrayList<>();
    private final List<List<Geometry>> polygons = new ArrayList<>();
    private final List<List<Interval>> heights = new ArrayList<>();

    /** Runs the benchmarks whose names match the expression that is given. */
    public static void main(String[] args) throws RunnerException {
        new Runner(new OptionsBuilder()
                        .include("headgate\\.verifier\\.bench\\." + args[0])
                        .build())
                .run();
    }

    private static final Body FIXED = Body.of(
            Prism.box(-0.08, 0.08, -0.1, 0.1, -0.25, 0), Prism.box(0.08, 0.3, -0.03, 0.03, -0.12, -0.04));
    private static final Body MOVING = Body.of(
            Prism.aroundCylinder(0, 0, 0.03, -0.02, 0.25), Prism.box(-0.05, 0.05, -0.015, 0.015, 0, 0.04));
    private static final Body CARRIED = Body.of(Prism.aroundCylinder(0, 0, 0.05, -0.1, 0.05));
    private static final Reach REACH = Reach.over(
            Outline.ofMetres(0.05, -0.12, 0.35, -0.12, 0.35, -0.02, 0.15, -0.02, 0.15, 0.12, 0.05, 0.12),
            Interval.ofMetres(-0.55, -0.25));

    /** Places the arms. */
    @Setup
    public void place() {
        for (int i = 0; i < arms; i++) {
            mounts.add(Point3.ofMetres(i % 2 == 0 ? 0 : -1.2, 0.45 * i, 0.6));
            atWork.add(space(mounts.get(i), Interval.ofMetres(-0.02, 0.02)));
            lifting.add(space(mounts.get(i), Interval.ofMetres(-0.02, 0.4)));
            List<Geometry> own = new ArrayList<>();
            List<Interval> bands = new ArrayList<>();
            for (Prism p : lifting.get(i).prisms()) {
                own.add(polygon(p.outline()));
                bands.add(p.height());
            }
            polygons.add(own);
            heights.add(bands);
        }
    }

    private static Occupied space(Point3 mount, Interval lift) {
        return Occupied.of(FIXED, MOVING, CARRIED, REACH)
                .shifted(mount)
                .overShift(Interval.ofMetres(-0.05, 0.05))
                .overLift(lift);
    }

    static Geometry polygon(Outline outline) {
        List<Point> ring = outline.vertices();
        Coordinate[] closed = new Coordinate[ring.size() + 1];
        for (int i = 0; i <= ring.size(); i++) {
            Point p = ring.get(i % ring.size());
            closed[i] = new Coordinate(p.xMetres(), p.yMetres());
        }
        return new GeometryFactory().createPolygon(closed);
    }

    /** All of clearance between arms: volumes made, every pair and stance looked at, far pairs left out by their boxes. */
    @Benchmark
    public double fullClearance() {
        List<Occupied> work = new ArrayList<>();
        List<Occupied> lift = new ArrayList<>();
        for (Point3 mount : mounts) {
            work.add(space(mount, Interval.ofMetres(-0.02, 0.02)));
            lift.add(space(mount, Interval.ofMetres(-0.02, 0.4)));
        }
        return tightest(work, work, tightest(work, lift, Double.POSITIVE_INFINITY));
    }

    private static double tightest(List<Occupied> as, List<Occupied> bs, double start) {
        double least = start;
        for (int i = 0; i < as.size(); i++) {
            for (int j = 0; j < bs.size(); j++) {
                if (i != j) {
                    Box a = as.get(i).bounds().orElseThrow();
                    Box b = bs.get(j).bounds().orElseThrow();
                    if (Math.sqrt((double) a.squaredGapTo(b)) / 1e6 < least) {
                        Optional<Gap> gap = Gap.between(as.get(i), bs.get(j));
                        least = Math.min(least, gap.orElseThrow().metres());
                    }
                }
            }
        }
        return least;
    }

    /** Gaps alone, volumes ready: ours, every pair of arms measured. */
    @Benchmark
    public double gapsOfAllPairs() {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < arms; i++) {
            for (int j = i + 1; j < arms; j++) {
                least = Math.min(
                        least,
                        Gap.between(lifting.get(i), lifting.get(j)).orElseThrow().metres());
            }
        }
        return least;
    }

    /** The same with JTS: planar distance of every pair of prisms, no pruning. */
    @Benchmark
    public double gapsOfAllPairsWithJts() {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < arms; i++) {
            for (int j = i + 1; j < arms; j++) {
                for (int p = 0; p < polygons.get(i).size(); p++) {
                    for (int q = 0; q < polygons.get(j).size(); q++) {
                        double planar =
                                polygons.get(i).get(p).distance(polygons.get(j).get(q));
                        double vertical = heights.get(i).get(p).gapTo(heights.get(j).get(q)) / 1e6;
                        least = Math.min(least, Math.hypot(planar, vertical));
                    }
                }
            }
        }
        return least;
    }

    /**
     * One configuration of one pair, each tool at one point, as a sampler would look at it. A guarantee of 1 mm asks for
     * tool points 1.4 mm apart in the hull of the reach: 27,000 of each head, 7e8 a pair.
     */
    @Benchmark
    public double oneConfigurationOfOnePair() {
        Occupied a = Occupied.of(FIXED).and(Occupied.of(MOVING).shifted(Point3.ofMetres(0.2, 0, -0.4)));
        Occupied b = Occupied.of(FIXED)
                .and(Occupied.of(MOVING).shifted(Point3.ofMetres(0.1, 0.05, -0.3)))
                .shifted(Point3.ofMetres(0, 0.45, 0));
        return Gap.between(a, b).orElseThrow().metres();
    }
}
