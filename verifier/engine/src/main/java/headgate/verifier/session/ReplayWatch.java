package headgate.verifier.session;

/** Is told how a replay goes on. It changes nothing that comes out. */
public interface ReplayWatch {

    /**
     * A recorded stand is being read, before any is replayed.
     *
     * @param number its number, from 1
     * @param of how many there are
     * @param name its file's name
     */
    void reads(int number, int of, String name);

    /**
     * A round over plots begins.
     *
     * @param what what it is for
     */
    void round(String what);

    /**
     * A plot begins.
     *
     * @param number its number, from 1
     * @param of how many there are
     * @param name what people call it
     */
    void begins(int number, int of, String name);

    /**
     * Plants went by.
     *
     * @param plants how many of this plot so far
     */
    void passed(long plants);

    /**
     * A plot is done.
     *
     * @param kept true if its result was kept from an earlier run
     */
    void done(boolean kept);
}
