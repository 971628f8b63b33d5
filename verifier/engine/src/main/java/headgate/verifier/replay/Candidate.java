package headgate.verifier.replay;

/**
 * A target that one arm may come to treat, with its start window as far as it is worked out. Times in s.
 *
 * <p>The head is first asked for the plant as it enters the reach; what it answers is what the arm plans with. What it
 * answers for the plant as it is when an action really starts decides.
 */
final class Candidate {

    final Target target;
    final int arm;
    final TaskKind kind;

    /** When the arm knows of it. */
    final double known;

    /** Where the mount would have to be. */
    long mount;

    /** The pieces of the reach there, ahead of the mount: begin and end of each, micrometres. */
    double[] pieces = new double[0];

    /** Which piece is worked on, and how the head was approached: an index into the leads that are tried. */
    int piece;

    int lead;
    boolean placed;

    /** Where the mount was when it was placed. */
    long placedFor;

    boolean planned;

    double enters;
    double leaves;
    double approach;
    double inGround;
    double busy;

    /** Of all answers for this plant: least and most approach, least times in the ground and busy. */
    double leastApproach = Double.POSITIVE_INFINITY;

    double mostApproach;
    double leastInGround = Double.POSITIVE_INFINITY;
    double leastBusy = Double.POSITIVE_INFINITY;

    /** Never start before this: an action that starts earlier would touch the ground before the plant is in reach. */
    double notBefore = Double.NEGATIVE_INFINITY;

    /** The instant up to which a neighbour keeps it from starting. */
    long waitsUntil;

    boolean blocked;
    boolean missedForSupply;
    boolean closed;

    Candidate(Target target, ArmState arm, double known) {
        this.target = target;
        this.arm = arm.index;
        this.kind = arm.kind(target);
        this.known = known;
    }

    /** Begins anew with a piece of the reach. */
    void usePiece(int which) {
        piece = which;
        lead = 0;
        planned = false;
        notBefore = Double.NEGATIVE_INFINITY;
    }

    /** Takes the head's answer for the plant as it enters the reach. */
    void plan(HeadAction action) {
        approach = action.approach();
        inGround = action.inGround();
        busy = action.busy();
        planned = true;
    }

    /** Gives it up for good. */
    void close(Miss why) {
        closed = true;
        target.failed(why);
    }

    /** Remembers an answer of the head for this plant. */
    void answered(HeadAction action) {
        leastApproach = Math.min(leastApproach, action.approach());
        mostApproach = Math.max(mostApproach, action.approach());
        leastInGround = Math.min(leastInGround, action.inGround());
        leastBusy = Math.min(leastBusy, action.busy());
    }

    double earliest() {
        return Math.max(Math.max(known, enters - approach), notBefore);
    }

    double latest() {
        return leaves - approach - inGround;
    }

    /** After this no action can end its contact in reach, however short its approach. */
    double over() {
        return leaves - inGround;
    }
}
