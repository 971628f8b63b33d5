package headgate.runtime.form;

import headgate.runtime.text.NearestName;
import headgate.runtime.text.Node;
import headgate.runtime.text.Quote;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * A word of an open vocabulary: any word of the right form is taken, and one that is nearly a known one is noted. Its
 * value is a {@link String}.
 *
 * @param phrase what it names, with the article
 * @param known the words known here; the first is the example
 */
public record TermForm(String phrase, List<String> known) implements Form {

    /** The form of a word: lower-case words joined by hyphens, at most 60 characters. */
    public static final String PATTERN = "^(?=.{1,60}$)[a-z][a-z0-9]*(-[a-z0-9]+)*$";

    /** Copies the list. */
    public TermForm {
        known = List.copyOf(known);
    }

    @Override
    public boolean check(Node node, Reading reading) {
        reading.at(node);
        if (!(node instanceof Node.Text text) || !Pattern.matches(PATTERN, text.text())) {
            return reading.wrong(node, expected(), node instanceof Node.Text t ? nearest(t.text()) : "");
        }
        if (!known.contains(text.text())) {
            String near = nearest(text.text());
            if (!near.isEmpty()) {
                reading.note(node, node.found(), expected(), near);
            }
        }
        return reading.keep(node, text.text());
    }

    private String nearest(String written) {
        Optional<String> name = NearestName.of(written, known);
        return name.map(n -> "did you mean " + Quote.of(n) + "?").orElse("");
    }

    @Override
    public String expected() {
        return phrase + " in lower-case words joined by hyphens, such as "
                + known.stream().map(Quote::of).collect(Collectors.joining(", "));
    }

    @Override
    public String example() {
        return Quote.of(known.get(0));
    }
}
