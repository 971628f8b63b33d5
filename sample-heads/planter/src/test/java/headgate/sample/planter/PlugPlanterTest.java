package headgate.sample.planter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import headgate.api.answer.Action;
import headgate.api.answer.Contact;
import headgate.api.answer.Phase;
import headgate.api.shape.Point3;
import headgate.api.shape.Prism;
import headgate.api.task.Velocity;
import headgate.api.vocabulary.PlantClass;
import headgate.api.vocabulary.PostureName;
import headgate.api.vocabulary.SoilClass;
import headgate.runtime.task.LatticeSpotTask;
import org.junit.jupiter.api.Test;

/** The planter's figures, worked by hand from its axes. */
class PlugPlanterTest {

    private final PlugPlanter planter = new PlugPlanter();

    /**
     * A plug 80 mm high and 30 mm wide at 0.15 m/s, mount 0.60 m over the ground. Rest-to-rest motion, L* = v²/a:
     *
     * <ul>
     *   <li>insert from -570 to -650 mm: under L* = 0.12 m, 2 sqrt(0.08 / 12) = 0.1633, so 0.17 s
     *   <li>release: 150 ms + 1 ms/mm x 30 mm = 0.18 s; firm in medium soil 0.16 s
     *   <li>lift off to -500 mm: 0.15 / 1.2 + 1.2 / 12 = 0.225, so 0.23 s
     *   <li>approach: at 0.28 s the place is at 120 - 42 = 78 mm, sqrt(18² + 10² + 190²) = 191.1 mm from ready, and
     *       0.1911 / 1.2 + 1.2 / 10 = 0.2793 s
     *   <li>return from (-33, 10, -500): sqrt(93² + 10² + 120²) = 152.1 mm, 0.1521 / 1.2 + 0.12 = 0.2468, so 0.25 s
     *   <li>load 0.14 s
     * </ul>
     */
    @Test
    void takesTheTimesWorkedByHand() {
        Action action = planter.act(plug(120, 10, -0.15));
        assertThat(action.phases().stream().map(Phase::name))
                .containsExactly("approach", "insert", "release", "firm", "lift off", "return", "load");
        assertThat(action.phases().stream().map(Phase::duration))
                .containsExactly(0.28, 0.17, 0.18, 0.16, 0.23, 0.25, 0.14);
        assertThat(action.duration()).isCloseTo(1.41, within(1e-12));
        assertThat(action.phases().get(4).toolPoint()).isEqualTo(Point3.ofMetres(-0.033, 0.01, -0.50));
    }

    /** In the ground 0.74 s: at 0.18 m/s that is 133 mm of the 240 mm of reach, and 1.60 s is under 0.30 / 0.18 s. */
    @Test
    void keepsUpWithLettuceAtThirtyCentimetres() {
        double inGround = planter.act(plug(140, 10, -0.18)).phases().stream()
                .filter(p -> p.contact().equals(Contact.SOIL))
                .mapToDouble(Phase::duration)
                .sum();
        assertThat(inGround).isCloseTo(0.74, within(1e-12));
        assertThat(0.18 * inGround).isLessThan(0.24);
        assertThat(planter.sheet().actionTime().orElseThrow().most().value()).isLessThan(0.30 / 0.18);
    }

    /** The empty tray slides out over the neighbour's lane: on arms 0.90 m apart 0.90 - 0.29 - 0.60 = 0.01 m is left. */
    @Test
    void reachesOverTheNeighbourByItsOutrigger() {
        long left = extreme(1);
        long right = extreme(-1);
        assertThat(left).isEqualTo(600_000);
        assertThat(right).isEqualTo(-290_000);
        assertThat(900_000 + right - left).isEqualTo(10_000);
        assertThat(1_200_000 + right - left).isEqualTo(310_000);
    }

    private long extreme(int side) {
        return side
                * planter.sheet().posture(PostureName.WORK).orElseThrow().fixed().prisms().stream()
                        .map(Prism::outline)
                        .flatMap(o -> o.vertices().stream())
                        .mapToLong(p -> side * p.y())
                        .max()
                        .orElseThrow();
    }

    @Test
    void saysWhyItDeclines() {
        assertThat(planter.act(plug(120, 50, -0.15)).declined()).contains("the place is beside the reach");
        assertThat(planter.act(plug(400, 10, -0.15)).declined())
                .contains("the place is not yet in reach, or leaves it before the plug is set");
        assertThat(planter.act(plug(-80, 10, -0.15)).declined()).contains("the place is out of reach");
        assertThat(planter.act(plug(120, 10, -0.30)).declined()).contains("the ground moves too slowly or too fast");
    }

    private static LatticeSpotTask plug(int x, int y, double groundVelocity) {
        return LatticeSpotTask.nearest(
                Point3.ofMetres(x / 1000.0, y / 1000.0, -0.60),
                Velocity.ofMetresPerSecond(groundVelocity, 0),
                PlantClass.PLUG,
                0.030,
                0.08,
                SoilClass.MEDIUM,
                0.20);
    }
}
