package headgate.verifier.replay;

import headgate.api.vocabulary.PlantClass;
import headgate.runtime.stand.Plant;
import java.util.SplittableRandom;

/** Weeds at random along some lanes, as a stream: however long the plot is, one plant is held at a time. */
final class RandomPlot implements PlantSource {

    private final SplittableRandom random;
    private final long number;
    private final double perMetre;
    private final int lanes;
    private final double spacing;
    private final double halfWidth;
    private long made;
    private double x;

    RandomPlot(long seed, long number, double perMetre, int lanes, double spacing, double halfWidth) {
        this.random = new SplittableRandom(seed);
        this.number = number;
        this.perMetre = perMetre;
        this.lanes = lanes;
        this.spacing = spacing;
        this.halfWidth = halfWidth;
    }

    @Override
    public @org.jspecify.annotations.Nullable Plant next() {
        if (made == number) {
            return null;
        }
        made++;
        x -= StrictMath.log(1 - random.nextDouble()) / perMetre;
        int lane = random.nextInt(lanes);
        // Whole centimetres across and few sizes keep the number of different tasks small.
        double y = lane * spacing + (random.nextInt(21) - 10) / 10.0 * halfWidth;
        return new Plant(
                new Plant.Position(Math.round(x * 1e6), Math.round(y * 1e6)),
                PlantClass.BROADLEAF,
                0.002 + 0.002 * random.nextInt(3),
                0.05,
                0);
    }
}
