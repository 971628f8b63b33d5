package headgate.verifier.replay;

import headgate.verifier.interlock.Interlocks;
import headgate.verifier.interlock.ToolWay;
import java.util.List;

/** Keeps arms off one another: an action is begun only if it keeps off every neighbour for as long as both may take. */
final class Neighbours {

    /** How far an arm waits before it tries again where material that never moves is in its way, micrometres. */
    private static final double BLOCKED_STEP = 10_000;

    private final Interlocks interlocks;
    private final List<ArmState> arms;
    private final double perSecond;
    private final boolean some;

    Neighbours(Interlocks interlocks, List<ArmState> arms, double perSecond) {
        this.interlocks = interlocks;
        this.arms = arms;
        this.perSecond = perSecond;
        this.some = !interlocks.all().isEmpty();
    }

    /** Whether an action may begin now; if not, says when to try again. */
    boolean allow(ArmState arm, Candidate candidate, HeadAction action, Clock clock) {
        if (!some) {
            return true;
        }
        List<ToolWay> ways = action.ways(arm.arm.facing());
        if (!interlocks.mayAct(arm.arm.id(), ways)) {
            candidate.blocked = true;
            candidate.notBefore = clock.now + BLOCKED_STEP / perSecond;
            return false;
        }
        for (ArmState other : arms) {
            boolean acts = other != arm && other.heldUntil > clock.now;
            if (acts && !interlocks.mayCoincide(arm.arm.id(), ways, other.arm.id(), other.doing)) {
                candidate.blocked = true;
                candidate.waitsUntil = clock.instant + 1;
                return false;
            }
        }
        return true;
    }

    /** Reserves the ground of an action for as long as it may take. */
    void reserve(ArmState arm, HeadAction action, double start, Clock clock) {
        if (!some) {
            return;
        }
        arm.doing = action.ways(arm.arm.facing());
        arm.heldUntil = start + Math.max(action.busy(), arm.most);
        for (ArmState other : arms) {
            clock.wake(arm.heldUntil, other);
        }
    }
}
