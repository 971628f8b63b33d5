package headgate.runtime.form;

import headgate.runtime.text.Node;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * A list of plain numbers of one length. Its value is a {@code List<Double>}.
 *
 * @param item what each number may be
 * @param size how many there are
 */
public record TupleForm(NumberForm item, int size) implements Form {

    @Override
    public boolean check(Node node, Reading reading) {
        reading.at(node);
        if (!(node instanceof Node.Sequence list) || list.items().size() != size) {
            return reading.wrong(node, expected(), "");
        }
        List<Double> numbers = new ArrayList<>(size);
        boolean sound = true;
        for (Node element : list.items()) {
            if (item.check(element, reading)) {
                numbers.add((Double) reading.value(element));
            } else {
                sound = false;
            }
        }
        return sound && reading.keep(node, List.copyOf(numbers));
    }

    @Override
    public String expected() {
        return "a list of " + size + " numbers, each from " + item.least() + " to " + item.most() + ", such as "
                + example();
    }

    @Override
    public String example() {
        return "[" + String.join(", ", Collections.nCopies(size, item.example())) + "]";
    }
}
