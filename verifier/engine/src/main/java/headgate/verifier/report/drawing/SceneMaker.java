package headgate.verifier.report.drawing;

import headgate.api.shape.Interval;
import headgate.api.shape.Outline;
import headgate.api.shape.Point;
import headgate.api.shape.Point3;
import headgate.api.shape.Prism;
import headgate.api.sheet.HeadSheet;
import headgate.api.sheet.Posture;
import headgate.api.unit.Micrometres;
import headgate.api.vocabulary.PostureName;
import headgate.runtime.carriage.Arm;
import headgate.runtime.carriage.Carriage;
import headgate.runtime.cropplan.CropPlan;
import headgate.verifier.check.Case;
import headgate.verifier.geometry.Box;
import headgate.verifier.geometry.Occupied;
import headgate.verifier.setup.Lane;
import headgate.verifier.setup.Setup;
import headgate.verifier.setup.Station;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** Makes the scene of a case. */
public final class SceneMaker {

    /** More parts than this are no help in a picture, and would make its file large. */
    private static final int MOST_PARTS = 1_000;

    /** A head and whether it is turned. */
    private record Fitted(HeadSheet sheet, boolean turned) {}

    private final Map<Fitted, Scene.HeadShape> shapes = new HashMap<>();
    private final UnaryOperator<String> clean;

    private SceneMaker(UnaryOperator<String> clean) {
        this.clean = clean;
    }

    /**
     * Makes the scene.
     *
     * @param subject the case
     * @param setup its set-up
     * @param gap the tightest place, if there is one
     * @param spots other places that findings measured
     * @param clean makes names that others wrote fit to be shown
     * @return the scene
     */
    public static Scene of(
            Case subject, Setup setup, Optional<Scene.GapMark> gap, List<Spot> spots, UnaryOperator<String> clean) {
        return new SceneMaker(clean).make(subject, setup, gap, spots);
    }

    private Scene make(Case subject, Setup setup, Optional<Scene.GapMark> gap, List<Spot> spots) {
        Carriage carriage = subject.carriage().value();
        return new Scene(
                setup.lanes().stream().map(l -> row(l, setup)).toList(),
                crop(subject.plan().value(), setup),
                carriage.beams().stream().map(b -> beam(b, carriage)).toList(),
                carriage.structure().stream()
                        .map(p -> new Scene.Part(clean.apply(p.name()), few(Occupied.of(p.body()))))
                        .toList(),
                setup.stations().stream().map(this::worker).toList(),
                gap,
                spots);
    }

    private Scene.Row row(Lane lane, Setup setup) {
        Optional<String> arm = setup.stations().stream()
                .filter(s -> s.lanes().contains(lane))
                .map(s -> clean.apply(s.arm().id()))
                .findFirst();
        return new Scene.Row(lane.number(), lane.y(), arm);
    }

    private static Scene.Crop crop(CropPlan plan, Setup setup) {
        long motion = setup.stations().stream()
                .mapToLong(s -> s.height().groundMotion())
                .max()
                .orElse(0);
        return new Scene.Crop(
                micrometres(plan.crop().canopyHeight()),
                micrometres(plan.crop().canopyWidth()),
                micrometres(plan.crop().protectedRadius()),
                micrometres(plan.rows().plantSpacing()),
                micrometres(plan.rows().spacing()),
                plan.weeds().map(w -> micrometres(w.bandWidth())).orElse(0L),
                motion);
    }

    private Scene.Beam beam(Carriage.Beam beam, Carriage carriage) {
        Interval y = carriage.arms().stream()
                .filter(a -> a.beam().equals(beam.id()))
                .map(Arm::shift)
                .reduce(Interval::hull)
                .orElse(Interval.at(0));
        return new Scene.Beam(clean.apply(beam.id()), beam.x(), y);
    }

    private Scene.Worker worker(Station station) {
        Interval heights = station.workHeights();
        long drawn = heights.least() + heights.length() / 2;
        Point mount = station.mount();
        return new Scene.Worker(
                clean.apply(station.label() + ", " + station.head().label()),
                new Point3(mount.x(), mount.y(), drawn),
                heights,
                new Point3(mount.x(), mount.y(), station.arm().lift().most()),
                shapes.computeIfAbsent(new Fitted(station.sheet(), station.turned()), SceneMaker::shape),
                few(Occupied.of(station.arm().body())),
                few(Occupied.of(station.arm().column())));
    }

    private static Scene.HeadShape shape(Fitted head) {
        Posture work = head.sheet().posture(PostureName.WORK).orElseThrow();
        Posture stowed = head.sheet().posture(PostureName.STOWED).orElseThrow();
        Occupied fixed = Occupied.of(work.fixed());
        Occupied moving =
                Occupied.of(work.moving()).and(Occupied.of(work.carried())).over(work.region());
        Occupied away = Occupied.of(stowed);
        boolean boxed =
                List.of(fixed, moving, away).stream().anyMatch(o -> o.prisms().size() > MOST_PARTS);
        List<Point> reach = work.region().corners();
        return new Scene.HeadShape(
                few(turned(fixed, head)),
                few(turned(moving, head)),
                few(turned(away, head)),
                head.turned() ? reach.stream().map(Point::turned).toList() : reach,
                work.region().height(),
                boxed);
    }

    private static Occupied turned(Occupied volume, Fitted head) {
        return head.turned() ? volume.turned() : volume;
    }

    /** The prisms of a volume, or the box around them if they are too many to be seen. */
    static List<Prism> few(Occupied volume) {
        List<Prism> prisms = volume.prisms();
        return prisms.size() <= MOST_PARTS
                ? prisms
                : List.of(around(volume.bounds().orElseThrow()));
    }

    private static Prism around(Box box) {
        return Prism.of(Outline.rectangle(box.x(), box.y()), box.z());
    }

    private static long micrometres(double metres) {
        return Math.round(metres * Micrometres.PER_METRE);
    }
}
