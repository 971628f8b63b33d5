package headgate.api.vocabulary;

import headgate.api.annotation.ApiStatus;

/** What a head does by itself when its supply fails. An open vocabulary: see {@link Term}. */
@ApiStatus(value = ApiStatus.Status.EXPERIMENTAL, since = "0.1.0")
public final class PowerLossState extends Term {

    /** Stays as it is, in contact if it was. */
    public static final PowerLossState HOLDS = new PowerLossState("holds");

    /** Leaves soil and canopy by stored energy. */
    public static final PowerLossState WITHDRAWS = new PowerLossState("withdraws");

    /** Goes limp and follows what it touches. */
    public static final PowerLossState RELEASES = new PowerLossState("releases");

    private PowerLossState(String name) {
        super("state on power loss", name);
    }

    /**
     * Names one.
     *
     * @param name lower-case words joined by hyphens, at most 60 characters
     * @return the term
     * @throws headgate.api.problem.InvalidValueException if the name has another form
     */
    public static PowerLossState of(String name) {
        return new PowerLossState(name);
    }
}
