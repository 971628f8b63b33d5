package headgate.app.console;

/** How a run of the program ended. Scripts rely on the numbers; they never change their meaning. */
public enum ExitCode {
    /** The case fits, or fits within limits; or the command did what it was asked. */
    FITS(0),
    /** The case does not fit, or is undecided. */
    REFUSED(1),
    /** The input or the command line is wrong, or a file cannot be read or written. */
    INPUT(2),
    /** The program itself is at fault. */
    FAULT(3);

    private final int number;

    ExitCode(int number) {
        this.number = number;
    }

    /** {@return the number that the process ends with} */
    public int number() {
        return number;
    }

    /**
     * Picks the graver of two ends: 3 before 2 before 1 before 0.
     *
     * @param other the other end
     * @return the graver one
     */
    public ExitCode and(ExitCode other) {
        return compareTo(other) >= 0 ? this : other;
    }
}
