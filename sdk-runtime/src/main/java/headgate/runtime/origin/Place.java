package headgate.runtime.origin;

/**
 * A place in a file that somebody wrote. Places of one file are ordered as one reads.
 *
 * @param file the file's name as it was given
 * @param line line, from 1; 0 for the file as a whole
 * @param column column in characters, from 1; 0 for the file as a whole
 */
public record Place(String file, int line, int column) implements Comparable<Place> {

    /**
     * Names a file as a whole, for what is wrong with it before anybody reads a line.
     *
     * @param file the file's name
     * @return the place
     */
    public static Place ofFile(String file) {
        return new Place(file, 0, 0);
    }

    /** Orders by file, then line, then column. */
    @Override
    public int compareTo(Place other) {
        int byFile = file.compareTo(other.file);
        if (byFile != 0) {
            return byFile;
        }
        int byLine = Integer.compare(line, other.line);
        return byLine != 0 ? byLine : Integer.compare(column, other.column);
    }

    /** {@return the place in the form file:line:column, or the file's name alone} */
    @Override
    public String toString() {
        return line == 0 ? file : file + ":" + line + ":" + column;
    }
}
