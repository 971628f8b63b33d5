package headgate.runtime.form;

import headgate.runtime.text.Node;
import headgate.runtime.text.Quote;
import java.util.regex.Pattern;

/**
 * A text of some form. Its value is a {@link String}.
 *
 * @param phrase what it is, with the article
 * @param pattern the regular expression that it matches as a whole
 * @param longest the largest number of characters
 * @param exampleText an example of a right text
 */
public record TextForm(String phrase, String pattern, int longest, String exampleText) implements Form {

    @Override
    public boolean check(Node node, Reading reading) {
        reading.at(node);
        boolean right = node instanceof Node.Text text
                && text.text().codePointCount(0, text.text().length()) <= longest
                && Pattern.matches(pattern, text.text());
        return right ? reading.keep(node, ((Node.Text) node).text()) : reading.wrong(node, expected(), "");
    }

    @Override
    public String expected() {
        return phrase + " of at most " + longest + " characters, such as " + Quote.of(exampleText);
    }

    @Override
    public String example() {
        return Quote.of(exampleText);
    }
}
