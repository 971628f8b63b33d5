package headgate.verifier.check;

/**
 * A figure with its kind.
 *
 * @param value the figure, SI
 * @param dimension what kind of quantity it is
 */
public record Measure(double value, Dimension dimension) {

    /** {@return the figure for people, with its unit} */
    @Override
    public String toString() {
        return dimension.text(value);
    }
}
