package headgate.sample.gripper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import headgate.api.answer.Action;
import headgate.api.answer.Contact;
import headgate.api.answer.Phase;
import headgate.api.shape.Point3;
import headgate.api.task.Velocity;
import headgate.api.vocabulary.PlantClass;
import headgate.api.vocabulary.SoilClass;
import headgate.runtime.task.LatticeSpotTask;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The gripper's figures, worked by hand from its axes. */
class GripperTest {

    private final Gripper gripper = new Gripper();

    /**
     * A weed 60 mm high at 0.20 m/s, mount 0.53 m over the ground. Rest-to-rest motion, L* = v²/a:
     *
     * <ul>
     *   <li>descend from -220 to -440 mm: 0.22 / 1.5 + 1.5 / 15 = 0.2467, so 0.25 s
     *   <li>insert to -550 mm: 0.11 m is under L* = 0.15 m, 2 sqrt(0.11 / 15) = 0.1713, so 0.18 s
     *   <li>close: 80 ms + 5 ms/mm x 4 mm = 0.10 s; pull: 0.11 / 0.36 + 0.05 = 0.3556, so 0.36 s
     *   <li>approach: first tick at which there is time: 0.19 s; then the weed is at 400 - 200 x 0.44 = 312 mm,
     *       hypot(52, 50) = 72.1 mm from ready, and 2 sqrt(0.0721 / 8) = 0.1899 s
     *   <li>lift from -440 to -220 mm: 0.25 s; aside from (184, 50) to (260, 130) mm: 2 sqrt(0.1103 / 8) = 0.2349, so
     *       0.24 s; return 0.13 / 1.0 + 1.0 / 8 = 0.255, so 0.26 s
     * </ul>
     */
    @Test
    void takesTheTimesWorkedByHand() {
        Action action = gripper.act(weed(400, 50, -0.20));
        assertThat(action.phases().stream().map(Phase::name))
                .containsExactly(
                        "approach", "descend", "insert", "close", "pull", "lift", "carry aside", "release", "return");
        assertThat(action.phases().stream().map(Phase::duration))
                .containsExactly(0.19, 0.25, 0.18, 0.10, 0.36, 0.25, 0.24, 0.08, 0.26);
        assertThat(action.duration()).isCloseTo(1.91, within(1e-12));
        assertThat(action.phases().get(1).toolPoint()).isEqualTo(Point3.ofMetres(0.312, 0.05, -0.44));
        assertThat(action.phases().get(4).toolPoint()).isEqualTo(Point3.ofMetres(0.184, 0.05, -0.44));
    }

    /** In the ground for 0.18 + 0.10 + 0.36 = 0.64 s; the start window lasts 0.34 / 0.20 - 0.64 = 1.06 s. */
    @Test
    void startsAnywhereInTheWindowAndNowhereElse() {
        long accepted = 0;
        for (int x = -300; x <= 900; x++) {
            accepted += gripper.act(weed(x, 50, -0.20)).declined().isEmpty() ? 1 : 0;
        }
        // 1.06 s x 200 mm/s = 212 mm of starts at one approach time; waiting up to 0.45 s before contact adds to it.
        double window = (0.34 / 0.20 - 0.64) * 200;
        assertThat(window).isCloseTo(212.0, within(1e-9));
        // At the entry the approach takes at most 0.45 s; at the exit, hypot(10, 50) = 51 mm from ready, 0.16 s or 32
        // mm.
        assertThat((double) accepted).isBetween(window, window + 0.45 * 200);
    }

    @Test
    void worksTheSameWhenTurned() {
        Action ahead = gripper.act(weed(400, 50, -0.20));
        // The reach is symmetric about the ready point at x = 260 mm, so the mirror image of 400 mm is 120 mm.
        Action behind = gripper.act(weed(120, 50, 0.20));
        assertThat(behind.phases().stream().map(Phase::duration))
                .isEqualTo(ahead.phases().stream().map(Phase::duration).toList());
    }

    @Test
    void saysWhyItDeclines() {
        assertThat(gripper.act(weed(400, 140, -0.20)).declined()).contains("the weed is beside the reach");
        assertThat(gripper.act(weed(900, 50, -0.20)).declined())
                .contains("the weed is not yet in reach, or leaves it before it is out");
        assertThat(gripper.act(weed(100, 50, -0.20)).declined()).contains("the weed is out of reach");
        assertThat(gripper.act(weed(400, 50, -0.60)).declined()).contains("the ground moves too fast");
        LatticeSpotTask weed = weed(400, 50, -0.20);
        assertThat(gripper.act(weed.at(Point3.ofMetres(0.4, 0.05, -0.59))).declined())
                .contains("the ground is too low for the ram");
        assertThat(gripper.act(weed.at(Point3.ofMetres(0.4, 0.05, -0.25))).declined())
                .contains("the weed is too tall to come down over it");
    }

    @Test
    void goesWithTheGroundWhileInIt() {
        LatticeSpotTask weed = weed(400, 50, -0.20);
        double time = 0;
        for (Phase phase : gripper.act(weed).phases()) {
            time += phase.duration();
            if (phase.contact().equals(Contact.SOIL)) {
                assertThat(phase.toolPoint().xMetres()).isCloseTo(0.4 - 0.20 * time, within(1e-6));
            }
        }
    }

    private static LatticeSpotTask weed(int x, int y, double groundVelocity) {
        return LatticeSpotTask.nearest(
                Point3.ofMetres(x / 1000.0, y / 1000.0, -0.53),
                Velocity.ofMetresPerSecond(groundVelocity, 0),
                PlantClass.BROADLEAF,
                0.004,
                0.06,
                SoilClass.MEDIUM,
                0.25);
    }

    @Test
    void holdsTheSheetItWasReviewedWith() {
        assertThat(gripper.sheet().reach().outline().orElseThrow().area()).isCloseTo(0.34 * 0.26, within(1e-12));
        assertThat(List.of(
                        gripper.sheet().empty().mass().value(),
                        gripper.sheet().actionTime().orElseThrow().most().value()))
                .containsExactly(5.2, 2.55);
    }
}
