package headgate.verifier.behaviour;

/** One thing that a head owes whoever asks it. */
public enum Trait {
    /** Every task of the work range gets an answer. */
    TOTAL("total", "every task of the work range gets an answer or a refusal"),
    /** The same task gets the same answer, in any order and from any instance. */
    PURE("pure", "the same task gets the same answer, in any order and from any instance"),
    /** The sheet is the same at each call. */
    SHEET_STAYS("sheet-stays", "the sheet is the same at each call"),
    /** Every corner of the work range is accepted from some start. */
    ACCEPTS("accepts", "every corner of the work range is accepted from some start"),
    /** What it refuses lies before or after what it accepts, never between. */
    NO_HOLES("no-holes", "starts that are refused lie before or after those that are accepted, never between"),
    /** Each phase names a posture of the sheet. */
    KNOWN_POSTURE("known-posture", "each phase names a posture of the sheet"),
    /** The time of an action lies within the sheet's bounds. */
    ACTION_TIME("action-time", "the time of an action lies within the sheet's least and most"),
    /** The tool point stays in the region of the posture, on the way too. */
    IN_REACH("in-reach", "the tool point stays in the region of its posture, on the way too"),
    /** The tool point does not move in no time. */
    NO_JUMPS("no-jumps", "the tool point does not move in a phase that takes no time"),
    /** An action ends where it started, ready. */
    RETURNS("returns", "an action ends at the ready tool point"),
    /** At least one phase treats ground. */
    TREATS("treats", "at least one phase treats ground"),
    /** While it treats, the tool point is over the plant. */
    AIMS("aims", "while it treats, the tool point is over the plant"),
    /** While it is in the soil, the tool point goes with the ground. */
    GOES_WITH_GROUND("goes-with-ground", "while it is in the soil, the tool point goes with the ground"),
    /** The contact of a phase is not milder than the shape says. */
    HONEST_CONTACT("honest-contact", "the contact of a phase is not milder than its shape says"),
    /** A continuous head works as deep as its sheet says. */
    DECLARED_DEPTH("declared-depth", "the depth of an engagement lies within the sheet's work range");

    private final String id;
    private final String sentence;

    Trait(String id, String sentence) {
        this.id = id;
        this.sentence = sentence;
    }

    /** {@return its name in reports, lower-case words joined by hyphens} */
    public String id() {
        return id;
    }

    /** {@return what is owed, as a sentence without a full stop} */
    public String sentence() {
        return sentence;
    }
}
