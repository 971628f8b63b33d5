package headgate.runtime.origin;

/**
 * One thing that is wrong with a file, or worth a second look.
 *
 * @param place the line and column where it stands
 * @param path the field's path, such as {@code arms[2].lift.speed}; empty for the file as a whole
 * @param found what stands there
 * @param expected what belongs there, with an example of a right value where there is one
 * @param advice what to do; empty if that is plain from the rest
 * @param sort what sort of problem it is
 */
public record FileProblem(Place place, String path, String found, String expected, String advice, Sort sort)
        implements Comparable<FileProblem> {

    /** What sort of problem it is; tells also whether a JSON Schema of the file can know of it. */
    public enum Sort {
        /** The file cannot be read, or is not JSON. */
        FILE,
        /** A value is of the wrong type or form: what a schema can say. */
        FORM,
        /** A field that must be given is missing: what a schema can say. */
        MISSING,
        /** A field does not belong here: what a schema can say. */
        UNKNOWN,
        /** A quantity is in order but out of bounds; a schema sees only its text. */
        RANGE,
        /** A name stands twice in one object; a schema sees only one of them. */
        TWICE,
        /** A text has characters that cannot be seen. */
        UNSEEN,
        /** Several values do not go together. */
        RULE,
        /** Nothing is wrong, but it is worth a second look. */
        NOTE
    }

    /**
     * A problem of the file as a whole, or of its being JSON.
     *
     * @param place where it stands
     * @param path the field's path; empty for the file as a whole
     * @param found what stands there
     * @param expected what belongs there
     * @param advice what to do; empty if that is plain from the rest
     */
    public FileProblem(Place place, String path, String found, String expected, String advice) {
        this(place, path, found, expected, advice, Sort.FILE);
    }

    /** Orders by place, then by path. */
    @Override
    public int compareTo(FileProblem other) {
        int byPlace = place.compareTo(other.place);
        return byPlace != 0 ? byPlace : path.compareTo(other.path);
    }

    /** {@return one line: place, field, what was found, what was expected, what to do} */
    @Override
    public String toString() {
        StringBuilder line = new StringBuilder(place.toString()).append(": ");
        if (!path.isEmpty()) {
            line.append(path).append(": ");
        }
        line.append("found ").append(found).append(", expected ").append(expected);
        if (!advice.isEmpty()) {
            line.append("; ").append(advice);
        }
        return line.toString();
    }
}
