package headgate.runtime.text;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import headgate.runtime.origin.FileProblem;
import headgate.runtime.origin.InvalidFileException;
import headgate.runtime.origin.Place;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Reads a JSON object with one long list as a stream: an element of the list is handed over and forgotten, however many
 * there are. The bounds are those of {@link LocatedJson}, for each element.
 */
public final class JsonStream {

    /** Most fields beside the list. */
    private static final int MOST_FIELDS = 100;

    /** Takes a node. */
    @FunctionalInterface
    public interface Taker {
        /**
         * Takes a node.
         *
         * @param node the node
         * @throws InvalidFileException if there is no sense in reading on
         */
        void take(Node node) throws InvalidFileException;
    }

    private JsonStream() {}

    /**
     * Reads a file.
     *
     * @param file the file's name, for messages
     * @param text its text; read to the end, not closed
     * @param list the name of the field that has the long list
     * @param problems where problems go that do not stop the reading
     * @param elements takes each element of the list
     * @param rest takes the object at the end, with an empty list in the place of the long one
     * @throws InvalidFileException if the text is not JSON or breaks a bound, or a taker says so; it holds the problems
     *     collected before, too
     */
    public static void read(
            String file, Reader text, String list, List<FileProblem> problems, Taker elements, Taker rest)
            throws InvalidFileException {
        try (JsonParser parser = LocatedJson.FACTORY.createParser(text)) {
            NodeParser nodes = new NodeParser(file, parser, problems);
            try {
                if (parser.nextToken() != JsonToken.START_OBJECT) {
                    throw LocatedJson.stop(
                            problems, new FileProblem(new Place(file, 1, 1), "", "no object", "a JSON object", ""));
                }
                rest.take(object(nodes, parser, list, problems, elements));
                if (parser.nextToken() != null) {
                    throw LocatedJson.stop(problems, nodes.trailing());
                }
            } catch (StreamConstraintsException bound) {
                Place at = nodes.place(parser.currentTokenLocation());
                throw LocatedJson.stop(problems, LocatedJson.boundProblem(at, bound));
            }
        } catch (JsonProcessingException broken) {
            JsonLocation at = broken.getLocation();
            Place place = at == null
                    ? new Place(file, 1, 1)
                    : new Place(file, Math.max(1, at.getLineNr()), Math.max(1, at.getColumnNr()));
            throw LocatedJson.stop(
                    problems,
                    new FileProblem(
                            place, "", "text that is not JSON", "JSON", "look at this place and just before it"));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static Node.Table object(
            NodeParser nodes, JsonParser parser, String list, List<FileProblem> problems, Taker elements)
            throws IOException, InvalidFileException {
        Place start = nodes.place(parser.currentTokenLocation());
        Map<String, Node.Field> fields = new LinkedHashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String name = parser.currentName();
            Place at = nodes.place(parser.currentTokenLocation());
            JsonToken token = parser.nextToken();
            Node value;
            if (name.equals(list) && token == JsonToken.START_ARRAY) {
                value = new Node.Sequence(nodes.place(parser.currentTokenLocation()), name, List.of());
                for (long i = 0; parser.nextToken() != JsonToken.END_ARRAY; i++) {
                    elements.take(nodes.value(name + "[" + i + "]"));
                }
            } else {
                value = nodes.value(name);
            }
            if (fields.putIfAbsent(name, new Node.Field(at, value)) != null) {
                problems.add(new FileProblem(
                        at,
                        name,
                        "the name " + Quote.of(name) + " a second time",
                        "each name once",
                        "remove one of the two",
                        FileProblem.Sort.TWICE));
            }
            if (fields.size() > MOST_FIELDS) {
                throw LocatedJson.stop(
                        problems,
                        new FileProblem(
                                at, "", "more than " + MOST_FIELDS + " fields", "a few fields and one list", ""));
            }
        }
        return new Node.Table(start, "", fields);
    }
}
