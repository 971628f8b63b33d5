package headgate.runtime.form;

import headgate.runtime.quantity.Kind;
import headgate.runtime.quantity.Quantities;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** Makes forms, with words that read well where a kind of file is declared. */
public final class Forms {

    /** A bound that stands in a form. Few differ, and each is asked for with every quantity that is read. */
    private record Bound(String text, Kind kind) {}

    private static final Map<Bound, Double> BOUNDS = new ConcurrentHashMap<>();

    private Forms() {}

    /**
     * A quantity from 0, the 0 included.
     *
     * @param kind what it measures
     * @param most the largest value, as text
     * @param example an example of a right text
     * @return the form
     */
    public static QuantityForm fromZero(Kind kind, String most, String example) {
        return between(kind, "0 " + unitOf(most), most, example);
    }

    /**
     * A quantity above 0.
     *
     * @param kind what it measures
     * @param most the largest value, as text
     * @param example an example of a right text
     * @return the form
     */
    public static QuantityForm aboveZero(Kind kind, String most, String example) {
        return new QuantityForm(kind, example, "0 " + unitOf(most), true, most, null);
    }

    /**
     * A quantity within closed bounds.
     *
     * @param kind what it measures
     * @param least the least value, as text
     * @param most the largest value, as text
     * @param example an example of a right text
     * @return the form
     */
    public static QuantityForm between(Kind kind, String least, String most, String example) {
        return new QuantityForm(kind, example, least, false, most, null);
    }

    /**
     * A share of a whole, 0 % to 100 %.
     *
     * @param example an example of a right text
     * @return the form
     */
    public static QuantityForm share(String example) {
        return between(Kind.SHARE, "0 %", "100 %", example);
    }

    /**
     * A coordinate: a length of either sign.
     *
     * @param example an example of a right text
     * @return the form, from -20 m to 20 m
     */
    public static QuantityForm coordinate(String example) {
        return between(Kind.LENGTH, "-20 m", "20 m", example);
    }

    /**
     * An interval of two quantities, the lower one first.
     *
     * @param end what each end may be
     * @param exampleMost an example of a right upper end; the lower end's is the form's own
     * @return the form
     */
    public static PairForm interval(QuantityForm end, String exampleMost) {
        return new PairForm(end, end, true, List.of(end.exampleText(), exampleMost));
    }

    /**
     * A list.
     *
     * @param item what each element may be
     * @param least the least number of elements
     * @param most the largest number of elements
     * @return the form
     */
    public static ListForm list(Form item, int least, int most) {
        return new ListForm(item, least, most);
    }

    /**
     * An id: lower-case words joined by hyphens.
     *
     * @param example an example of a right id
     * @return the form
     */
    public static TextForm id(String example) {
        return new TextForm(
                "an id of lower-case letters, digits and hyphens", "^[a-z][a-z0-9]*(-[a-z0-9]+)*$", 60, example);
    }

    /**
     * A text for people.
     *
     * @param example an example of a right text
     * @return the form: any text with at least one character, at most 2000
     */
    public static TextForm text(String example) {
        return new TextForm("a text", "^[\\s\\S]+$", 2000, example);
    }

    /**
     * Reads a bound that stands in a form.
     *
     * @param text the bound, such as {@code 0 mm}
     * @param kind what it measures
     * @return its value, SI
     */
    static double si(String text, Kind kind) {
        return BOUNDS.computeIfAbsent(new Bound(text, kind), b -> read(b.text, b.kind));
    }

    private static double read(String text, Kind kind) {
        Quantities.Written written = Quantities.parse(text);
        if (written == null) {
            throw new IllegalArgumentException("not a quantity: " + text);
        }
        return Quantities.si(
                written.number(),
                kind.unit(written.unit()).orElseThrow(() -> new IllegalArgumentException("not " + kind + ": " + text)),
                kind);
    }

    private static String unitOf(String text) {
        return text.substring(text.indexOf(' ') + 1);
    }
}
