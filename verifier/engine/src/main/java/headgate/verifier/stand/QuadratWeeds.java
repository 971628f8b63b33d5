package headgate.verifier.stand;

import java.util.PriorityQueue;
import org.jspecify.annotations.Nullable;

/**
 * Weeds whose numbers in square quadrats follow the negative binomial law, as counts of weeds often do; within its quadrat
 * a weed may stand anywhere. Quadrats do not mind each other, and they begin at the plot's right corner.
 *
 * @param density mean number of weeds per square metre
 * @param dispersion k of the law; the variance of a count with mean m is m + m² / k
 * @param side of a quadrat, m
 */
public record QuadratWeeds(double density, double dispersion, double side) implements WeedPattern {

    /** Most weeds that a quadrat may hold on average. */
    static final double MOST_IN_ONE = 500;

    private static final double MOST_DISPERSION = 100;

    /**
     * Checks.
     *
     * @throws IllegalArgumentException if a figure is out of its bounds
     */
    public QuadratWeeds {
        Figure.check("a density per square metre", density, 0, Figure.DENSEST);
        Figure.check("the dispersion k", dispersion, 0.01, MOST_DISPERSION);
        Figure.check("a quadrat's side in metres", side, 0.01, 1_000);
        Figure.check("the mean number of weeds in a quadrat", density * side * side, 0, MOST_IN_ONE);
    }

    @Override
    public Places over(Ground ground, Draws draws) {
        return new Stream(ground, draws)::next;
    }

    /** Draws one line of quadrats across the plot at a time. */
    private final class Stream {
        private final Ground ground;
        private final Draws draws;
        private final PriorityQueue<Places.Place> line = new PriorityQueue<>(Places.Place.IN_TRAVEL);
        private long next;

        Stream(Ground ground, Draws draws) {
            this.ground = ground;
            this.draws = draws;
        }

        Places.@Nullable Place next() {
            while (line.isEmpty() && next * side < ground.length()) {
                line(next * side);
                next++;
            }
            return line.poll();
        }

        private void line(double x) {
            for (long i = 0; ground.right() + i * side < ground.left(); i++) {
                double y = ground.right() + i * side;
                int weeds = draws.negativeBinomial(density * side * side, dispersion);
                for (int w = 0; w < weeds; w++) {
                    Places.Place place = new Places.Place(x + side * draws.share(), y + side * draws.share());
                    if (ground.contains(place.x(), place.y())) {
                        line.add(place);
                    }
                }
            }
        }
    }
}
