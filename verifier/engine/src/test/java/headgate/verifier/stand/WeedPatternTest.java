package headgate.verifier.stand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Patterns against what is published of them. Seeds are fixed, and each bound is four standard errors wide: a right
 * generator misses one of them for one choice of seeds in 16,000.
 */
class WeedPatternTest {

    private static final double STANDARD_ERRORS = 4;

    private static List<Places.Place> draw(WeedPattern pattern, Ground ground, long seed) {
        Places places = pattern.over(ground, new Draws(seed));
        List<Places.Place> all = new ArrayList<>();
        for (Places.Place next = places.next(); next != null; next = places.next()) {
            all.add(next);
        }
        assertThat(all).isSortedAccordingTo((a, b) -> Double.compare(a.x(), b.x()));
        assertThat(all).allMatch(p -> ground.contains(p.x(), p.y()));
        return all;
    }

    private static int[] counts(List<Places.Place> places, Ground ground, double side) {
        int along = (int) Math.round(ground.length() / side);
        int across = (int) Math.round(ground.width() / side);
        int[] counts = new int[along * across];
        for (Places.Place place : places) {
            int i = (int) (place.x() / side);
            int j = (int) ((place.y() - ground.right()) / side);
            counts[i * across + j]++;
        }
        return counts;
    }

    private static double mean(double[] figures) {
        double sum = 0;
        for (double figure : figures) {
            sum += figure;
        }
        return sum / figures.length;
    }

    private static double standardError(double[] figures) {
        double mean = mean(figures);
        double sum = 0;
        for (double figure : figures) {
            sum += (figure - mean) * (figure - mean);
        }
        return Math.sqrt(sum / (figures.length - 1) / figures.length);
    }

    /** Mean square distance of counts from the mean that they should have: its expectation is the variance itself. */
    private static double spread(int[] counts, double mean) {
        double sum = 0;
        for (int count : counts) {
            sum += (count - mean) * (count - mean);
        }
        return sum / counts.length;
    }

    /** The Poisson law has variance = mean, and fourth central moment m + 3 m² (any textbook). */
    @ParameterizedTest
    @CsvSource({"10, 0.5", "1, 1", "190.5, 0.25"})
    void randomWeedsHavePoissonCounts(double density, double side) {
        Ground ground = new Ground(200 * side, -100 * side, 100 * side);
        double mean = density * side * side;

        int[] counts = counts(draw(new RandomWeeds(density), ground, 7), ground, side);

        int n = counts.length;
        assertThat(n).isEqualTo(40_000);
        double found =
                LongStream.range(0, n).mapToInt(i -> counts[(int) i]).average().orElseThrow();
        assertThat(found).isCloseTo(mean, within(STANDARD_ERRORS * Math.sqrt(mean / n)));
        assertThat(spread(counts, mean))
                .isCloseTo(mean, within(STANDARD_ERRORS * Math.sqrt((mean + 2 * mean * mean) / n)));
    }

    /**
     * Variance m + m² / k and chance of an empty quadrat (1 + m / k)^-k: A. Sharov, Population Ecology, lecture 3.3; the
     * figures follow from them by hand. The excess of the fourth moment, 6 / k + p² / (k (1 - p)) with p = k / (k + m), is
     * the law's, from memory.
     */
    @ParameterizedTest
    @CsvSource({"4, 2, 1, 12, 0.111111", "1, 0.5, 1, 3, 0.577350", "16, 2, 0.5, 12, 0.111111"})
    void quadratWeedsHaveNegativeBinomialCounts(
            double density, double dispersion, double side, double variance, double empty) {
        Ground ground = new Ground(200 * side, -100 * side, 100 * side);
        double mean = density * side * side;

        int[] counts = counts(draw(new QuadratWeeds(density, dispersion, side), ground, 11), ground, side);

        int n = counts.length;
        double p = dispersion / (dispersion + mean);
        double excess = 6 / dispersion + p * p / (dispersion * (1 - p));
        double zero = LongStream.range(0, n).filter(i -> counts[(int) i] == 0).count() / (double) n;
        double found =
                LongStream.range(0, n).mapToInt(i -> counts[(int) i]).average().orElseThrow();
        assertThat(found).isCloseTo(mean, within(STANDARD_ERRORS * Math.sqrt(variance / n)));
        assertThat(spread(counts, mean))
                .isCloseTo(variance, within(STANDARD_ERRORS * variance * Math.sqrt((excess + 2) / n)));
        assertThat(zero).isCloseTo(empty, within(STANDARD_ERRORS * Math.sqrt(empty * (1 - empty) / n)));
    }

