package headgate.verifier.replay;

/**
 * What a head uses up, and where it is filled again.
 *
 * @param capacity how much a full head holds
 * @param perAction how much one action uses
 * @param refillTime how long one refill takes, s
 * @param place where it is filled
 * @param allAtOnce true if all heads are filled at once, false if one after the other
 */
public record Magazine(double capacity, double perAction, double refillTime, Place place, boolean allAtOnce) {

    /** Where a head is filled. */
    public enum Place {
        /** Wherever it runs empty: the carriage stands still meanwhile, so no plant is missed, but time is lost. */
        ANYWHERE,
        /** At the end of a row only: what comes between is missed. */
        HEADLAND
    }
}
