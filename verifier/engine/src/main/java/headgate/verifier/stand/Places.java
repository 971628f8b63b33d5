package headgate.verifier.stand;

import java.util.Comparator;
import org.jspecify.annotations.Nullable;

/** Places on the ground, one by one in the order of travel. */
@FunctionalInterface
interface Places {

    /** {@return the next place, whose x is not less than that of the one before; null at the end} */
    @Nullable
    Place next();

    /**
     * A place.
     *
     * @param x along travel, m
     * @param y to the left, m
     */
    record Place(double x, double y) {
        static final Comparator<Place> IN_TRAVEL =
                Comparator.comparingDouble(Place::x).thenComparingDouble(Place::y);
    }
}
