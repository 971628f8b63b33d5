package headgate.verifier.report;

/**
 * A finding that pictures mark.
 *
 * @param number the number that stands beside it in every picture that shows it
 * @param entry the finding
 */
public record Marked(int number, Entry entry) {}
