package headgate.runtime.pack;

import java.util.Optional;

/** What came of looking at a file that was given as a head's JAR. */
public sealed interface Inspection {

    /**
     * The file is a JAR, with or without problems.
     *
     * @param facts what it says and holds
     * @param clean the copy that may be loaded; empty if a problem of the archive, the manifest, the index or a class
     *     file stands in the way. Forbidden references do not: whoever loads it decides
     */
    record Inspected(PackageFacts facts, Optional<CleanJar> clean) implements Inspection {}

    /**
     * The file is no JAR: an error of the input, not a finding about a head.
     *
     * @param reason what it is instead
     * @param found what it is instead, in words: "a directory"
     * @param advice what to do
     */
    record NotAJar(Reason reason, String found, String advice) implements Inspection {}

    /** What a file is that is no JAR. */
    enum Reason {
        /** There is no such file. */
        MISSING,
        /** It is a directory, or neither file nor directory. */
        NOT_A_FILE,
        /** It has no bytes. */
        EMPTY,
        /** It cannot be read. */
        UNREADABLE,
        /** It is larger than a head's JAR may be. */
        TOO_LARGE,
        /** Its bytes are no ZIP archive. */
        NOT_AN_ARCHIVE
    }
}
