package headgate.verifier.remedy;

import headgate.runtime.carriage.Stance;
import headgate.verifier.check.Case;
import java.util.List;
import java.util.function.UnaryOperator;

/** Changes where arms are in a stance and in the steps to it. */
final class StancePoses {

    private StancePoses() {}

    static Case changed(Case before, String stance, UnaryOperator<Stance.Pose> change) {
        return before.withCarriage(c -> c.withStances(c.stances().stream()
                .map(s -> s.name().equals(stance) ? changed(s, change) : s)
                .toList()));
    }

    private static Stance changed(Stance stance, UnaryOperator<Stance.Pose> change) {
        return stance.withPoses(
                changed(stance.poses(), change),
                stance.steps().stream()
                        .map(s -> new Stance.Step(s.name(), changed(s.poses(), change), s.structure()))
                        .toList());
    }

    private static List<Stance.Pose> changed(List<Stance.Pose> poses, UnaryOperator<Stance.Pose> change) {
        return poses.stream().map(change).toList();
    }
}
