package headgate.runtime.origin;

/**
 * A place in a file that somebody wrote.
 *
 * @param file the file's name as it was given
 * @param line line, from 1
 * @param column column in characters, from 1
 */
public record Place(String file, int line, int column) {

    /** {@return the place in the form file:line:column} */
    @Override
    public String toString() {
        return file + ":" + line + ":" + column;
    }
}
