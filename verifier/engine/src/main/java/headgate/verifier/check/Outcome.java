package headgate.verifier.check;

/** What a rule found. */
public enum Outcome {
    /** It holds, in the declared model and tolerances. */
    PASS("pass"),
    /** It holds, or cannot be denied, but somebody must look at it. */
    CAUTION("caution"),
    /** It does not hold. */
    FAIL("fail"),
    /** An input is missing, or the answers asked for ran over the budget: nobody can say. */
    UNDECIDED("undecided"),
    /** There is nothing here for it to look at, or what it needs failed. */
    NOT_APPLICABLE("not applicable");

    private final String label;

    Outcome(String label) {
        this.label = label;
    }

    /** {@return the word that reports use} */
    public String label() {
        return label;
    }
}
