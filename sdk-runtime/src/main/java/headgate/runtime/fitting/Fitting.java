package headgate.runtime.fitting;

import java.util.List;
import java.util.Optional;

/**
 * Which head is on which arm of a carriage, for a crop plan. Other files are named as the fitting's file names them:
 * relative to the folder that it lies in.
 *
 * @param name what the integrator calls it
 * @param carriage the carriage's file
 * @param cropPlan the crop plan's file
 * @param policy the policy's file; empty for the built-in one
 * @param heads the heads that it uses
 * @param arms the arms that carry a head; the others are empty
 * @param spacings other row spacings that it shall serve too, m
 */
public record Fitting(
        String name,
        String carriage,
        String cropPlan,
        Optional<String> policy,
        List<Head> heads,
        List<Place> arms,
        List<Double> spacings) {

    /** Copies the lists. */
    public Fitting {
        heads = List.copyOf(heads);
        arms = List.copyOf(arms);
        spacings = List.copyOf(spacings);
    }

    /**
     * Changes which arms carry which head.
     *
     * @param changed the arms that carry a head
     * @return the same fitting with them
     */
    public Fitting withArms(List<Place> changed) {
        return new Fitting(name, carriage, cropPlan, policy, heads, changed, spacings);
    }

    /**
     * A head that the fitting uses.
     *
     * @param id what the fitting calls it
     * @param file the file of its package
     * @param count how many of it are at hand; empty if there is one for every arm
     */
    public record Head(String id, String file, Optional<Integer> count) {

        /**
         * A head of which there are enough.
         *
         * @param id what the fitting calls it
         * @param file the file of its package
         */
        public Head(String id, String file) {
            this(id, file, Optional.empty());
        }
    }

    /**
     * An arm that carries a head.
     *
     * @param arm the arm's id
     * @param head what the fitting calls the head
     * @param turned true if it is turned by 180 degrees about the vertical axis
     * @param waits true if it waits lifted
     * @param lanes the lanes that it serves, from 1 at the right-hand side; none if that is left to the program
     * @param shares true if arms of other beams that say so too may serve the same lanes
     */
    public record Place(String arm, String head, boolean turned, boolean waits, List<Integer> lanes, boolean shares) {

        /** Copies the list. */
        public Place {
            lanes = List.copyOf(lanes);
        }

        /**
         * An arm that shares its lanes with nobody.
         *
         * @param arm the arm's id
         * @param head what the fitting calls the head
         * @param turned true if it is turned by 180 degrees about the vertical axis
         * @param waits true if it waits lifted
         * @param lanes the lanes that it serves; none if that is left to the program
         */
        public Place(String arm, String head, boolean turned, boolean waits, List<Integer> lanes) {
            this(arm, head, turned, waits, lanes, false);
        }
    }
}
