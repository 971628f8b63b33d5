package headgate.verifier.plot;

import headgate.verifier.trial.Standing;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/**
 * What density of weeds one speed can bear.
 *
 * @param speed the speed, m/s
 * @param rungs densities that were tried, ascending; at least one
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

    /**
     * {@return the largest density that passes while none below it fails, 1/m²; empty if there is none}. A low density leaves
     * few plants on a stand: that it cannot be told there says nothing against a higher one.
     */
    public Optional<Double> borne() {
        Optional<Double> borne = Optional.empty();
        for (Rung rung : rungs) {
            if (rung.cell().standing() == Standing.FAILS) {
                break;
            }
            if (rung.cell().standing() == Standing.PASSES) {
                borne = Optional.of(rung.density());
            }
        }
        return borne;
    }

    /** {@return true if the highest density is borne, so that a larger one might be, too} */
    public boolean toTheTop() {
        return borne().filter(d -> d == rungs.get(rungs.size() - 1).density()).isPresent();
    }

    /** {@return true if it cannot be told whether the lowest density can be borne} */
    public boolean openBelow() {
        return rungs.get(0).cell().standing() == Standing.UNDECIDED;
    }

    /**
     * Refines the ladder between what is borne and the next rung.
     *
     * @param round takes a density to one that can be tried
     * @return new densities, ascending; none if the highest is borne
     */
    public List<Double> finer(DoubleUnaryOperator round) {
        double low = borne().orElse(0.0);
        return rungs.stream()
                .map(Rung::density)
                .filter(density -> density > low)
                .findFirst()
                .map(high -> Refinement.between(low, high, round))
                .orElse(List.of());
    }
}
