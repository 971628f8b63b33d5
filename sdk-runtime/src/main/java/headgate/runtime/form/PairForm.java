package headgate.runtime.form;

import headgate.runtime.origin.FileProblem;
import headgate.runtime.text.Node;
import headgate.runtime.text.Quote;
import java.util.List;

/**
 * Two quantities in a list: an interval, lower end first, or a point. Its value is a {@code List<Double>}, SI.
 *
 * @param first what the first may be
 * @param second what the second may be
 * @param ordered true if the first must not be above the second
 * @param exampleTexts an example of the two texts
 */
public record PairForm(QuantityForm first, QuantityForm second, boolean ordered, List<String> exampleTexts)
        implements Form {

    /** Copies the list. */
    public PairForm {
        exampleTexts = List.copyOf(exampleTexts);
    }

    @Override
    public boolean check(Node node, Reading reading) {
        reading.at(node);
        if (!(node instanceof Node.Sequence pair) || pair.items().size() != 2) {
            return reading.wrong(node, expected(), "");
        }
        boolean firstSound = first.check(pair.items().get(0), reading);
        boolean secondSound = second.check(pair.items().get(1), reading);
        if (!firstSound || !secondSound) {
            return false;
        }
        double a = (Double) reading.value(pair.items().get(0));
        double b = (Double) reading.value(pair.items().get(1));
        if (ordered && a > b) {
            String found = pair.items().get(0).found() + " before "
                    + pair.items().get(1).found();
            return reading.problem(node, FileProblem.Sort.RULE, found, "the lower end first", "swap the two");
        }
        return reading.keep(node, List.of(a, b));
    }

    @Override
    public String expected() {
        String what = ordered ? "a list of two, the lower end first, each " : "a list of two, each ";
        return what + first.kind().phrase() + " from " + first.least() + " to " + first.most() + ", such as "
                + example();
    }

    @Override
    public String example() {
        return "[" + Quote.of(exampleTexts.get(0)) + ", " + Quote.of(exampleTexts.get(1)) + "]";
    }
}
