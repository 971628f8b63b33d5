package headgate.runtime.pack;

/**
 * One way in which a package is not what a head's package must be.
 *
 * @param kind what sort of problem; rules choose by it
 * @param where manifest attribute, entry name, or class and member
 * @param found what stands there
 * @param expected what must stand there, beginning with "must"
 */
public record PackageProblem(Kind kind, String where, String found, String expected)
        implements Comparable<PackageProblem> {

    /** Sorts of problem. */
    public enum Kind {
        /** The archive itself: sizes, names, entries that a head's JAR must not have. */
        ARCHIVE,
        /** A manifest attribute that is missing, malformed or forbidden. */
        MANIFEST,
        /** The API range does not hold the API's version. */
        API_RANGE,
        /** The index of extensions: not exactly one class, or not what the classes say. */
        EXTENSION,
        /** A class file that cannot be read, or is too new. */
        CLASS_FILE,
        /** The package holds a class of ours or of the plugin host. */
        BUNDLED,
        /** A reference to a class or member that a head must not use. */
        REFERENCE
    }

    /** {@return one sentence: where, what was expected, what was found} */
    public String sentence() {
        return where + " " + expected + "; found: " + found;
    }

    /** Orders by kind, then by place and text, so that a list of problems is the same at every run. */
    @Override
    public int compareTo(PackageProblem other) {
        int byKind = kind.compareTo(other.kind);
        int byWhere = where.compareTo(other.where);
        int byFound = found.compareTo(other.found);
        return byKind != 0
                ? byKind
                : byWhere != 0 ? byWhere : byFound != 0 ? byFound : expected.compareTo(other.expected);
    }
}
