package headgate.verifier.report.markup;

import java.util.ArrayDeque;
import java.util.Deque;

/**
 * Text with tags, for HTML and SVG. All text and all attribute values are escaped here, and nowhere else, so a name that
 * a partner chose cannot end up as a tag. Tags are closed in the order in which they nest.
 */
public final class Markup {

    private final StringBuilder out = new StringBuilder();
    private final Deque<String> open = new ArrayDeque<>();

    /** Makes empty markup. */
    public Markup() {}

    /**
     * Opens an element.
     *
     * @param tag its name, of this program's choice
     * @param attributes name and value, in turn; names are of this program's choice
     * @return this
     */
    public Markup open(String tag, String... attributes) {
        start(tag, attributes);
        out.append('>');
        open.push(tag);
        return this;
    }

    /**
     * Adds an element without content.
     *
     * @param tag its name
     * @param attributes name and value, in turn
     * @return this
     */
    public Markup empty(String tag, String... attributes) {
        start(tag, attributes);
        out.append("/>");
        return this;
    }

    /**
     * Adds an element that holds text.
     *
     * @param tag its name
     * @param text the text; escaped
     * @param attributes name and value, in turn
     * @return this
     */
    public Markup leaf(String tag, String text, String... attributes) {
        return open(tag, attributes).text(text).close();
    }

    /**
     * Adds text.
     *
     * @param text the text; escaped
     * @return this
     */
    public Markup text(String text) {
        escape(text);
        return this;
    }

    /**
     * Adds a line feed.
     *
     * @return this
     */
    public Markup line() {
        out.append('\n');
        return this;
    }

    /**
     * Closes the element that was opened last.
     *
     * @return this
     * @throws java.util.NoSuchElementException if none is open
     */
    public Markup close() {
        out.append("</").append(open.pop()).append('>');
        return this;
    }

    /**
     * Adds markup that another part of this program made.
     *
     * @param other the markup; all its elements are closed
     * @return this
     * @throws IllegalStateException if one is not
     */
    public Markup add(Markup other) {
        out.append(other);
        return this;
    }

    /**
     * Adds text of this program as it stands, such as a style sheet.
     *
     * @param trusted the text; nothing in it comes from outside
     * @return this
     */
    public Markup raw(String trusted) {
        out.append(trusted);
        return this;
    }

    private void start(String tag, String... attributes) {
        out.append('<').append(tag);
        for (int i = 0; i < attributes.length; i += 2) {
            out.append(' ').append(attributes[i]).append("=\"");
            escape(attributes[i + 1]);
            out.append('"');
        }
    }

    private void escape(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            switch (c) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '"' -> out.append("&quot;");
                case '\'' -> out.append("&#39;");
                default -> out.append(c);
            }
        }
    }

    /**
     * The text with its tags.
     *
     * @return the text
     * @throws IllegalStateException if an element is still open
     */
    @Override
    public String toString() {
        if (!open.isEmpty()) {
            throw new IllegalStateException("still open: " + open);
        }
        return out.toString();
    }
}
