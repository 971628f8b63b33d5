package headgate.verifier.session;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What is to be replayed.
 *
 * @param heads what carries which heads over which crop
 * @param stands recorded stands, and folders of them
 * @param seeds a stand is made up from each, at each density
 * @param length of the stands that are made up, m; empty for the length of the plan's field
 * @param densities weeds per square metre of the stands that are made up; none for the plan's own
 * @param speeds speeds, m/s; the wanted speed is always run, too
 * @param search true to look for the best speed, the density that can be borne, and what would do instead
 * @param budget answers that the heads are asked for at most, for one stand
 * @param threads threads that work on a stand
 */
public record ReplayInput(
        Heads heads,
        List<Path> stands,
        List<Long> seeds,
        OptionalDouble length,
        List<Double> densities,
        List<Double> speeds,
        boolean search,
        long budget,
        int threads) {

    /** Copies the lists. */
    public ReplayInput {
        stands = List.copyOf(stands);
        seeds = List.copyOf(seeds);
        densities = List.copyOf(densities);
        speeds = List.copyOf(speeds);
    }

    /** Where the heads come from. */
    public sealed interface Heads {

        /**
         * One head on every arm.
         *
         * @param input its files
         */
        record One(CheckInput input) implements Heads {}

        /**
         * A whole fitting.
         *
         * @param file its file
         */
        record Fitted(Path file) implements Heads {}
    }

    /** {@return the fitting's file, if there is one} */
    public Optional<Path> fitting() {
        return heads instanceof Heads.Fitted fitted ? Optional.of(fitted.file()) : Optional.empty();
    }
}
