package headgate.runtime.form;

import headgate.runtime.origin.FileProblem;
import headgate.runtime.quantity.Kind;
import headgate.runtime.quantity.Quantities;
import headgate.runtime.quantity.Slips;
import headgate.runtime.quantity.WrittenUnit;
import headgate.runtime.text.NearestName;
import headgate.runtime.text.Node;
import headgate.runtime.text.Quote;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A quantity as text with its unit, such as {@code "120 mm"}. Its value is a {@link Double}, SI.
 *
 * @param kind what it measures
 * @param exampleText an example of a right text
 * @param least the least value, as text
 * @param leastOpen true if the least value itself is not allowed
 * @param most the largest value, as text
 * @param usual what is usual; a value outside is noted, not refused; null if anything within the bounds is usual
 */
public record QuantityForm(
        Kind kind,
        String exampleText,
        String least,
        boolean leastOpen,
        String most,
        @org.jspecify.annotations.Nullable Usual usual)
        implements Form {

    /**
     * What is usual.
     *
     * @param least least usual value, as text
     * @param most largest usual value, as text
     */
    public record Usual(String least, String most) {}

    /**
     * Says what is usual.
     *
     * @param usualLeast least usual value, as text
     * @param usualMost largest usual value, as text
     * @return the form with it
     */
    public QuantityForm usually(String usualLeast, String usualMost) {
        return new QuantityForm(kind, exampleText, least, leastOpen, most, new Usual(usualLeast, usualMost));
    }

    /** {@return true if a text with a minus sign is never right} */
    public boolean refusesMinus() {
        return !least.startsWith("-");
    }

    /** {@return the pattern of a right text: the number's form and the units, and the sign of the bounds} */
    public String pattern() {
        String number = refusesMinus() ? Quantities.NUMBER_FORM.substring(2) : Quantities.NUMBER_FORM;
        String some = refusesMinus() && leastOpen ? "(?=[0-9.]*[1-9])" : "";
        String units = kind.units().stream().map(WrittenUnit::symbol).collect(Collectors.joining("|"));
        String space = Character.isDigit(units.charAt(0)) ? " " : " ?";
        return "^" + some + number + space + "(" + units + ")$";
    }

    @Override
    public boolean check(Node node, Reading reading) {
        reading.at(node);
        if (!(node instanceof Node.Text text)) {
            String advice = node instanceof Node.Numeral number
                    ? "write the number with its unit, as text: \"" + number.literal() + " "
                            + kind.units().get(0).symbol() + "\", if that unit is meant"
                    : "";
            return reading.wrong(node, expected(), advice);
        }
        Quantities.Written written = Quantities.parse(text.text());
        if (written == null) {
            return reading.wrong(node, expected(), adviceOnForm(text.text()));
        }
        Optional<WrittenUnit> unit = kind.unit(written.unit());
        if (unit.isEmpty()) {
            return reading.wrong(node, expected(), adviceOnUnit(written));
        }
        if (refusesMinus() && text.text().startsWith("-")) {
            return reading.wrong(node, expected(), "it cannot be negative");
        }
        double si = Quantities.si(written.number(), unit.get(), kind);
        double lower = siOf(least);
        double upper = siOf(most);
        if (leastOpen && refusesMinus() && written.number().signum() == 0) {
            return reading.wrong(node, expected(), "it cannot be 0");
        }
        if (si < lower || si > upper || (leastOpen && si == lower)) {
            return reading.problem(
                    node,
                    FileProblem.Sort.RANGE,
                    node.found(),
                    expected(),
                    Slips.guess(si, kind, lower, upper).orElse(""));
        }
        noteUnusual(node, si, reading);
        return reading.keep(node, si);
    }

    private void noteUnusual(Node node, double si, Reading reading) {
        if (usual == null) {
            return;
        }
        double lower = siOf(usual.least);
        double upper = siOf(usual.most);
        if (si < lower || si > upper) {
            reading.note(
                    node,
                    node.found(),
                    "usually " + kind.phrase() + " from " + usual.least + " to " + usual.most,
                    Slips.guess(si, kind, lower, upper).orElse("check the number and its unit"));
        }
    }

    private String adviceOnForm(String text) {
        if (text.matches("-?[0-9]+,[0-9]+.*")) {
            return "write a decimal point, not a comma";
        }
        if (text.matches("-?[0-9.]+")) {
            return "the unit is missing: " + kind.symbols();
        }
        if (text.matches("-?[0-9.]+[eE].*")) {
            return "write the number without an exponent";
        }
        if (text.matches("\\+.*")) {
            return "write the number without a plus sign";
        }
        return "";
    }

    private String adviceOnUnit(Quantities.Written written) {
        Optional<String> converted = Slips.converted(written, kind);
        if (converted.isPresent()) {
            return converted.get();
        }
        Optional<Kind> other = Kind.ofSymbol(written.unit());
        if (other.isPresent()) {
            return Quote.of(written.unit()) + " is the unit of " + other.get().phrase();
        }
        return NearestName.of(
                        written.unit(),
                        kind.units().stream().map(WrittenUnit::symbol).toList())
                .map(name -> "did you mean " + Quote.of(name) + "?")
                .orElse(Quote.of(written.unit()) + " is not a unit that is read here");
    }

    private double siOf(String text) {
        return Forms.si(text, kind);
    }

    @Override
    public String expected() {
        String bounds = leastOpen ? " above " + least + " and at most " + most : " from " + least + " to " + most;
        return kind.phrase() + bounds + " in " + kind.symbols() + ", such as " + Quote.of(exampleText);
    }

    @Override
    public String example() {
        return "\"" + exampleText + "\"";
    }
}
