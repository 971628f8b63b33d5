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
    public Places over(Ground ground, Draws draws) {
        return density == 0 ? () -> null : new Along(ground.width() * density, ground, draws)::next;
    }

    /** Goes through a plot with exponential steps. */
    private static final class Along {
        private final double perMetre;
        private final Ground ground;
        private final Draws draws;
        private double x;

        Along(double perMetre, Ground ground, Draws draws) {
            this.perMetre = perMetre;
            this.ground = ground;
            this.draws = draws;
        }

        Places.@org.jspecify.annotations.Nullable Place next() {
            x += draws.exponential() / perMetre;
            return x < ground.length() ? new Places.Place(x, ground.right() + ground.width() * draws.share()) : null;
        }
    }
}
