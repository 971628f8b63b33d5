package headgate.verifier.plot;

import headgate.runtime.cropplan.CropPlan;
import headgate.verifier.replay.PlantSource;
import headgate.verifier.stand.GeneratedStand;
import headgate.verifier.stand.PlannedStand;
import java.util.OptionalDouble;

/**
 * A plot that is made up as a crop plan expects it.
 *
 * @param name what people call it
 * @param sha256 digest of the plan, length, density and seed
 * @param density weeds per square metre; empty if the plan has no weeds
 * @param stand its plants
 */
public record MadeUpPlot(String name, String sha256, OptionalDouble density, GeneratedStand stand) implements Plot {

    /**
     * Makes one up.
     *
     * @param plan the plan
     * @param planDigest digest of the plan's file
     * @param density weeds per square metre in the bands; of no effect if the plan has no weeds
     * @param length along travel, m
     * @param seed what chance follows from
     * @return the plot
     * @throws IllegalArgumentException if length or density is not one that a plot can have
     */
    public static MadeUpPlot of(CropPlan plan, String planDigest, double density, double length, long seed) {
        boolean weeds = plan.weeds().isPresent();
        Digest digest = new Digest()
                .add("made up", planDigest)
                .add("density", weeds ? density : 0)
                .add("length", length)
                .add("seed", seed);
        return new MadeUpPlot(
                "seed " + seed,
                digest.hex(),
                weeds ? OptionalDouble.of(density) : OptionalDouble.empty(),
                PlannedStand.of(plan, density, length, seed));
    }

    @Override
    public boolean madeUp() {
        return true;
    }

    @Override
    public Reading read() {
        return new Reading(PlantSource.of(stand), () -> {});
    }

    @Override
    public void close() {
        // Its plants are made up each time.
    }
}
