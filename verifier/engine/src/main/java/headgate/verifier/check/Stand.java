package headgate.verifier.check;

import headgate.runtime.stand.Plant;

/**
 * The plants that a case is replayed with.
 *
 * @param name what reports call it, such as its file's name
 * @param recorded true if it is one plot that was recorded; false if it is made up from seeds
 * @param plants where the plants come from
 */
public record Stand(String name, boolean recorded, Source plants) {

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
