package headgate.verifier.setup;

import headgate.api.shape.Body;
import headgate.api.shape.Prism;
import headgate.runtime.carriage.Carriage;
import headgate.runtime.carriage.Stance;
import headgate.verifier.check.Case;
import headgate.verifier.geometry.Occupied;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * What is filled on the way from one shape of the carriage to the next, both included. Arms and parts of the frame may move at the
 * same time or one after the other, so each is taken at every place of its way.
 *
 * @param from the shape from which the way leads
 * @param to the shape to which the way leads
 * @param arms every arm, with all that it fills on its way, its head alone as in the shape to which it leads; its mount is as far out
 *     along and across travel as it gets
 * @param structure the parts of the frame. One that moves fills the boxes about where each of its prisms was and comes to be,
 *     which holds any straight way: an outer bound
 */
public record FoldWay(FoldStep from, FoldStep to, List<FoldedArm> arms, List<FrameSpace> structure) {

    /** Copies the lists. */
    public FoldWay {
        arms = List.copyOf(arms);
        structure = List.copyOf(structure);
    }

    /**
     * A part of the frame.
     *
     * @param name what it is
     * @param space what it fills on the way, carriage frame
     */
    public record FrameSpace(String name, Occupied space) {}

    /**
     * The ways to a stance: from work to the first step, from step to step, and to the stance itself.
     *
     * @param subject the case
     * @param stance the stance
     * @return the ways, one to each shape of {@link FoldStep#of}
     */
    public static List<FoldWay> of(Case subject, Stance stance) {
        List<FoldWay> ways = new ArrayList<>();
        FoldStep from = FoldStep.atWork(subject);
        for (FoldStep to : FoldStep.of(subject, stance)) {
            ways.add(between(subject, from, to));
            from = to;
        }
        return ways;
    }

    private static FoldWay between(Case subject, FoldStep from, FoldStep to) {
        List<FoldedArm> arms = new ArrayList<>();
        for (int i = 0; i < to.arms().size(); i++) {
            FoldedArm before = from.arms().get(i);
            FoldedArm after = to.arms().get(i);
            long beam = subject.carriage()
                    .value()
                    .beam(after.arm().beam())
                    .orElseThrow()
                    .x();
            arms.add(new ArmWay(before, from.onTheRoad(), after, to.onTheRoad(), beam).arm());
        }
        Map<String, Body> now = from.structure().stream()
                .collect(Collectors.toMap(Carriage.Part::name, Carriage.Part::body, (a, b) -> b));
        Function<Carriage.Part, Body> before = part -> now.getOrDefault(part.name(), part.body());
        return new FoldWay(
                from,
                to,
                arms,
                to.structure().stream()
                        .map(p -> new FrameSpace(p.name(), moved(before.apply(p), p.body())))
                        .toList());
    }

    private static Occupied moved(Body from, Body to) {
        Occupied ends = Occupied.of(from).and(Occupied.of(to));
        if (from.equals(to)) {
            return ends;
        }
        List<Prism> before = from.prisms();
        List<Prism> after = to.prisms();
        if (before.size() != after.size()) {
            return ends.boxed();
        }
        Occupied all = Occupied.NOTHING;
        for (int i = 0; i < after.size(); i++) {
            all = all.and(Occupied.of(List.of(before.get(i), after.get(i))).boxed());
        }
        return all;
    }
}
