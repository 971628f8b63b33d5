package headgate.runtime.text;

import headgate.runtime.origin.Place;
import java.math.BigDecimal;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** One JSON value with its place in the file. Immutable. */
public sealed interface Node {

    /** {@return where the value begins} */
    Place place();

    /** {@return its field path, such as {@code arms[2].lift}; empty for the whole file} */
    String path();

    /** {@return what the value is, in words for a message, cut to a readable length} */
    String found();

    /**
     * Joins a field name to a path.
     *
     * @param path the path of the object
     * @param field the field's name
     * @return the field's path
     */
    static String join(String path, String field) {
        return path.isEmpty() ? field : path + "." + field;
    }

    /**
     * A JSON object.
     *
     * @param place where it begins
     * @param path its field path
     * @param fields its fields, in the order of the file
     */
    record Table(Place place, String path, Map<String, Field> fields) implements Node {

        /** Copies the map and keeps its order. */
        public Table {
            fields = Collections.unmodifiableMap(new LinkedHashMap<>(fields));
        }

        @Override
        public String found() {
            return fields.isEmpty() ? "an empty object" : "an object";
        }
    }

    /**
     * One field of an object.
     *
     * @param namePlace where its name stands
     * @param value its value
     */
    record Field(Place namePlace, Node value) {}

    /**
     * A JSON array.
     *
     * @param place where it begins
     * @param path its field path
     * @param items its elements
     */
    record Sequence(Place place, String path, List<Node> items) implements Node {

        /** Copies the list. */
        public Sequence {
            items = List.copyOf(items);
        }

        @Override
        public String found() {
            return items.isEmpty() ? "an empty list" : "a list of " + items.size();
        }
    }

    /**
     * A JSON string.
     *
     * @param place where it begins
     * @param path its field path
     * @param text the text, escapes resolved
     */
    record Text(Place place, String path, String text) implements Node {
        @Override
        public String found() {
            return Quote.of(text);
        }
    }

    /**
     * A JSON number, as it is written.
     *
     * @param place where it begins
     * @param path its field path
     * @param literal its digits in the file
     * @param value its value, exact
     */
    record Numeral(Place place, String path, String literal, BigDecimal value) implements Node {
        @Override
        public String found() {
            return "the number " + literal;
        }
    }

    /**
     * A JSON true or false.
     *
     * @param place where it begins
     * @param path its field path
     * @param value its value
     */
    record Flag(Place place, String path, boolean value) implements Node {
        @Override
        public String found() {
            return Boolean.toString(value);
        }
    }

    /**
     * A JSON null.
     *
     * @param place where it begins
     * @param path its field path
     */
    record Nothing(Place place, String path) implements Node {
        @Override
        public String found() {
            return "null";
        }
    }
}
