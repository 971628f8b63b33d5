package headgate.app.console;

/** The few colours that the program uses, as control sequences of ECMA-48 (SGR). A word always says the same thing too. */
public enum Paint {
    /** Good. */
    GREEN("32"),
    /** Needs a look. */
    YELLOW("33"),
    /** Bad. */
    RED("31"),
    /** A heading. */
    BOLD("1");

    private final String parameter;

    Paint(String parameter) {
        this.parameter = parameter;
    }

    String apply(String text) {
        return "\u001b[" + parameter + "m" + text + "\u001b[0m";
    }
}
