package headgate.verifier.stand;

/**
 * Weeds that stand at random, none minding another: a Poisson process. Along travel the distance from one to the next is
 * exponential, across it each place is as likely as any other.
 *
 * @param density mean number per square metre
 */
public record RandomWeeds(double density) implements WeedPattern {

    /**
     * Checks.
     *
     * @throws IllegalArgumentException if the density is negative or not finite
     */
    public RandomWeeds {
        Figure.check("a density per square metre", density, 0, Figure.DENSEST);
    }

    @Override
    public Places over(Plot plot, Draws draws) {
        return density == 0 ? () -> null : new Along(plot.width() * density, plot, draws)::next;
    }

    /** Goes through a plot with exponential steps. */
    private static final class Along {
        private final double perMetre;
        private final Plot plot;
        private final Draws draws;
        private double x;

        Along(double perMetre, Plot plot, Draws draws) {
            this.perMetre = perMetre;
            this.plot = plot;
            this.draws = draws;
        }

        Places.@org.jspecify.annotations.Nullable Place next() {
            x += draws.exponential() / perMetre;
            return x < plot.length() ? new Places.Place(x, plot.right() + plot.width() * draws.share()) : null;
        }
    }
}
