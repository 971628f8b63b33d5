package headgate.verifier.check;

import headgate.runtime.stand.Plant;
import java.util.Optional;

/**
 * The plants that a case is replayed with.
 *
 * @param name what reports call it, such as its file's name
 * @param sha256 digest of the file, lower-case hexadecimal, if it is one plot that was recorded; empty if it is made up
 *     from seeds
 * @param plants where the plants come from
 */
public record Stand(String name, Optional<String> sha256, Source plants) {

    /**
     * One plot that was recorded.
     *
     * @param name its file's name
     * @param sha256 digest of the file, lower-case hexadecimal
     * @param plants its plants in the order of travel, y from the carriage's middle
     * @return the stand
     */
    public static Stand recorded(String name, String sha256, Iterable<Plant> plants) {
        return new Stand(name, Optional.of(sha256), (density, seed) -> plants);
    }

    /**
     * Plots that are made up from seeds.
     *
     * @param name what reports call them
     * @param plants makes them up
     * @return the stand
     */
    public static Stand madeUp(String name, Source plants) {
        return new Stand(name, Optional.empty(), plants);
    }

    /** {@return true if it is one plot that was recorded; false if it is made up from seeds} */
    public boolean recorded() {
        return sha256.isPresent();
    }

    /** Gives plants. The same density and seed give the same plants, as often as they are asked for. */
    @FunctionalInterface
    public interface Source {

        /**
         * The plants of one pass, y from the carriage's middle.
         *
         * @param density weeds per square metre of the ground to be treated; without meaning for a recorded plot
         * @param seed what chance follows from; without meaning for a recorded plot
         * @return the plants in the order of travel
         */
        Iterable<Plant> of(double density, long seed);
    }
}
