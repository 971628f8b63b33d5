package headgate.app.command;

import headgate.app.check.Checked;
import headgate.app.console.Console;
import headgate.app.console.Paint;
import headgate.verifier.check.Outcome;
import headgate.verifier.judge.Verdict;
import headgate.verifier.report.text.TextReport;
import headgate.verifier.report.text.TextStyle;
import java.util.List;

/**
 * Tells people what came of a check.
 *
 * @param console where to tell it
 */
record CheckTalk(Console console) {

    /**
     * Tells the result.
     *
     * @param checked what came of the check
     * @param written the files that were written
     */
    void tell(Checked checked, List<String> written) {
        checked.notes().forEach(note -> console.warn("headgate: worth a look: " + note));
        console.out().print(TextReport.of(checked.report(), written, new Painted(console)));
    }

    /**
     * Tells which rules broke. That is for whoever mends the program, so the stack trace belongs to it.
     *
     * @param checked what came of the check
     */
    void tellFaults(Checked checked) {
        checked.judgement().faults().forEach(fault -> {
            console.warn("headgate: the rule " + fault.ruleId() + " broke: the program is at fault, not your files."
                    + " Please report it with the lines below.");
            fault.error().printStackTrace(console.err());
        });
    }

    /** Words in colour, if the console has colour. */
    private record Painted(Console console) implements TextStyle {

        @Override
        public String verdict(Verdict verdict, String words) {
            return console.paint(
                    verdict.isFit() ? Paint.GREEN : verdict == Verdict.UNDECIDED ? Paint.YELLOW : Paint.RED, words);
        }

        @Override
        public String outcome(Outcome outcome, String words) {
            return switch (outcome) {
                case PASS -> console.paint(Paint.GREEN, words);
                case FAIL -> console.paint(Paint.RED, words);
                case CAUTION, UNDECIDED -> console.paint(Paint.YELLOW, words);
                case NOT_APPLICABLE -> words;
            };
        }
    }
}
