package headgate.runtime.process;

import java.util.List;

/**
 * What a head must not depend on, in two kinds that differ in everything that Java lets us choose. A head that answers the
 * same in both is not moved by the order of an unordered set, by how numbers are written, by the time zone, by memory.
 */
public enum Surroundings {
    /** What every check and the carriage use. */
    USUAL(11, 0, "-Xms8m -XX:ActiveProcessorCount=1 -Duser.language=en -Duser.country= -Duser.timezone=UTC"),
    /**
     * Everything else: sets run the other way, identity hashes are others, letters change case as in Turkish and numbers
     * have a comma, the zone is 12:45 h ahead, assertions are on, the heap is larger and there are two processors.
     */
    OTHER(
            0x5bd1_e996L,
            64,
            "-Xms24m -XX:ActiveProcessorCount=2 -XX:+IgnoreUnrecognizedVMOptions -XX:+UnlockExperimentalVMOptions"
                    + " -XX:hashCode=3 -ea -Duser.language=tr -Duser.country=TR -Duser.timezone=Pacific/Chatham");

    private final long salt;
    private final int moreHeapMegabytes;
    private final String flags;

    Surroundings(long salt, int moreHeapMegabytes, String flags) {
        this.salt = salt;
        this.moreHeapMegabytes = moreHeapMegabytes;
        this.flags = flags;
    }

    /** {@return where unordered sets and maps begin, and whether they run backwards: even ones do} */
    long salt() {
        return salt;
    }

    /** {@return what the heap may be larger by, MiB} */
    int moreHeapMegabytes() {
        return moreHeapMegabytes;
    }

    /** {@return options of the virtual machine} */
    List<String> flags() {
        return List.of(flags.split(" ", -1));
    }
}
