package headgate.verifier.report;

/**
 * Which program made a report.
 *
 * @param program version of the program
 * @param ruleBook version of the rule book
 */
public record Edition(String program, String ruleBook) {}
