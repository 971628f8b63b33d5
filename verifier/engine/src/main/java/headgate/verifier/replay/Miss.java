package headgate.verifier.replay;

/**
 * Why a plant was not treated with success. Such a plant has one reason: of the reasons in this order, the first that kept it
 * from every arm, or else that it was treated in vain.
 */
public enum Miss {
    /** No head takes plants like this one. */
    OUTSIDE_RANGE("outside the head's range"),
    /** No sensor saw it: overlooked, under leaves, taken for one with another plant, or beside the sensors' bands. */
    UNSEEN("unseen"),
    /** It stands within the protected radius of a crop plant. */
    TOO_NEAR("too near a crop plant"),
    /** No arm's reach comes over it. */
    NEVER_IN_REACH("never in reach"),
    /** When it was known, it was too late to start. */
    SEEN_TOO_LATE("seen too late"),
    /** It is in reach for less time than the head needs, or the head declines it wherever it begins. */
    WINDOW_TOO_SHORT("window shorter than the action"),
    /** The head had nothing left to set or spray. */
    MAGAZINE_EMPTY("magazine empty"),
    /** The arm was free, but a neighbour was in the way. */
    BLOCKED("blocked by a neighbour"),
    /** The arm was busy with other plants. */
    ARM_BUSY("arm busy"),
    /** It was treated, but grows on; a plug was set, but its cell was empty, or it does not stand. */
    IN_VAIN("treated in vain");

    private final String label;

    Miss(String label) {
        this.label = label;
    }

    /** {@return how reports say it} */
    public String label() {
        return label;
    }
}
