package headgate.runtime.answers;

/** Which of the two interfaces a head implements. */
public enum HeadKind {
    /** One plant or position at a time. */
    SPOT,
    /** Without pause as the carriage travels. */
    CONTINUOUS,
    /** Both, which the contract forbids. */
    BOTH,
    /** Neither, which the contract forbids. */
    NEITHER
}
