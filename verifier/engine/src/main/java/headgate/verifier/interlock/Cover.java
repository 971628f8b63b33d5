package headgate.verifier.interlock;

import java.util.List;

/**
 * Zones that hold a set.
 *
 * @param zones the zones, in a fixed order; none is held by the others
 * @param excess how much of the reach they close at most besides what is too near, as a share of it: 0 to 1
 */
record Cover(List<Zone> zones, double excess) {

    /** Nothing to close. */
    static final Cover NOTHING = new Cover(List.of(), 0);

    Cover {
        zones = List.copyOf(zones);
    }
}
