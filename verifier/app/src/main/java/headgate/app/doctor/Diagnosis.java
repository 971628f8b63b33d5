package headgate.app.doctor;

/**
 * What a probe saw.
 *
 * @param subject what was looked at
 * @param state good or not
 * @param seen what was found
 * @param advice what to do; empty if there is nothing to do
 */
public record Diagnosis(String subject, State state, String seen, String advice) {

    /** How good the thing is. */
    public enum State {
        /** As it should be. */
        GOOD,
        /** The program works, but slower or with less protection. */
        NOTE,
        /** The program does not work. */
        BAD
    }

    static Diagnosis good(String subject, String seen) {
        return new Diagnosis(subject, State.GOOD, seen, "");
    }

    static Diagnosis note(String subject, String seen, String advice) {
        return new Diagnosis(subject, State.NOTE, seen, advice);
    }

    static Diagnosis bad(String subject, String seen, String advice) {
        return new Diagnosis(subject, State.BAD, seen, advice);
    }
}
