package headgate.verifier.report.text;

import headgate.verifier.check.Outcome;
import headgate.verifier.judge.Verdict;

/** How words are set off on a terminal. A style may only wrap a word: it always says the same thing too. */
public interface TextStyle {

    /** Nothing but the words. */
    TextStyle PLAIN = new TextStyle() {};

    /**
     * Sets off the verdict.
     *
     * @param verdict the verdict
     * @param words its words
     * @return the words, wrapped or not
     */
    default String verdict(Verdict verdict, String words) {
        return words;
    }

    /**
     * Sets off an outcome.
     *
     * @param outcome the outcome
     * @param words its words
     * @return the words, wrapped or not
     */
    default String outcome(Outcome outcome, String words) {
        return words;
    }
}
