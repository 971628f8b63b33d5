package headgate.verifier.judge;

/** What a check comes to. */
public enum Verdict {
    /** It holds, in the declared model and tolerances. */
    FITS("fits"),
    /** It holds while the stated limits are kept during work. */
    FITS_WITHIN_LIMITS("fits within limits"),
    /** An error-level rule fails. */
    DOES_NOT_FIT("does not fit"),
    /** No error-level rule fails, but one cannot be decided. */
    UNDECIDED("undecided");

    private final String label;

    Verdict(String label) {
        this.label = label;
    }

    /** {@return the words that reports use} */
    public String label() {
        return label;
    }

    /** {@return true if the head may be fitted, limits kept} */
    public boolean isFit() {
        return this == FITS || this == FITS_WITHIN_LIMITS;
    }
}
