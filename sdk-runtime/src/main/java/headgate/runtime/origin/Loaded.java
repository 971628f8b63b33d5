package headgate.runtime.origin;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.UnaryOperator;

/**
 * A value read from a file, with the file's digest and where each field stood.
 *
 * @param <T> the value's type
 * @param value the value
 * @param file the file's name as it was given
 * @param sha256 digest of the file's bytes, lower-case hexadecimal
 * @param places where each field stood, by field path such as {@code arms[2].lift.speed}
 * @param notes what is not wrong but worth a second look, such as a figure far from what is usual; in order of place
 */
public record Loaded<T>(T value, String file, String sha256, Map<String, Place> places, List<FileProblem> notes) {

    /** Copies the map and the list. */
    public Loaded {
        places = Collections.unmodifiableMap(new TreeMap<>(places));
        notes = notes.stream().sorted().toList();
    }

    /**
     * A value without notes.
     *
     * @param value the value
     * @param file the file's name as it was given
     * @param sha256 digest of the file's bytes, lower-case hexadecimal
     * @param places where each field stood, by field path
     */
    public Loaded(T value, String file, String sha256, Map<String, Place> places) {
        this(value, file, sha256, places, List.of());
    }

    /**
     * Finds where a field stood.
     *
     * @param path the field's path
     * @return its place, or that of the nearest field that holds it; empty if neither is known
     */
    public Optional<Place> place(String path) {
        String at = path;
        while (true) {
            Place place = places.get(at);
            if (place != null || at.isEmpty()) {
                return Optional.ofNullable(place);
            }
            int cut = Math.max(at.lastIndexOf('.'), at.lastIndexOf('['));
            at = cut < 0 ? "" : at.substring(0, cut);
        }
    }

    /**
     * Changes the value and keeps its origin: used for remedies, which say what in the file they would change.
     *
     * @param change the change
     * @return the changed value with the same origin
     */
    public Loaded<T> with(UnaryOperator<T> change) {
        return new Loaded<>(change.apply(value), file, sha256, places, notes);
    }
}