    /**
     * Counts of a Thomas process in squares of side a: variance lambda a² + (lambda² / kappa) I² with I = a erf(a / 2 sigma)
     * - (2 sigma / sqrt(pi)) (1 - exp(-a² / 4 sigma²)), from the integral of its second moment. For kappa = 2, mu = 5 and
     * sigma = 0.1 that gives these figures.
     */
    @ParameterizedTest
    @CsvSource({"0.25, 1.626668", "0.5, 9.995280", "1, 49.352828"})
    void clumpedWeedsHaveTheVarianceOfAThomasProcess(double side, double variance) {
        Ground ground = new Ground(40, -5, 5);
        WeedPattern pattern = new ClumpedWeeds(10, 5, 0.1);
        double mean = 10 * side * side;

        double[] means = new double[60];
        double[] spreads = new double[60];
        for (int seed = 0; seed < means.length; seed++) {
            List<Places.Place> places = draw(pattern, ground, seed);
            means[seed] = places.size() / ground.area();
            spreads[seed] = spread(counts(places, ground, side), mean);
        }

        assertThat(standardError(spreads)).as("sharp enough to tell").isLessThan(0.03 * variance);
        assertThat(mean(means)).isCloseTo(10, within(STANDARD_ERRORS * standardError(means)));
        assertThat(mean(spreads)).isCloseTo(variance, within(STANDARD_ERRORS * standardError(spreads)));
    }

    /**
     * Ripley's K of a Thomas process, pi r² + (1 - exp(-r² / 4 sigma²)) / kappa (P. J. Diggle, Statistical Analysis of Spatial
     * Point Patterns, 1983; from memory). Neighbours are counted about weeds farther than r from every edge, so that none
     * is cut off: their expectation is lambda² times that area times K.
     */
    @ParameterizedTest
    @CsvSource({"0.05, 0.038147", "0.1, 0.142016", "0.2, 0.441724", "0.5, 1.284433"})
    void clumpedWeedsHaveTheNeighboursOfAThomasProcess(double radius, double expected) {
        Ground ground = new Ground(40, -5, 5);
        WeedPattern pattern = new ClumpedWeeds(10, 5, 0.1);

        double[] found = new double[60];
        for (int seed = 0; seed < found.length; seed++) {
            double inner = (ground.length() - 2 * radius) * (ground.width() - 2 * radius);
            found[seed] = neighbours(draw(pattern, ground, 1000 + seed), ground, radius) / (100 * inner);
        }

        assertThat(standardError(found)).as("sharp enough to tell").isLessThan(0.03 * expected);
        assertThat(mean(found)).isCloseTo(expected, within(STANDARD_ERRORS * standardError(found)));
    }

    private static long neighbours(List<Places.Place> places, Ground ground, double radius) {
        long pairs = 0;
        int from = 0;
        for (int i = 0; i < places.size(); i++) {
            Places.Place one = places.get(i);
            if (one.x() < radius
                    || one.x() >= ground.length() - radius
                    || one.y() < ground.right() + radius
                    || one.y() >= ground.left() - radius) {
                continue;
            }
            while (places.get(from).x() < one.x() - radius) {
                from++;
            }
            for (int j = from; j < places.size() && places.get(j).x() <= one.x() + radius; j++) {
                Places.Place other = places.get(j);
                if (i != j && Math.hypot(one.x() - other.x(), one.y() - other.y()) <= radius) {
                    pairs++;
                }
            }
        }
        return pairs;
    }

    /** No edge thins a pattern out: a strip one clump wide along the right edge holds as many weeds as elsewhere. */
    @Test
    void clumpsReachInFromOutside() {
        Ground ground = new Ground(40, -5, 5);
        double[] edges = new double[60];
        for (int seed = 0; seed < edges.length; seed++) {
            edges[seed] = draw(new ClumpedWeeds(10, 5, 0.5), ground, 5000 + seed).stream()
                            .filter(p -> p.y() < -4.5 || p.x() < 0.5)
                            .count()
                    / (40 * 0.5 + 0.5 * 9.5);
        }

        assertThat(mean(edges)).isCloseTo(10, within(STANDARD_ERRORS * standardError(edges)));
        assertThat(standardError(edges)).isLessThan(0.3);
    }

    @Test
    void noWeedsWhereTheDensityIsNought() {
        Ground ground = new Ground(100, -1, 1);

        assertThat(draw(new RandomWeeds(0), ground, 1)).isEmpty();
        assertThat(draw(new ClumpedWeeds(0, 5, 0.1), ground, 1)).isEmpty();
        assertThat(draw(new QuadratWeeds(0, 2, 1), ground, 1)).isEmpty();
    }
}
