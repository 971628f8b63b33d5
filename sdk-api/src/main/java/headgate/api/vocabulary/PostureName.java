package headgate.api.vocabulary;

import headgate.api.annotation.ApiStatus;

/** The name of a shape that a head takes. An open vocabulary: see {@link Term}. */
@ApiStatus(value = ApiStatus.Status.EXPERIMENTAL, since = "0.1.0")
public final class PostureName extends Term {

    /** For waiting and for the road; every head has it. */
    public static final PostureName STOWED = new PostureName("stowed");

    /** Before and after each action, clear of the ground; every head has it. */
    public static final PostureName READY = new PostureName("ready");

    /** At work; its region is the head's reach; every head has it. */
    public static final PostureName WORK = new PostureName("work");

    private PostureName(String name) {
        super("posture", name);
    }

    /**
     * Names one.
     *
     * @param name lower-case words joined by hyphens, at most 60 characters
     * @return the term
     * @throws headgate.api.problem.InvalidValueException if the name has another form
     */
    public static PostureName of(String name) {
        return new PostureName(name);
    }
}
