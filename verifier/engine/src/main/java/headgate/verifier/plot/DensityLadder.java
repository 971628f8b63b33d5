package headgate.verifier.plot;

import headgate.verifier.trial.Standing;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What density of weeds one speed can bear.
 *
 * @param speed the speed, m/s
 * @param rungs densities that were tried, ascending
 */
public record DensityLadder(double speed, List<Rung> rungs) {

    /** Puts the rungs in order. */
    public DensityLadder {
        rungs = rungs.stream().sorted(Comparator.comparingDouble(Rung::density)).toList();
    }

    /**
     * One density.
     *
     * @param density weeds per square metre of the ground to be treated
     * @param cell what came of it
     */
    public record Rung(double density, PlotSummary.Cell cell) {}

    /** {@return the largest density up to which every one passes, 1/m²; empty if not even the least does} */
    public Optional<Double> borne() {
        Optional<Double> borne = Optional.empty();
        for (Rung rung : rungs) {
            if (rung.cell().standing() != Standing.PASSES) {
                break;
            }
            borne = Optional.of(rung.density());
        }
        return borne;
    }

    /** {@return true if every density passes, so that a larger one might, too} */
    public boolean toTheTop() {
        return !rungs.isEmpty() && rungs.stream().allMatch(r -> r.cell().standing() == Standing.PASSES);
    }
}
