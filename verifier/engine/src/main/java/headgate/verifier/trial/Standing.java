package headgate.verifier.trial;

/** How a coverage stands to what is wanted. */
public enum Standing {
    /** Its lower bound reaches what is wanted. */
    PASSES,
    /** Its upper bound does not. */
    FAILS,
    /** Neither. */
    UNDECIDED
}
