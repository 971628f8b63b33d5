package headgate.runtime.text;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import headgate.runtime.origin.FileProblem;
import headgate.runtime.origin.InvalidFileException;
import headgate.runtime.origin.Place;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;

/**
 * Reads JSON (RFC 8259) into a tree that knows its places. Stricter than the standard demands: a name may stand only
 * once in an object, and depth, length of texts and of numbers are bounded.
 */
public final class LocatedJson {

    /** Deepest nesting of objects and lists. */
    public static final int MOST_DEPTH = 32;

    /** Longest text, characters. */
    public static final int LONGEST_TEXT = 4096;

    /** Longest field name, characters. */
    public static final int LONGEST_NAME = 200;

    /** Longest number, characters. */
    public static final int LONGEST_NUMBER = 40;

    static final JsonFactory FACTORY = JsonFactory.builder()
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxNestingDepth(MOST_DEPTH)
                    .maxStringLength(LONGEST_TEXT)
                    .maxNameLength(LONGEST_NAME)
                    .maxNumberLength(LONGEST_NUMBER)
                    .build())
            // Names are read once: a table of them that outlives the file would only grow.
            .disable(JsonFactory.Feature.INTERN_FIELD_NAMES)
            .disable(JsonFactory.Feature.CANONICALIZE_FIELD_NAMES)
            .build();

    private LocatedJson() {}

    /**
     * Reads a whole file as one JSON value.
     *
     * @param file the file
     * @param problems where problems go that do not stop the reading: names that stand twice, texts with characters that
     *     cannot be seen
     * @return the value
     * @throws InvalidFileException if the file is not JSON or breaks a bound; it holds the problems collected before, too
     */
    public static Node read(SourceFile file, List<FileProblem> problems) throws InvalidFileException {
        try (JsonParser parser = FACTORY.createParser(file.text())) {
            NodeParser nodes = new NodeParser(file.name(), parser, problems);
            try {
                return root(file, parser, nodes, problems);
            } catch (StreamConstraintsException bound) {
                throw stop(problems, boundProblem(nodes.place(parser.currentTokenLocation()), bound));
            }
        } catch (JsonProcessingException broken) {
            throw stop(problems, SyntaxProblem.of(file, broken));
        } catch (IOException impossible) {
            throw new UncheckedIOException("reading from memory", impossible);
        }
    }

    private static Node root(SourceFile file, JsonParser parser, NodeParser nodes, List<FileProblem> problems)
            throws IOException, InvalidFileException {
        if (parser.nextToken() == null) {
            Place start = new Place(file.name(), 1, 1);
            throw stop(problems, new FileProblem(start, "", "nothing", "a JSON object", ""));
        }
        Node node = nodes.value("");
        if (parser.nextToken() != null) {
            throw stop(problems, nodes.trailing());
        }
        return node;
    }

    static InvalidFileException stop(List<FileProblem> before, FileProblem last) {
        List<FileProblem> all = new ArrayList<>(before);
        all.add(last);
        return new InvalidFileException(all);
    }

    /** The parser itself does not always say where a bound was broken, so the place is that of the token it was at. */
    static FileProblem boundProblem(Place place, StreamConstraintsException bound) {
        String message = String.valueOf(bound.getOriginalMessage());
        String found;
        String expected;
        if (message.contains("nesting depth")) {
            found = "objects and lists nested deeper than " + MOST_DEPTH;
            expected = "at most " + MOST_DEPTH + " levels";
        } else if (message.contains("Number")) {
            found = "a number of more than " + LONGEST_NUMBER + " characters";
            expected = "at most " + LONGEST_NUMBER + " characters";
        } else if (message.contains("Name")) {
            found = "a name of more than " + LONGEST_NAME + " characters";
            expected = "at most " + LONGEST_NAME + " characters";
        } else {
            found = "a text of more than " + LONGEST_TEXT + " characters";
            expected = "at most " + LONGEST_TEXT + " characters";
        }
        return new FileProblem(place, "", found, expected, "");
    }
}
