package headgate.runtime.text;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import headgate.runtime.origin.FileProblem;
import headgate.runtime.origin.Place;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Makes nodes of the tokens of a parser, and collects what does not stop the reading. */
final class NodeParser {

    /**
     * The largest exponent that is kept. A numeral has at most 1,000 digits, so one with a larger exponent is beyond every
     * bound of a field, or nearer to zero than any, with this one too.
     */
    private static final BigInteger MOST_EXPONENT = BigInteger.valueOf(2_000);

    private final String file;
    private final JsonParser parser;
    private final List<FileProblem> problems;

    NodeParser(String file, JsonParser parser, List<FileProblem> problems) {
        this.file = file;
        this.parser = parser;
        this.problems = problems;
    }

    /** The value that the parser's current token begins. */
    Node value(String path) throws IOException {
        Place place = place(parser.currentTokenLocation());
        JsonToken token = parser.currentToken();
        return switch (token) {
            case START_OBJECT -> table(place, path);
            case START_ARRAY -> sequence(place, path);
            case VALUE_STRING -> new Node.Text(place, path, seen(place, path, parser.getText()));
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT ->
                new Node.Numeral(place, path, parser.getText(), exact(parser.getText()));
            case VALUE_TRUE -> new Node.Flag(place, path, true);
            case VALUE_FALSE -> new Node.Flag(place, path, false);
            case VALUE_NULL -> new Node.Nothing(place, path);
            default -> throw new IllegalStateException("the parser gave " + token);
        };
    }

    /** JSON sets no bound to an exponent, but a decimal does: it cannot be made of a numeral such as 1e9999999999. */
    private static BigDecimal exact(String literal) {
        int mark = Math.max(literal.indexOf('e'), literal.indexOf('E'));
        if (mark < 0) {
            return new BigDecimal(literal);
        }
        BigInteger exponent =
                new BigInteger(literal.substring(mark + 1)).min(MOST_EXPONENT).max(MOST_EXPONENT.negate());
        return new BigDecimal(literal.substring(0, mark)).scaleByPowerOfTen(exponent.intValueExact());
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

    Place place(JsonLocation at) {
        return new Place(file, at.getLineNr(), at.getColumnNr());
    }

    /** What is wrong if something follows the value of the file. */
    FileProblem trailing() {
        return new FileProblem(
                place(parser.currentTokenLocation()),
                "",
                "more text",
                "the end of the file",
                "a file holds one JSON object");
    }
}
