package headgate.runtime.form;

import headgate.runtime.text.Node;
import java.math.BigDecimal;

/**
 * A plain number without a unit: a factor or a coefficient. Its value is a {@link Double}.
 *
 * @param least the least value
 * @param most the largest value
 * @param exampleValue an example of a right value
 */
public record NumberForm(String least, String most, String exampleValue) implements Form {

    @Override
    public boolean check(Node node, Reading reading) {
        reading.at(node);
        if (!(node instanceof Node.Numeral number)) {
            String advice = node instanceof Node.Text ? "it has no unit and stands without double quotes" : "";
            return reading.wrong(node, expected(), advice);
        }
        // Compared exactly, as a schema does, before it is rounded to a double.
        if (number.value().compareTo(new BigDecimal(least)) < 0
                || number.value().compareTo(new BigDecimal(most)) > 0) {
            return reading.wrong(node, expected(), "");
        }
        return reading.keep(node, number.value().doubleValue());
    }

    @Override
    public String expected() {
        return "a number from " + least + " to " + most + ", such as " + exampleValue;
    }

    @Override
    public String example() {
        return exampleValue;
    }
}
