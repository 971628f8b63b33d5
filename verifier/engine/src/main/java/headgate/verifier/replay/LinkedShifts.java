package headgate.verifier.replay;

import headgate.api.shape.Interval;
import java.util.List;

/**
 * Arms that shift as one. None of them shifts before all have come to rest; until then the others begin nothing new, so
 * that the one that waits gets its turn.
 */
final class LinkedShifts {

    private LinkedShifts() {}

    /** Ties the arms of each group together and narrows their shift to what all of them allow. */
    static void tie(List<LinkGroup> links, List<ArmState> arms) {
        for (LinkGroup group : links) {
            List<ArmState> members = group.arms().stream().map(arms::get).toList();
            for (ArmState member : members) {
                member.linked = members;
                long least = members.stream()
                        .mapToLong(m -> m.arm.shift().least() - m.mount)
                        .max()
                        .orElseThrow();
                long most = members.stream()
                        .mapToLong(m -> m.arm.shift().most() - m.mount)
                        .min()
                        .orElseThrow();
                member.shift = new Interval(member.mount + least, member.mount + most);
            }
        }
    }

    /** Whether another arm of the group waits for all to come to rest. */
    static boolean holds(ArmState arm, Clock clock) {
        if (arm.linked.size() == 1) {
            return false;
        }
        for (ArmState other : arm.linked) {
            Candidate held = other.waitsToShift;
            if (held == null || other == arm) {
                continue;
            }
            if (held.target.taken || held.closed || held.over() < clock.now) {
                other.waitsToShift = null;
            } else {
                return true;
            }
        }
        if (arm.waitsToShift != null) {
            arm.waitsToShift = null;
            // The others of the group were held back for it, and may begin something if it does not shift after all.
            for (ArmState other : arm.linked) {
                if (other != arm) {
                    clock.again(other);
                }
            }
        }
        return false;
    }

    /** Whether an arm must wait with its shift until another of its group has come to rest; it is woken then. */
    static boolean mustWait(ArmState arm, Candidate candidate, Clock clock) {
        for (ArmState other : arm.linked) {
            if (other != arm && other.freeAt > clock.now) {
                arm.waitsToShift = candidate;
                clock.wake(other.freeAt, arm);
                return true;
            }
        }
        return false;
    }

    /** Shifts an arm, and its group with it, from now until a time. */
    static void shift(ArmState arm, long to, double until, Clock clock) {
        long by = to - arm.mount;
        if (by == 0) {
            return;
        }
        arm.shifting += until - clock.now;
        for (ArmState other : arm.linked) {
            other.mount += by;
            if (other != arm) {
                other.freeAt = until;
                clock.wake(until, other);
            }
        }
    }
}
