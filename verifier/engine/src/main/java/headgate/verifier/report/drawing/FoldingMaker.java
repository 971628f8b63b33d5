package headgate.verifier.report.drawing;

import headgate.api.shape.Interval;
import headgate.api.shape.Point;
import headgate.api.shape.Point3;
import headgate.runtime.carriage.Arm;
import headgate.runtime.carriage.Carriage;
import headgate.runtime.carriage.Stance;
import headgate.verifier.check.Case;
import headgate.verifier.geometry.Box;
import headgate.verifier.geometry.Occupied;
import headgate.verifier.geometry.Rounding;
import headgate.verifier.setup.FoldStep;
import headgate.verifier.setup.FoldedArm;
import headgate.verifier.setup.Setup;
import headgate.verifier.setup.WorkHeight;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/** Makes what is seen of a case's stances for transport. */
public final class FoldingMaker {

    private FoldingMaker() {}

    /**
     * Makes the stances.
     *
     * @param subject the case
     * @param spots places that findings measured, by the stance's name and the number of the shape in it, from 1
     * @param clean makes names that others wrote fit to be shown
     * @return a folding for each stance for transport that carries anything, in the order of the carriage's file
     */
    public static List<Folding> of(
            Case subject, Function<String, Map<Integer, List<Spot>>> spots, UnaryOperator<String> clean) {
        return subject.carriage().value().stances().stream()
                .filter(s -> s.use() == Stance.Use.TRANSPORT)
                .flatMap(s -> folding(subject, s, spots.apply(clean.apply(s.name())), clean).stream())
                .toList();
    }

    private static Optional<Folding> folding(
            Case subject, Stance stance, Map<Integer, List<Spot>> spots, UnaryOperator<String> clean) {
        List<FoldStep> steps = FoldStep.of(subject, stance);
        FoldStep road = steps.get(steps.size() - 1);
        Optional<Interval> filled = Stream.concat(
                        road.arms().stream().map(FoldedArm::space),
                        road.structure().stream().map(Carriage.Part::body).map(Occupied::of))
                .flatMap(o -> o.bounds().stream())
                .map(Box::y)
                .reduce(Interval::hull);
        if (filled.isEmpty()) {
            return Optional.empty();
        }
        long half = Rounding.down(subject.policy().value().transportWidth().value()) / 2;
        long middle = filled.get().least() + filled.get().length() / 2;
        long motion = road.arms().stream()
                .mapToLong(
                        a -> WorkHeight.groundMotion(subject, a.arm(), a.mount().plan()))
                .max()
                .orElse(0);
        Map<String, Point3> before = lifted(Setup.of(subject));
        List<Folding.Shape> shapes = new ArrayList<>();
        for (FoldStep step : steps) {
            shapes.add(shape(step, before, spots.getOrDefault(shapes.size() + 1, List.of()), clean));
            step.arms().forEach(a -> before.put(a.arm().id(), a.mount()));
        }
        return Optional.of(new Folding(
                clean.apply(stance.name()),
                new Interval(middle - half, middle + half),
                Rounding.down(subject.policy().value().transportHeight().value()),
                Rounding.up(subject.policy().value().transportGroundGap().value())
                        + Rounding.up(stance.suspensionTravel())
                        + motion,
                shapes));
    }

    /** Where mounts are before the first step: at their work places, at the top of their lifts. */
    private static Map<String, Point3> lifted(Setup setup) {
        Map<String, Point3> mounts = new HashMap<>();
        Stream.concat(setup.stations().stream(), setup.waiting().stream())
                .forEach(s -> mounts.put(s.arm().id(), lifted(s.arm(), s.mount())));
        setup.empty().forEach(e -> mounts.put(e.arm().id(), lifted(e.arm(), e.mount())));
        return mounts;
    }

    private static Point3 lifted(Arm arm, Point mount) {
        return new Point3(mount.x(), mount.y(), arm.lift().most());
    }

    private static Folding.Shape shape(
            FoldStep step, Map<String, Point3> before, List<Spot> spots, UnaryOperator<String> clean) {
        return new Folding.Shape(
                clean.apply(step.name()),
                step.arms().stream()
                        .map(a -> new Folding.Carried(
                                clean.apply(a.label()),
                                before.getOrDefault(a.arm().id(), a.mount()),
                                a.mount(),
                                SceneMaker.few(a.space()),
                                SceneMaker.few(a.head()),
                                a.isLoose()))
                        .toList(),
                step.structure().stream()
                        .map(p -> new Scene.Part(clean.apply(p.name()), SceneMaker.few(Occupied.of(p.body()))))
                        .toList(),
                spots);
    }
}
