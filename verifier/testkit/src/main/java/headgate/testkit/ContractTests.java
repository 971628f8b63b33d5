package headgate.testkit;

import headgate.api.sheet.HeadSheet;
import headgate.runtime.answers.HeadAnswers;
import headgate.runtime.answers.HeadKind;
import headgate.verifier.behaviour.Behaviour;
import headgate.verifier.behaviour.ProbeRun;
import headgate.verifier.behaviour.ProbeSetting;
import headgate.verifier.behaviour.RowBehaviour;
import headgate.verifier.behaviour.Tally;
import headgate.verifier.behaviour.Violation;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.AssertionFailureBuilder;
import org.junit.jupiter.api.DynamicTest;

/** Turns the traits of a head, wherever it runs, into tests. */
public final class ContractTests {

    private ContractTests() {}

    /**
     * Looks for every trait.
     *
     * @param head where to ask
     * @param second another instance, which does not remember what the first one said
     * @param setting where the head is probed
     * @param sheetAgain the sheet of a later call
     * @return the tallies
     * @throws IllegalStateException if the head is neither a spot head nor a continuous head, or both
     */
    public static List<Tally> tallies(
            HeadAnswers head, HeadAnswers second, ProbeSetting setting, HeadSheet sheetAgain) {
        if (head.kind() == HeadKind.BOTH || head.kind() == HeadKind.NEITHER) {
            throw new IllegalStateException("a head must be either a SpotHead or a ContinuousHead");
        }
        HeadSheet sheet = head.sheet();
        List<Tally> tallies = new ArrayList<>();
        if (head.kind() == HeadKind.SPOT) {
            ProbeRun run = ProbeRun.ask(sheet, head, setting);
            tallies.addAll(Behaviour.examine(run));
            tallies.add(Behaviour.purity(run, second));
        } else {
            tallies.addAll(RowBehaviour.examine(sheet, head, second, setting));
        }
        tallies.add(Behaviour.sheetStays(sheet, sheetAgain));
        return tallies;
    }

    /**
     * Makes a test of each tally. A trait that was looked at nowhere fails: nothing is known about it.
     *
     * @param tallies the tallies
     * @return the tests
     */
    public static Stream<DynamicTest> of(List<Tally> tallies) {
        return tallies.stream()
                .map(tally -> DynamicTest.dynamicTest(
                        tally.trait().id() + ": " + tally.trait().sentence() + " (looked at " + tally.examined() + ")",
                        () -> hold(tally)));
    }

    private static void hold(Tally tally) {
        if (tally.examined() == 0) {
            throw AssertionFailureBuilder.assertionFailure()
                    .message(tally.trait().id() + ": nothing was found to look at, so nothing is known; an action must"
                            + " have phases that show it")
                    .build();
        }
        if (tally.broken() > 0) {
            throw AssertionFailureBuilder.assertionFailure()
                    .message("broken " + tally.broken() + " times in " + tally.examined() + ", first:\n"
                            + tally.first().stream().map(Violation::report).collect(Collectors.joining("\n")))
                    .build();
        }
    }
}
