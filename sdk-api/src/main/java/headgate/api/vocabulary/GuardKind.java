package headgate.api.vocabulary;

import headgate.api.annotation.ApiStatus;

/** What keeps people from a hazard. An open vocabulary: see {@link Term}. */
@ApiStatus(value = ApiStatus.Status.EXPERIMENTAL, since = "0.1.0")
public final class GuardKind extends Term {

    /** A guard that needs a tool to remove. */
    public static final GuardKind FIXED = new GuardKind("fixed-guard");

    /** A guard whose opening stops the motion. */
    public static final GuardKind INTERLOCKED = new GuardKind("interlocked-guard");

    /** Force and energy limited at the source. */
    public static final GuardKind LIMITED_FORCE = new GuardKind("limited-force");

    /** Nothing. */
    public static final GuardKind NONE = new GuardKind("none");

    private GuardKind(String name) {
        super("guard", name);
    }

    /**
     * Names one.
     *
     * @param name lower-case words joined by hyphens, at most 60 characters
     * @return the term
     * @throws headgate.api.problem.InvalidValueException if the name has another form
     */
    public static GuardKind of(String name) {
        return new GuardKind(name);
    }
}
