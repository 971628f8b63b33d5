package headgate.verifier.behaviour;

import headgate.api.answer.Action;
import headgate.api.answer.Engagement;
import headgate.api.answer.Phase;
import headgate.api.shape.Point3;
import headgate.runtime.answers.RowAnswer;
import headgate.runtime.answers.SpotAnswer;
import java.util.List;

/** Whether two answers are the same as far as the contract goes. */
final class Alike {

    /** The contract: the same answer to a relative 1e-9. */
    private static final double RELATIVE = 1e-9;

    /** A coordinate that differs by 1e-9 before it is rounded may end on the next micrometre. */
    private static final long GRID = 1;

    private Alike() {}

    static boolean test(SpotAnswer a, SpotAnswer b) {
        if (a instanceof SpotAnswer.Answered first && b instanceof SpotAnswer.Answered second) {
            return test(first.action(), second.action());
        }
        return a.equals(b);
    }

    static boolean test(RowAnswer a, RowAnswer b) {
        if (a instanceof RowAnswer.Answered first && b instanceof RowAnswer.Answered second) {
            Engagement one = first.engagement();
            Engagement two = second.engagement();
            return one.declined().equals(two.declined())
                    && one.engaged().equals(two.engaged())
                    && near(one.depth(), two.depth())
                    && near(one.draft(), two.draft())
                    && near(one.insertTime(), two.insertTime())
                    && near(one.withdrawTime(), two.withdrawTime())
                    && near(one.followingSpeed(), two.followingSpeed())
                    && near(one.followingAcceleration(), two.followingAcceleration());
        }
        return a.equals(b);
    }

    private static boolean test(Action a, Action b) {
        List<Phase> first = a.phases();
        List<Phase> second = b.phases();
        if (!a.declined().equals(b.declined()) || first.size() != second.size()) {
            return false;
        }
        for (int i = 0; i < first.size(); i++) {
            if (!test(first.get(i), second.get(i))) {
                return false;
            }
        }
        return true;
    }

    private static boolean test(Phase a, Phase b) {
        return a.name().equals(b.name())
                && a.posture().equals(b.posture())
                && a.contact().equals(b.contact())
                && a.treated().equals(b.treated())
                && near(a.duration(), b.duration())
                && test(a.toolPoint(), b.toolPoint());
    }

    private static boolean near(double a, double b) {
        return Math.abs(a - b) <= RELATIVE * Math.max(Math.abs(a), Math.abs(b));
    }

    private static boolean test(Point3 a, Point3 b) {
        return Math.abs(a.x() - b.x()) <= GRID && Math.abs(a.y() - b.y()) <= GRID && Math.abs(a.z() - b.z()) <= GRID;
    }
}
