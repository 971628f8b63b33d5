package headgate.verifier.dispatch;

/** Chooses what an arm does next. A pure function of the jobs and the time. */
public interface Dispatch {

    /** The answer of a dispatch that takes none of the jobs. */
    int NONE = -1;

    /**
     * Chooses the next job of an arm that is free.
     *
     * @param jobs the jobs that are known, each of which can still be started in time; at least one
     * @param now the time, s
     * @return the job to do next, which may be one that cannot be started yet; or {@link #NONE}
     */
    int next(Jobs jobs, double now);
}
