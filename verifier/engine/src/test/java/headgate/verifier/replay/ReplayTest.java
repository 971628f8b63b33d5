package headgate.verifier.replay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import headgate.api.shape.Outline;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class ReplayTest {

    private static final Outline REACH = Outline.rectangle(0.1, 0.4, -0.1, 0.1);

    /** t_a 0.3 s, t_g 0.4 s, t_r 0.3 s at 0.2 m/s: the reach of 0.3 m is passed in 1.5 s, so the start may wait 1.1 s. */
    private final TestHead head = TestHead.fixed(REACH, 0.3, 0.4, 0.3);

    @Test
    void beginsContactJustAsThePlantEntersTheReach() {
        List<ActionObserver.Done> timeline = new ArrayList<>();
        ReplayOutcome outcome = head.run(
                head.setting(0.2, 2, TestHead.arm("a", 0)), List.of(TestHead.weed(1, 0, 0.005)), timeline::add);
        assertThat(outcome.reached()).isEqualTo(1);
        // It enters the reach at (1 - 0.4) / 0.2 = 3 s, so the action starts at 3 - 0.3 = 2.7 s and takes 1 s.
        assertThat(timeline).singleElement().satisfies(done -> {
            assertThat(done.start()).isCloseTo(2.7, within(1e-9));
            assertThat(done.contactStart()).isCloseTo(3.0, within(1e-9));
            assertThat(done.contactEnd()).isCloseTo(3.4, within(1e-9));
            assertThat(done.end()).isCloseTo(3.7, within(1e-9));
        });
    }

    @Test
    void missesTheThirdOfThreeThatComeTogetherWhenItsWindowIsOver() {
        // Starts may be at 2.7 to 3.8 s. Actions at 2.7 and 3.7 s fit; the third would start at 4.7 s.
        ReplayOutcome outcome = head.run(
                head.setting(0.2, 2, TestHead.arm("a", 0)),
                List.of(TestHead.weed(1, -0.05, 0.005), TestHead.weed(1, 0, 0.005), TestHead.weed(1, 0.05, 0.005)));
        assertThat(outcome.reached()).isEqualTo(2);
        assertThat(outcome.missed(Miss.ARM_BUSY)).isEqualTo(1);
        assertThat(outcome.coverage()).isCloseTo(2.0 / 3, within(1e-12));
    }

    @Test
    void treatsEveryPlantOfARowAtTheSpeedAtWhichEachHasItsTime() {
        // 0.2 m apart at 0.2 m/s: one a second, and an action takes one second.
        assertThat(head.run(head.setting(0.2, 2, TestHead.arm("a", 0)), TestHead.row(1000, 0.2))
                        .reached())
                .isEqualTo(1000);
    }

    @Test
    void saysWhyAPlantWasMissed() {
        ReplayArm arm = TestHead.arm("a", 0);
        assertThat(head.run(head.setting(0.2, 2, arm), List.of(TestHead.weed(1, 0.2, 0.005)))
                        .missed(Miss.NEVER_IN_REACH))
                .isEqualTo(1);
        // At 1 m/s the reach is passed in 0.3 s, and 0.4 s are needed.
        assertThat(head.run(head.setting(1, 2, arm), List.of(TestHead.weed(1, 0, 0.005)))
                        .missed(Miss.WINDOW_TOO_SHORT))
                .isEqualTo(1);
        // Known 0.2 m before the mount: 1 s before it is there, but it leaves the reach 0.1 m before the mount.
        assertThat(head.run(head.setting(0.2, 0.2, arm), List.of(TestHead.weed(1, 0, 0.005)))
                        .missed(Miss.SEEN_TOO_LATE))
                .isEqualTo(1);
    }
}
