package headgate.verifier.replay;

/**
 * When an arm may start on a candidate: where the mount must be, which piece of the reach is used, what the head says
 * first, and whether what it says for the real start keeps the window. Closes a candidate for good, with the reason, once
 * no piece is left.
 */
final class StartWindows {

    /** Room for rounding of times, s. */
    static final double SLACK = 1e-9;

    private final Course course;
    private final Questions questions;
    private double treatedRadius;

    StartWindows(Course course, Questions questions) {
        this.course = course;
        this.questions = questions;
    }

    /** {@return how far from its tool point any head has treated ground so far, micrometres} */
    double treatedRadius() {
        return treatedRadius;
    }

    /** Places a candidate and asks what the head would do; false if an answer is missing. */
    boolean prepare(ArmState arm, Candidate candidate) {
        if (!candidate.placed || candidate.placedFor != arm.mount) {
            place(arm, candidate);
        }
        while (!candidate.planned && !candidate.closed) {
            double begin = candidate.pieces[2 * candidate.piece];
            double end = candidate.pieces[2 * candidate.piece + 1];
            double lead = arm.leads[candidate.lead];
            HeadAction action = questions.find(arm, candidate, begin + course.perSecond() * lead);
            if (action == null) {
                return false;
            }
            candidate.enters = course.time(candidate.target, arm, begin);
            candidate.leaves = course.time(candidate.target, arm, end);
            if (!action.declined()) {
                answered(candidate, action);
                candidate.plan(action);
            } else if (++candidate.lead == arm.leads.length) {
                nextPiece(candidate, Miss.WINDOW_TOO_SHORT);
            }
        }
        return true;
    }

    private static void place(ArmState arm, Candidate candidate) {
        long offset = candidate.target.y - arm.mount;
        double[] here = arm.reach.pieces(offset);
        long mount = arm.mount;
        if (here.length == 0) {
            long best = arm.reach.bestOffset(
                    offset, candidate.target.y - arm.shift.most(), candidate.target.y - arm.shift.least());
            mount = candidate.target.y - best;
            here = arm.reach.pieces(best);
        }
        boolean moved = candidate.placed && mount != candidate.mount;
        candidate.placed = true;
        candidate.placedFor = arm.mount;
        candidate.mount = mount;
        candidate.pieces = here;
        if (moved) {
            candidate.usePiece(0);
        }
        if (here.length == 0) {
            candidate.close(Miss.NEVER_IN_REACH);
        }
    }

    /** Whether what the head answers now keeps the start window; if not, says when or where to try again. */
    boolean fits(ArmState arm, Candidate candidate, HeadAction action, double start) {
        double entry = candidate.enters - arm.leads[candidate.lead];
        if (action.declined()) {
            if (start < entry - SLACK) {
                candidate.notBefore = entry;
            } else {
                boolean late = start > candidate.earliest() + SLACK;
                nextPiece(candidate, late ? overdue(candidate) : Miss.WINDOW_TOO_SHORT);
            }
            return false;
        }
        answered(candidate, action);
        double contact = start + action.approach();
        if (contact < candidate.enters - SLACK) {
            candidate.notBefore = start + Math.max(candidate.enters - contact, 2 * SLACK);
            return false;
        }
        if (contact + action.inGround() > candidate.leaves + SLACK) {
            nextPiece(candidate, overdue(candidate));
            return false;
        }
        return true;
    }

    private void answered(Candidate candidate, HeadAction action) {
        candidate.answered(action);
        treatedRadius = Math.max(treatedRadius, action.treatedRadius());
    }

    /** Goes on to the next piece of the reach; without one the candidate is closed. */
    static void nextPiece(Candidate candidate, Miss why) {
        candidate.usePiece(candidate.piece + 1);
        if (2 * candidate.piece >= candidate.pieces.length) {
            candidate.close(why);
        }
    }

    /** Whether the plant leaves the piece before any action can be done there. */
    static boolean isTooShort(Candidate candidate) {
        return candidate.leaves - candidate.enters < candidate.inGround - SLACK;
    }

    /** Why a candidate's time went by. */
    static Miss overdue(Candidate candidate) {
        if (candidate.known > candidate.latest() + SLACK) {
            return Miss.SEEN_TOO_LATE;
        }
        if (isTooShort(candidate)) {
            return Miss.WINDOW_TOO_SHORT;
        }
        if (candidate.missedForSupply) {
            return Miss.MAGAZINE_EMPTY;
        }
        return candidate.blocked ? Miss.BLOCKED : Miss.ARM_BUSY;
    }
}
