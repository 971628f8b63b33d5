package headgate.verifier.setup;

import headgate.api.shape.Body;
import headgate.api.shape.Interval;
import headgate.runtime.carriage.Carriage;
import headgate.runtime.carriage.Stance;
import headgate.verifier.check.Case;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One shape of the carriage between work and the road.
 *
 * @param name what it is called
 * @param onTheRoad true for the shape that travels, false for one on the way to it, taken while the carriage stands
 * @param arms every arm, stations first
 * @param structure the parts of the frame, where they are in this shape, and after them the wheels whose diameter is known: set as
 *     for the plan, unless the stance that is reached says otherwise
 */
public record FoldStep(String name, boolean onTheRoad, List<FoldedArm> arms, List<Carriage.Part> structure) {

    /** Copies the lists. */
    public FoldStep {
        arms = List.copyOf(arms);
        structure = List.copyOf(structure);
    }

    /**
     * The shapes of a stance in the order in which they are taken.
     *
     * @param subject the case
     * @param stance the stance
     * @return its steps, and last the stance itself
     */
    public static List<FoldStep> of(Case subject, Stance stance) {
        List<FoldStep> shapes = new ArrayList<>();
        for (Stance.Step step : stance.steps()) {
            shapes.add(of(subject, step, false, Map.of()));
        }
        shapes.add(of(subject, stance.reached(), true, stance.wheels()));
        return shapes;
    }

    /**
     * The shape from which the first step is taken: every arm lifted at its work place.
     *
     * @param subject the case
     * @return the shape
     */
    static FoldStep atWork(Case subject) {
        return of(subject, new Stance.Step("work", List.of(), List.of()), false, Map.of());
    }

    private static FoldStep of(Case subject, Stance.Step step, boolean onTheRoad, Map<String, Long> wheels) {
        Setup setup = Setup.of(subject);
        List<FoldedArm> arms = new ArrayList<>();
        for (List<Station> stations : List.of(setup.stations(), setup.waiting())) {
            for (Station s : stations) {
                arms.add(FoldedArm.of(subject, s.arm(), Optional.of(s), s.mount(), step, onTheRoad));
            }
        }
        for (EmptyArm e : setup.empty()) {
            arms.add(FoldedArm.of(subject, e.arm(), Optional.empty(), e.mount(), step, onTheRoad));
        }
        Map<String, Carriage.Part> parts = new LinkedHashMap<>();
        subject.carriage().value().structure().forEach(p -> parts.put(p.name(), p));
        step.structure().forEach(p -> parts.put(p.name(), p));
        List<Carriage.Part> frame = new ArrayList<>(parts.values());
        for (WheelRun run : WheelRun.of(subject)) {
            Carriage.Wheel wheel = run.wheel();
            long y = wheels.getOrDefault(wheel.name(), run.y());
            WheelSpace.of(wheel, Interval.at(y))
                    .ifPresent(s -> frame.add(new Carriage.Part("wheel " + wheel.name(), Body.of(s.prisms()))));
        }
        return new FoldStep(step.name(), onTheRoad, arms, frame);
    }
}
