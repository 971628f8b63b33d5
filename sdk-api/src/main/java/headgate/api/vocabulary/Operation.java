package headgate.api.vocabulary;

import headgate.api.annotation.ApiStatus;

/** What a head does to the field, and what a crop plan wants done. An open vocabulary: see {@link Term}. */
@ApiStatus(value = ApiStatus.Status.EXPERIMENTAL, since = "0.1.0")
public final class Operation extends Term {

    /** Pulls single weeds. */
    public static final Operation PULL_WEEDS = new Operation("pull-weeds");

    /** Sets plug plants. */
    public static final Operation SET_PLUGS = new Operation("set-plugs");

    /** Cuts weeds between or within rows. */
    public static final Operation HOE = new Operation("hoe");

    /** Presses soil or weeds down. */
    public static final Operation PRESS = new Operation("press");

    /** Trims the crop's canopy. */
    public static final Operation TRIM = new Operation("trim");

    private Operation(String name) {
        super("operation", name);
    }

    /**
     * Names one.
     *
     * @param name lower-case words joined by hyphens, at most 60 characters
     * @return the term
     * @throws headgate.api.problem.InvalidValueException if the name has another form
     */
    public static Operation of(String name) {
        return new Operation(name);
    }
}
