package headgate.verifier.check;

/** What a rule's failure means for the verdict. */
public enum Severity {
    /** The head does not fit. */
    ERROR,
    /** Somebody must look at it; the verdict does not depend on it. */
    CAUTION;

    /** {@return the name in lower case} */
    public String label() {
        return this == ERROR ? "error" : "caution";
    }
}
