package headgate.verifier.trial;

import headgate.verifier.replay.PlantSource;

/** Makes stands: the same density and seed give the same plants. */
@FunctionalInterface
public interface Stands {

    /**
     * Makes a stand.
     *
     * @param density weeds per square metre of the ground to be treated
     * @param seed the seed
     * @return its plants, in the order of travel
     */
    PlantSource make(double density, long seed);
}
