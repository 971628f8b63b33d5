package headgate.runtime.policy;

/**
 * The limits that rules hold a case to, each with its source.
 *
 * @param armGap least gap between two arms after all tolerances, m
 * @param canopyGap least gap from a lifted or ready head to the canopy, m
 * @param coverageFactor the factor k that turns a standard deviation into a bound
 * @param massUse largest share of an arm's payload, 0 to 1
 * @param momentUse largest share of an arm's moment limits, 0 to 1
 */
public record Policy(Limit armGap, Limit canopyGap, Limit coverageFactor, Limit massUse, Limit momentUse) {

    /**
     * A limit.
     *
     * @param value the limit, SI
     * @param source where it comes from: a published source, "common practice, no source", or who decided it
     */
    public record Limit(double value, String source) {}
}
