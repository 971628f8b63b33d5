package headgate.runtime.pack;

/** How large a head's JAR may be. Common practice, no source: a head is some ten classes, and these leave room. */
final class PackageLimits {

    /** Most bytes of the file. */
    static final int FILE = 16 * 1024 * 1024;

    /** Most entries. */
    static final int ENTRIES = 2_000;

    /** Most bytes of one entry, unpacked. */
    static final int ENTRY = 4 * 1024 * 1024;

    /** Most bytes of all entries, unpacked. */
    static final int TOTAL = 32 * 1024 * 1024;

    /** Most times that an entry may grow when unpacked. */
    static final int RATIO = 200;

    /** Entries up to this size, unpacked, may grow by any factor: a short text of one letter packs very well. */
    static final int RATIO_FREE = 64 * 1024;

    /** Most bytes of the manifest and of the index of extensions, each. */
    static final int TEXT = 64 * 1024;

    /** Most problems that are told of one package; more of them help nobody. */
    static final int PROBLEMS = 200;

    /** Longest name of an entry, bytes. */
    static final int NAME = 240;

    private PackageLimits() {}
}
