package headgate.verifier.check;

/**
 * One term of a formula, with its number.
 *
 * @param name what it is
 * @param measure its figure
 */
public record Term(String name, Measure measure) {

    /**
     * Makes a term.
     *
     * @param name what it is
     * @param value its figure, SI
     * @param dimension the figure's kind
     * @return the term
     */
    public static Term of(String name, double value, Dimension dimension) {
        return new Term(name, new Measure(value, dimension));
    }
}
