package headgate.runtime.answers;

/** What a head process was doing. */
public enum HeadStage {
    /** Starting the virtual machine; no code of the head runs yet. */
    START("while its process started"),
    /** Loading the head: static initialisers and the constructor. */
    LOAD("while it was loaded"),
    /** Asking for the sheet. */
    SHEET("when asked for its sheet"),
    /** Asking for actions. */
    ACT("when asked for an action"),
    /** Asking for engagements. */
    ENGAGE("when asked for an engagement");

    private final String phrase;

    HeadStage(String phrase) {
        this.phrase = phrase;
    }

    /** {@return the stage as part of a sentence, such as "while it was loaded"} */
    public String phrase() {
        return phrase;
    }
}
