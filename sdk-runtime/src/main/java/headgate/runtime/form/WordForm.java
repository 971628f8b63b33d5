package headgate.runtime.form;

import headgate.runtime.text.NearestName;
import headgate.runtime.text.Node;
import headgate.runtime.text.Quote;
import java.util.List;
import java.util.stream.Collectors;

/**
 * One word of a closed list. Its value is a {@link String}.
 *
 * @param words the words
 */
public record WordForm(List<String> words) implements Form {

    /** Copies the list. */
    public WordForm {
        words = List.copyOf(words);
    }

    /**
     * Makes the form.
     *
     * @param words the words; the first is the example
     * @return the form
     */
    public static WordForm of(String... words) {
        return new WordForm(List.of(words));
    }

    @Override
    public boolean check(Node node, Reading reading) {
        reading.at(node);
        if (!(node instanceof Node.Text text)) {
            return reading.wrong(node, expected(), "");
        }
        if (!words.contains(text.text())) {
            String advice = NearestName.of(text.text(), words)
                    .map(w -> "did you mean " + Quote.of(w) + "?")
                    .orElse("");
            return reading.wrong(node, expected(), advice);
        }
        return reading.keep(node, text.text());
    }

    @Override
    public String expected() {
        return words.size() == 1
                ? Quote.of(words.get(0))
                : "one of " + words.stream().map(Quote::of).collect(Collectors.joining(", "));
    }

    @Override
    public String example() {
        return Quote.of(words.get(0));
    }
}
