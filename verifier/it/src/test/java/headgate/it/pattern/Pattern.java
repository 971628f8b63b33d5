package headgate.it.pattern;

import headgate.api.vocabulary.PlantClass;
import headgate.runtime.stand.Plant;
import headgate.verifier.stand.GeneratedStand;
import headgate.verifier.stand.Ground;
import headgate.verifier.stand.RandomWeeds;
import headgate.verifier.stand.SizeLaw;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Plants in a square plot, and what is usually said of a pattern.
 *
 * @param side length of the plot's sides, m
 * @param places where they stand, m, from 0 to the side
 */
record Pattern(double side, List<Place> places) {

    Pattern {
        places = List.copyOf(places);
    }

    /** A place, m. */
    record Place(double x, double y) {

        double distance(Place other) {
            return Math.hypot(x - other.x, y - other.y);
        }
    }

    /** Reads columns {@code x_m,y_m} of a test resource. */
    static Pattern read(String resource, double side) {
        try (InputStream in = Objects.requireNonNull(Pattern.class.getResourceAsStream(resource), resource)) {
            List<Place> places = new ArrayList<>();
            for (String line : new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .skip(1)
                    .toList()) {
                String[] cells = line.split(",", -1);
                places.add(new Place(Double.parseDouble(cells[0]), Double.parseDouble(cells[1])));
            }
            return new Pattern(side, places);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** A Poisson process of a mean density, plants per square metre. */
    static Pattern random(double side, double density, long seed) {
        List<Place> places = new ArrayList<>();
        GeneratedStand stand = new GeneratedStand(
                new Ground(side, 0, side),
                Optional.empty(),
                List.of(new GeneratedStand.Weeds(
                        new RandomWeeds(density),
                        List.of(),
                        List.of(PlantClass.BROADLEAF),
                        SizeLaw.UNKNOWN,
                        SizeLaw.UNKNOWN,
                        SizeLaw.UNKNOWN)),
                seed);
        for (Plant plant : stand) {
            places.add(new Place(plant.position().x() / 1e6, plant.position().y() / 1e6));
        }
        return new Pattern(side, places);
    }

    /** Plants per square metre. */
    double density() {
        return places.size() / (side * side);
    }

    /** Mean distance of a plant to its nearest neighbour, m; the plot's edges are not corrected for. */
    double nearestNeighbour() {
        double sum = 0;
        for (int i = 0; i < places.size(); i++) {
            double nearest = Double.POSITIVE_INFINITY;
            for (int k = 0; k < places.size(); k++) {
                // Another plant may stand at the very same place.
                nearest = k == i ? nearest : Math.min(nearest, places.get(i).distance(places.get(k)));
            }
            sum += nearest;
        }
        return sum / places.size();
    }

    /**
     * The index of Clark and Evans, Ecology 35 (1954) 445-453: the mean distance to the nearest neighbour over what it is in
     * a Poisson process. Below 1 plants stand in clumps, above it they keep away from each other.
     */
    double clarkEvans() {
        return nearestNeighbour() * 2 * Math.sqrt(density());
    }

    /** Mean and variance (over n - 1) of the numbers of plants in a grid of squares. */
    double[] quadrats(int perSide) {
        double[] counts = new double[perSide * perSide];
        for (Place place : places) {
            counts[cell(place.x(), perSide) * perSide + cell(place.y(), perSide)]++;
        }
        double mean = Arrays.stream(counts).average().orElseThrow();
        double squares = Arrays.stream(counts).map(c -> (c - mean) * (c - mean)).sum();
        return new double[] {mean, squares / (counts.length - 1)};
    }

    private int cell(double at, int perSide) {
        return Math.min(perSide - 1, (int) (at / side * perSide));
    }
}
