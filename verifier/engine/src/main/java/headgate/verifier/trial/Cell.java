package headgate.verifier.trial;

import headgate.verifier.replay.ReplayOutcome;
import java.util.List;

/**
 * What came of one speed at one density.
 *
 * @param speed m/s
 * @param density weeds per square metre
 * @param coverage its coverage over seeds
 * @param standing how it stands to what is wanted
 * @param outcomes one for each seed, in the order of the seeds
 */
public record Cell(double speed, double density, Bounds coverage, Standing standing, List<ReplayOutcome> outcomes) {

    /** Copies the list. */
    public Cell {
        outcomes = List.copyOf(outcomes);
    }
}
