package headgate.runtime.form;

import headgate.runtime.text.Node;

/**
 * A list of values of one form. Its value is a {@code List<Node>}, the elements.
 *
 * @param item what each element may be
 * @param least the least number of elements
 * @param most the largest number of elements
 */
public record ListForm(Form item, int least, int most) implements Form {

    @Override
    public boolean check(Node node, Reading reading) {
        reading.at(node);
        if (!(node instanceof Node.Sequence list)) {
            return reading.wrong(node, expected(), "");
        }
        boolean sound = true;
        if (list.items().size() < least || list.items().size() > most) {
            sound = reading.wrong(node, expected(), "");
        }
        // A list that is too long is looked at as far as it may go, so that a huge one stays cheap.
        int seen = 0;
        for (Node element : list.items()) {
            if (seen++ == most) {
                break;
            }
            sound &= item.check(element, reading);
        }
        return sound && reading.keep(node, list.items());
    }

    @Override
    public String expected() {
        String count = least == most ? "" + least : least + " to " + most;
        String element = item instanceof ObjectForm object ? object.title() : item.example();
        return "a list of " + count + ", each " + (item instanceof ObjectForm ? "an object: " : "such as ") + element;
    }

    @Override
    public String example() {
        return "[" + item.example() + "]";
    }
}
