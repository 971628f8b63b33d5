package headgate.runtime.form;

import headgate.runtime.text.Node;

/**
 * Yes or no. Its value is a {@link Boolean}.
 *
 * @param exampleValue an example of a right value
 */
public record FlagForm(boolean exampleValue) implements Form {

    @Override
    public boolean check(Node node, Reading reading) {
        reading.at(node);
        return node instanceof Node.Flag flag
                ? reading.keep(node, flag.value())
                : reading.wrong(node, expected(), node instanceof Node.Text ? "it stands without double quotes" : "");
    }

    @Override
    public String expected() {
        return "true or false";
    }

    @Override
    public String example() {
        return Boolean.toString(exampleValue);
    }
}
