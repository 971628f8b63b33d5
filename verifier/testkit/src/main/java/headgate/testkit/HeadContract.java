package headgate.testkit;

import headgate.api.head.ToolHead;
import headgate.api.sheet.HeadSheet;
import headgate.verifier.behaviour.ProbeSetting;
import headgate.verifier.behaviour.Tally;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;
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
        HeadSheet sheet = head.sheet();
        return ContractTests.tallies(head, second, setting(sheet), head.sheet());
    }

    /** {@return one test a trait} */
    @TestFactory
    final Stream<DynamicTest> keepsItsContract() {
        return ContractTests.of(tallies());
    }
}
