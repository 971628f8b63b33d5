package headgate.app.command;

import headgate.app.console.Console;
import headgate.verifier.session.ReplayWatch;

/** Tells people how a replay goes on: a line beside the results for each stand, and for each 100,000 plants of a long one. */
final class ReplayTalk implements ReplayWatch {

    private static final long WORD = 100_000;

    /** Reading a stand takes a moment; so many of them take a word. */
    private static final int MANY = 100;

    private final Console console;
    private String round = "";
    private int rounds;
    private boolean last;
    private String stand = "";

    ReplayTalk(Console console) {
        this.console = console;
    }

    @Override
    public void reads(int number, int of, String name) {
        if (number % MANY == 0) {
            console.warn("headgate: " + number + " of " + of + " stands read");
        }
    }

    @Override
    public void round(String what) {
        rounds++;
        round = what;
    }

    @Override
    public void begins(int number, int of, String name) {
        stand = "stand " + number + " of " + of + " (" + name + ")";
        last = number == of;
    }

    @Override
    public void passed(long plants) {
        if (plants % WORD == 0) {
            console.warn("headgate: " + stand + ": " + plants + " plants so far");
        }
    }

    /** The first round is over each stand; what is tried after it takes one word each. */
    @Override
    public void done(boolean kept) {
        if (rounds <= 1) {
            console.warn("headgate: " + stand + (kept ? ": kept from an earlier run" : ": done"));
        } else if (last) {
            console.warn("headgate: " + round + (kept ? ": kept from an earlier run" : ": done"));
        }
    }
}
