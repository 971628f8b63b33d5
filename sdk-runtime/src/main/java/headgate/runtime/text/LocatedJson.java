package headgate.runtime.text;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import headgate.runtime.origin.FileProblem;
import headgate.runtime.origin.InvalidFileException;
import headgate.runtime.origin.Place;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

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

    private static final JsonFactory FACTORY = JsonFactory.builder()
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

    private final SourceFile file;
    private final JsonParser parser;
    private final List<FileProblem> problems;

    private LocatedJson(SourceFile file, JsonParser parser, List<FileProblem> problems) {
        this.file = file;
        this.parser = parser;
        this.problems = problems;
    }

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
            LocatedJson reading = new LocatedJson(file, parser, problems);
            if (parser.nextToken() == null) {
                throw reading.stop(new Place(file.name(), 1, 1), "nothing", "a JSON object", "");
            }
            Node node = reading.value("");
            if (parser.nextToken() != null) {
                Place at = reading.place(parser.currentTokenLocation());
                throw reading.stop(at, "more text", "the end of the file", "a file holds one JSON object");
            }
            return node;
        } catch (StreamConstraintsException bound) {
            throw stop(problems, boundProblem(file, bound));
        } catch (JsonProcessingException broken) {
            throw stop(problems, SyntaxProblem.of(file, broken));
        } catch (IOException impossible) {
            throw new UncheckedIOException("reading from memory", impossible);
        }
    }

    private Node value(String path) throws IOException {
        Place place = place(parser.currentTokenLocation());
        JsonToken token = parser.currentToken();
        return switch (token) {
            case START_OBJECT -> table(place, path);
            case START_ARRAY -> sequence(place, path);
            case VALUE_STRING -> new Node.Text(place, path, seen(place, path, parser.getText()));
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT ->
                new Node.Numeral(place, path, parser.getText(), new BigDecimal(parser.getText()));
            case VALUE_TRUE -> new Node.Flag(place, path, true);
            case VALUE_FALSE -> new Node.Flag(place, path, false);
            case VALUE_NULL -> new Node.Nothing(place, path);
            default -> throw new IllegalStateException("the parser gave " + token);
        };
    }

    private Node table(Place place, String path) throws IOException {
        Map<String, Node.Field> fields = new LinkedHashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String name = parser.currentName();
            Place at = place(parser.currentTokenLocation());
            String fieldPath = Node.join(path, seen(at, path, name));
            parser.nextToken();
            Node value = value(fieldPath);
            Node.Field first = fields.putIfAbsent(name, new Node.Field(at, value));
            if (first != null) {
                problems.add(new FileProblem(
                        at,
                        fieldPath,
                        "the name " + Quote.of(name) + " a second time",
                        "each name once",
                        "it stands first in line " + first.namePlace().line() + "; remove one of the two",
                        FileProblem.Sort.TWICE));
            }
        }
        return new Node.Table(place, path, fields);
    }

    private Node sequence(Place place, String path) throws IOException {
        List<Node> items = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            items.add(value(path + "[" + items.size() + "]"));
        }
        return new Node.Sequence(place, path, items);
    }

    /** A text with characters that cannot be seen reads as another than it is: refused, but the reading goes on. */
    private String seen(Place place, String path, String text) {
        String shown = text.codePoints()
                .filter(c -> c != '\n' && c != '\t' && Quote.shown(c).length() > 2)
                .mapToObj(Quote::shown)
                .findFirst()
                .orElse("");
        if (!shown.isEmpty()) {
            problems.add(new FileProblem(
                    place,
                    path,
                    "the character " + shown + " in a text",
                    "characters that can be seen",
                    "remove it",
                    FileProblem.Sort.UNSEEN));
        }
        return text;
    }

    private Place place(JsonLocation at) {
        return new Place(file.name(), at.getLineNr(), at.getColumnNr());
    }

    private InvalidFileException stop(Place at, String found, String expected, String advice) {
        return stop(problems, new FileProblem(at, "", found, expected, advice));
    }

    private static InvalidFileException stop(List<FileProblem> before, FileProblem last) {
        List<FileProblem> all = new ArrayList<>(before);
        all.add(last);
        return new InvalidFileException(all);
    }

    private static FileProblem boundProblem(SourceFile file, StreamConstraintsException bound) {
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
        JsonLocation at = bound.getLocation();
        Place place = at == null
                ? new Place(file.name(), 1, 1)
                : new Place(file.name(), Math.max(1, at.getLineNr()), Math.max(1, at.getColumnNr()));
        return new FileProblem(place, "", found, expected, "");
    }
}
