package headgate.verifier.replay;

import headgate.verifier.dispatch.MostTreatable;
import java.util.ArrayList;
import java.util.List;

/**
 * Tells the upper bound of each target that goes: the widest window that any arm can have had for it, and the least time that
 * the arm would have been busy with it.
 */
final class WidestWindows {

    private static final double SLACK = StartWindows.SLACK;

    /** More than what rounding may do to places, micrometres. */
    private static final double ROUNDING = 1000;

    private final List<ArmState> arms;
    private final Course course;
    private final StartWindows windows;
    private final double aim;
    private final BoundTally sum = new BoundTally();

    WidestWindows(ReplaySetting setting, List<ArmState> arms, Course course, StartWindows windows) {
        this.arms = arms;
        this.course = course;
        this.windows = windows;
        this.aim = setting.tools().stream()
                .mapToDouble(t -> t.sheet().accuracy().aimTolerance().value() * 1e6)
                .max()
                .orElse(0);
    }

    /** {@return how many plants any dispatch could have reached, at most} */
    long total() {
        return sum.total();
    }

    /** Adds the first of the targets that pass. */
    void add(Target target) {
        if (target.nature != Target.Nature.WANTED) {
            return;
        }
        double near = windows.treatedRadius() + aim + ROUNDING;
        course.readTo(target.x + near);
        Passing passing = course.passing();
        for (int i = 1; i < passing.size() && passing.get(i).x <= target.x + near; i++) {
            Target other = passing.get(i);
            if (other.nature == Target.Nature.WANTED && other.squaredDistance(target) <= near * near) {
                target.crowded = true;
                other.crowded = true;
            }
        }
        if (target.crowded) {
            sum.addFree();
            return;
        }
        List<MostTreatable.Chance> chances = new ArrayList<>();
        for (Candidate candidate : target.candidates) {
            if (candidate.leastBusy < Double.POSITIVE_INFINITY) {
                chances.add(chance(arms.get(candidate.arm), candidate));
            }
        }
        sum.add(chances);
    }

    private MostTreatable.Chance chance(ArmState arm, Candidate candidate) {
        boolean shifts = arm.shift.length() > 0;
        double[] pieces = candidate.pieces;
        double front = shifts || pieces.length == 0 ? arm.reach.front() : pieces[0];
        double end = shifts || pieces.length == 0 ? arm.reach.rear() : pieces[pieces.length - 1];
        double release = Math.max(candidate.known, course.time(candidate.target, arm, front) - candidate.mostApproach);
        double lastStart = course.time(candidate.target, arm, end) - candidate.leastApproach - candidate.leastInGround;
        return new MostTreatable.Chance(
                arm.index, release - SLACK, lastStart + candidate.leastBusy + SLACK, candidate.leastBusy);
    }
}
