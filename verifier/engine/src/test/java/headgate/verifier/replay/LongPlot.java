package headgate.verifier.replay;

import headgate.api.shape.Outline;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** A plot of many plants under four arms; run in a process of its own, to see what memory it needs. */
final class LongPlot {

    private LongPlot() {}

    static ReplayOutcome run(long plants, int readAhead) {
        // Times follow from the stem: 2, 4 or 6 mm take 0.2, 0.4 or 0.6 s in the ground.
        TestHead head = new TestHead(
                Outline.rectangle(0.1, 0.4, -0.12, 0.12), t -> 0.2, t -> 100 * t.stemDiameter(), t -> 0.3, 0.005);
        List<ReplayArm> arms = new ArrayList<>();
        IntStream.range(0, 4).forEach(i -> arms.add(TestHead.arm("arm " + i, 450_000L * i)));
        ReplaySetting setting = head.setting(0.2, 1, arms.toArray(new ReplayArm[0]));
        AnswerBook book = new AnswerBook(setting.tools(), List.of(head.answers()), 0, Long.MAX_VALUE);
        Replay.Options usual = Replay.Options.USUAL;
        Replay replay = new Replay(
                setting,
                new RandomPlot(1, plants, 16, 4, 0.45, 0.1),
                book,
                new Replay.Options(usual.dispatch(), usual.observer(), false, readAhead));
        if (!ReplayRun.run(List.of(replay), book, 1)) {
            throw new AssertionError("the replay did not end");
        }
        return replay.outcome().orElseThrow();
    }

    /**
     * Runs a plot and writes how many plants were reached.
     *
     * @param args the number of plants
     */
    public static void main(String[] args) {
        ReplayOutcome outcome = run(Long.parseLong(args[0]), Replay.Options.USUAL.readAhead());
        System.out.println(outcome.targets() + " " + outcome.reached() + " "
                + Runtime.getRuntime().maxMemory());
    }
}
