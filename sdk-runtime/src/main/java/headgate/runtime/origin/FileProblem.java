package headgate.runtime.origin;

/**
 * One thing that is wrong with a file, or worth a second look.
 *
 * @param place the line and column where it stands
 * @param path the field's path, such as {@code arms[2].lift.speed}; empty for the file as a whole
 * @param found what stands there
 * @param expected what belongs there, with an example of a right value where there is one
 * @param advice what to do; empty if that is plain from the rest
 */
public record FileProblem(Place place, String path, String found, String expected, String advice)
        implements Comparable<FileProblem> {

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
