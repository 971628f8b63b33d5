package headgate.runtime.form;

import headgate.runtime.text.Node;
import java.math.BigDecimal;

/**
 * A whole number. Its value is an {@link Integer}.
 *
 * @param least the least value
 * @param most the largest value
 * @param exampleValue an example of a right value
 */
public record CountForm(int least, int most, int exampleValue) implements Form {

    @Override
    public boolean check(Node node, Reading reading) {
        reading.at(node);
        if (!(node instanceof Node.Numeral number)) {
            String advice = node instanceof Node.Text ? "it has no unit and stands without double quotes" : "";
            return reading.wrong(node, expected(), advice);
        }
        BigDecimal value = number.value();
        // The bounds come first: they keep a number such as 1e999999999 from being written out.
        if (value.compareTo(BigDecimal.valueOf(least)) < 0
                || value.compareTo(BigDecimal.valueOf(most)) > 0
                || value.compareTo(BigDecimal.valueOf(value.intValue())) != 0) {
            return reading.wrong(node, expected(), "");
        }
        return reading.keep(node, value.intValue());
    }

    @Override
    public String expected() {
        return "a whole number from " + least + " to " + most + ", such as " + exampleValue;
    }

    @Override
    public String example() {
        return Integer.toString(exampleValue);
    }
}
