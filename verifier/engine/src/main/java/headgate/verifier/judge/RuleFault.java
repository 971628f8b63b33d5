package headgate.verifier.judge;

/**
 * A rule that broke: a fault of this program, never of the head.
 *
 * @param ruleId the rule
 * @param error what it threw
 */
public record RuleFault(String ruleId, RuntimeException error) {}
