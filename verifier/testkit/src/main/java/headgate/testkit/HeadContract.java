package headgate.testkit;

import headgate.api.head.ToolHead;
import headgate.api.sheet.HeadSheet;
import headgate.runtime.answers.HeadKind;
import headgate.verifier.behaviour.Behaviour;
import headgate.verifier.behaviour.ProbeRun;
import headgate.verifier.behaviour.ProbeSetting;
import headgate.verifier.behaviour.RowBehaviour;
import headgate.verifier.behaviour.Tally;
import headgate.verifier.behaviour.Violation;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.AssertionFailureBuilder;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * The contract of a head as tests: extend it with one line, and every trait of the head becomes a test.
 *
 * <pre>{@code
 * class GripperContractTest extends HeadContract {
 *     GripperContractTest() {
 *         super(Gripper::new);
 *     }
 * }
 * }</pre>
 *
 * <p>The head is asked at every corner of its work range, along whole paths, and at a sequence of tasks spread over the
 * work range, in every way in which it may be fitted. The name of each test says what is owed and how often it was looked
 * at. A trait that was looked at nowhere fails. The verifier makes the same checks with the carriage's own mount heights.
 */
public abstract class HeadContract {

    private final Supplier<? extends ToolHead> maker;

    /**
     * Takes the head's constructor.
     *
     * @param maker makes a new instance at each call, as a carriage does for each arm
     */
    protected HeadContract(Supplier<? extends ToolHead> maker) {
        this.maker = maker;
    }

    /**
     * Where the head is probed. Override it to use the mount heights and the canopy of your own carriage and crop.
     *
     * @param sheet what the head says of itself
     * @return mounted as high as the reach allows, over ground that moves by 40 mm either way
     */
    protected ProbeSetting setting(HeadSheet sheet) {
        return ProbeSetting.alone(sheet);
    }

    /**
     * Looks for every trait.
     *
     * @return the tallies
     * @throws IllegalStateException if the head is neither a spot head nor a continuous head, or both
     */
    protected final List<Tally> tallies() {
        LocalHead head = new LocalHead(maker.get());
        LocalHead second = new LocalHead(maker.get());
        if (head.kind() == HeadKind.BOTH || head.kind() == HeadKind.NEITHER) {
            throw new IllegalStateException("a head must be either a SpotHead or a ContinuousHead");
        }
        HeadSheet sheet = head.sheet();
        ProbeSetting setting = setting(sheet);
        List<Tally> tallies = new ArrayList<>();
        if (head.kind() == HeadKind.SPOT) {
            ProbeRun run = ProbeRun.ask(sheet, head, setting);
            tallies.addAll(Behaviour.examine(run));
            tallies.add(Behaviour.purity(run, second));
        } else {
            tallies.addAll(RowBehaviour.examine(sheet, head, second, setting));
        }
        tallies.add(Behaviour.sheetStays(sheet, head.sheet()));
        return tallies;
    }

    /** {@return one test a trait} */
    @TestFactory
    final Stream<DynamicTest> keepsItsContract() {
        return tallies().stream()
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
