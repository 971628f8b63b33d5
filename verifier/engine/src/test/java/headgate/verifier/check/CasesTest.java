package headgate.verifier.check;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.api.answer.Action;
import headgate.api.answer.Phase;
import headgate.api.shape.Interval;
import headgate.api.shape.Point3;
import headgate.api.task.Velocity;
import headgate.api.vocabulary.PlantClass;
import headgate.api.vocabulary.SoilClass;
import headgate.runtime.answers.SpotAnswer;
import headgate.runtime.task.LatticeSpotTask;
import headgate.verifier.setup.Setup;
import headgate.verifier.setup.Station;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class CasesTest {

    @Test
    void eachLaneHasItsArmAndTheHeightsThatHandArithmeticGives() {
        Setup setup = Setup.of(Cases.weeding().build());

        assertThat(setup.stations()).extracting(s -> s.arm().id()).containsExactly("a1", "a2", "a3", "a4");
        assertThat(setup.stations())
                .extracting(s -> s.mount().y())
                .containsExactly(-750_000L, -250_000L, 250_000L, 750_000L);
        // Reach down 0.6 m less depth 0.02 and ground 0.02: 0.56 m. A weed of 0.15, a gap of 0.02, ground 0.02 and
        // material
        // down to -0.2 m: 0.39 m.
        assertThat(setup.stations()).extracting(Station::height).allSatisfy(h -> assertThat(h.allowed())
                .isEqualTo(Optional.of(new Interval(390_000, 560_000))));
    }

    @Test
    void theDefaultActionGoesWithTheGround() {
        HeadUnderTest head = Cases.weeding().head();
        LatticeSpotTask task = LatticeSpotTask.nearest(
                Point3.ofMetres(0.4, 0.0, -0.5),
                Velocity.ofMetresPerSecond(-0.2, 0),
                PlantClass.GRASS,
                0.004,
                0.05,
                SoilClass.MEDIUM,
                0.2);

        Action action = ((SpotAnswer.Answered) head.answers().orElseThrow().act(task)).action();

        // 0.2 m/s for 0.5 s, 0.75 s and 1.0 s; 0.01 m over the ground, 0.02 m in it, and out again.
        assertThat(action.phases())
                .extracting(Phase::toolPoint)
                .containsExactly(
                        Point3.ofMetres(0.3, 0.0, -0.49),
                        Point3.ofMetres(0.25, 0.0, -0.52),
                        Point3.ofMetres(0.2, 0.0, -0.49),
                        Point3.ofMetres(0.25, 0.0, -0.2));
        assertThat(action.duration()).isEqualTo(1.5);
    }
}
