package headgate.verifier.replay;

import headgate.runtime.stand.Plant;
import java.util.Iterator;
import org.jspecify.annotations.Nullable;

/** Gives plants one by one in the order of travel. It can be read once. */
@FunctionalInterface
public interface PlantSource {

    /** {@return the next plant, whose x is not less than that of the one before; null at the end} */
    @Nullable
    Plant next();

    /**
     * Reads plants that are in order already.
     *
     * @param plants the plants, in the order of travel
     * @return the source
     */
    static PlantSource of(Iterable<Plant> plants) {
        Iterator<Plant> rest = plants.iterator();
        return () -> rest.hasNext() ? rest.next() : null;
    }
}
