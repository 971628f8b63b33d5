package headgate.verifier.stand;

import java.util.PriorityQueue;
import org.jspecify.annotations.Nullable;

/**
 * Weeds in clumps: a Thomas process. Centres of clumps stand at random, each with a Poisson number of weeds, each of which
 * is off its centre by a normal law along both axes (M. Thomas, "A generalization of Poisson's binomial limit for use in
 * ecology", Biometrika 36 (1949) 18-25). Centres outside of the plot have weeds in it too.
 *
 * @param density mean number of weeds per square metre
 * @param mean mean number of weeds in a clump
 * @param sigma standard deviation of a weed's distance from its centre along each axis, m
 */
public record ClumpedWeeds(double density, double mean, double sigma) implements WeedPattern {

    /** Widest clumps, m; all weeds of the clumps that reach back to where the stream is are held at once. */
    private static final double WIDEST = 100;

    private static final double MOST_IN_CLUMP = 100_000;

    /**
     * Checks.
     *
     * @throws IllegalArgumentException if a figure is out of its bounds
     */
    public ClumpedWeeds {
        Figure.check("a density per square metre", density, 0, Figure.DENSEST);
        Figure.check("the mean number of weeds in a clump", mean, 1e-6, MOST_IN_CLUMP);
        Figure.check("a clump's standard deviation in metres", sigma, 1e-6, WIDEST);
    }

    @Override
    public Places over(Ground ground, Draws draws) {
        return density == 0 ? () -> null : new Stream(ground, draws)::next;
    }

    /** Holds the weeds of the clumps that may still have one ahead of the next centre. */
    private final class Stream {
        /** No weed is farther from its centre along an axis. */
        private final double farthest = Draws.FARTHEST_NORMAL * sigma;

        private final Ground ground;
        private final Draws draws;
        private final double centresPerMetre;
        private final PriorityQueue<Places.Place> ahead = new PriorityQueue<>(Places.Place.IN_TRAVEL);
        private double centre = -farthest;

        Stream(Ground ground, Draws draws) {
            this.ground = ground;
            this.draws = draws;
            this.centresPerMetre = density / mean * (ground.width() + 2 * farthest);
            step();
        }

        private void step() {
            centre += draws.exponential() / centresPerMetre;
        }

        Places.@Nullable Place next() {
            Places.Place first = ahead.peek();
            while (centre < ground.length() + farthest && (first == null || centre - farthest <= first.x())) {
                clump();
                step();
                first = ahead.peek();
            }
            return ahead.poll();
        }

        private void clump() {
            double middle = ground.right() - farthest + (ground.width() + 2 * farthest) * draws.share();
            int weeds = draws.poisson(mean);
            for (int i = 0; i < weeds; i++) {
                Places.Place place = new Places.Place(centre + sigma * draws.normal(), middle + sigma * draws.normal());
                if (ground.contains(place.x(), place.y())) {
                    ahead.add(place);
                }
            }
        }
    }
}
