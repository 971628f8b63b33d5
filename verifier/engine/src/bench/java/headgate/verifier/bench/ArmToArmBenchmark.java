package headgate.verifier.bench;

import headgate.api.shape.Body;
import headgate.api.shape.Interval;
import headgate.api.shape.Outline;
import headgate.api.shape.Point3;
import headgate.api.shape.Prism;
import headgate.api.sheet.HeadSheet;
import headgate.api.sheet.Posture;
import headgate.api.sheet.Reach;
import headgate.api.vocabulary.PostureName;
import headgate.runtime.carriage.Arm;
import headgate.runtime.carriage.CarriageReader;
import headgate.runtime.cropplan.CropPlan;
import headgate.runtime.cropplan.CropPlanReader;
import headgate.runtime.origin.InvalidFileException;
import headgate.runtime.policy.PolicyReader;
import headgate.verifier.check.Case;
import headgate.verifier.check.Cases;
import headgate.verifier.setup.ArmStance;
import headgate.verifier.setup.Nearness;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.locationtech.jts.geom.Geometry;
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
 * What {@code clearance.arm-to-arm} costs once the set-points are known: the spaces of every arm in every stance, and every
 * pair. On Lowfield's carriage with a head like its gripper, and on 4 to 32 of the same arms 0.45 m apart, on two beams in
 * turn.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class ArmToArmBenchmark {

    private static final Path LOWFIELD = Path.of("..", "..", "sample-heads/lowfield/src/main/resources/lowfield");

    /** Which carriage: Lowfield's, or so many arms. */
    @Param({"lowfield", "4", "8", "16", "32"})
    public String carriage;

    private Case subject;
    private final List<List<Placed>> placed = new ArrayList<>();

    /** A prism as JTS sees it. */
    private record Placed(Geometry plan, Interval height) {}

    /** Sets the case up. */
    @Setup
    public void make() throws InvalidFileException {
        subject = carriage.equals("lowfield") ? lowfield() : row(Integer.parseInt(carriage));
        Nearness near = rule();
        if (near.tightest().isEmpty()) {
            throw new IllegalStateException("there is nothing to measure");
        }
        headgate.verifier.setup.Setup setup = headgate.verifier.setup.Setup.of(subject);
        for (List<ArmStance> stances : ArmStance.all(setup, 2)) {
            List<Placed> own = new ArrayList<>();
            for (ArmStance stance : stances) {
                for (Prism p : stance.space().prisms()) {
                    own.add(new Placed(ClearanceBenchmark.polygon(p.outline()), p.height()));
                }
            }
            placed.add(own);
        }
    }

    private static Cases gripping() {
        return Cases.weeding().sheet(ArmToArmBenchmark::gripper);
    }

    private static Case lowfield() throws InvalidFileException {
        return Case.ofOneHead(
                gripping().head(),
                CarriageReader.read(LOWFIELD.resolve("carriage.json")),
                CropPlanReader.read(LOWFIELD.resolve("lettuce-45-weeding.json")),
                PolicyReader.builtIn());
    }

    private static Case row(int count) {
        List<Arm> arms = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double y = 0.45 * (i - (count - 1) / 2.0);
            Arm arm = Cases.arm(String.format("a%02d", i + 1), i % 2 == 0 ? "front" : "rear", y);
            arms.add(arm.withShift(Interval.ofMetres(y - 0.01, y + 0.01)));
        }
        return gripping()
                .carriage(c -> c.withArms(arms))
                .rows(new CropPlan.Rows(0.45, count, 0.3, 0))
                .build();
    }

    /** The bodies of Lowfield's gripper. */
    private static HeadSheet.Builder gripper(HeadSheet.Builder sheet) {
        Body fixed = Body.of(
                Prism.box(-0.06, 0.10, -0.05, 0.05, -0.12, 0.0), Prism.box(0.04, 0.48, -0.18, 0.18, -0.20, -0.09));
        Body moving = Body.of(
                Prism.aroundCylinder(0.0, 0.0, 0.035, 0.0, 0.10), Prism.box(-0.025, 0.025, -0.025, 0.025, 0.09, 0.43));
        Body weed = Body.of(
                Prism.aroundCylinder(0.0, 0.0, 0.03, -0.08, 0.0), Prism.aroundCylinder(0.0, 0.0, 0.08, -0.01, 0.23));
        Reach ready = Reach.at(Point3.ofMetres(0.26, 0.0, -0.22));
        Reach reach = Reach.over(Outline.rectangle(0.09, 0.43, -0.13, 0.13), Interval.ofMetres(-0.60, -0.22));
        return sheet.postures(
                Cases.posture(PostureName.STOWED, fixed, moving, ready),
                Cases.posture(PostureName.READY, fixed, moving, ready),
                Cases.posture(PostureName.WORK, fixed, moving, reach),
                Posture.named(PostureName.of("carrying"))
                        .fixed(fixed)
                        .moving(moving)
                        .carried(weed)
                        .region(reach)
                        .build());
    }

    /** All of the rule but the set-points. */
    @Benchmark
    public Nearness rule() {
        return Nearness.of(subject, pair -> true);
    }

    /** The same pairs with JTS, spaces ready: planar distance of every pair of prisms of two arms, none left out. */
    @Benchmark
    public double allPairsWithJts() {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < placed.size(); i++) {
            for (int j = i + 1; j < placed.size(); j++) {
                for (Placed a : placed.get(i)) {
                    for (Placed b : placed.get(j)) {
                        double vertical = a.height().gapTo(b.height()) / 1e6;
                        least = Math.min(least, Math.hypot(a.plan().distance(b.plan()), vertical));
                    }
                }
            }
        }
        return least;
    }
}
