package headgate.verifier.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import headgate.api.vocabulary.Operation;
import headgate.api.vocabulary.PlantClass;
import headgate.runtime.stand.Plant;
import headgate.verifier.check.Case;
import headgate.verifier.check.Cases;
import headgate.verifier.replay.CaseSetting;
import headgate.verifier.replay.PlantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Weeds in a row under one arm, whose action takes 1.5 s; a density of d weeds per metre comes as v d a second. */
class TrialTest {

    private static final Case SUBJECT = Cases.weeding()
            .weeds(2.0, 0.2, Optional.of(1.0), Optional.of(0.0))
            .wanted(Operation.PULL_WEEDS, 0.2, 0.75, Optional.empty())
            .build();

    private static Trial trial(double wanted, long budget) {
        return new Trial(
                CaseSetting.of(SUBJECT, 1), TrialTest::row, new TrialPlan(wanted, 0.95, 2, 4, budget, 2), false);
    }

    private static PlantSource row(double perMetre, long seed) {
        List<Plant> plants = new ArrayList<>();
        for (int i = 0; i < 200; i++) {
            long x = Math.round(i / perMetre * 1e6) + seed % 3 * 1000;
            plants.add(new Plant(new Plant.Position(x, -750_000), PlantClass.BROADLEAF, 0.005, 0.05, 0));
        }
        return PlantSource.of(plants);
    }

    @Test
    void findsTheBestSpeed() {
        // All weeds can be taken up to v = 1 / (1.5 x 4) = 0.167 m/s; then 800 of 800 leave 0.9963 sure.
        Trial.Climb climb = trial(0.99, Long.MAX_VALUE).bestSpeed(4, 0.02, 0.24).orElseThrow();
        assertThat(climb.best().orElseThrow()).isCloseTo(0.166, within(0.0011));
        assertThat(climb.cells().get(0).standing()).isEqualTo(Standing.PASSES);
    }

    @Test
    void findsTheDensityThatASpeedCanBear() {
        // At 0.2 m/s one in 1.5 s is 3.33 weeds per metre.
        Trial.Climb climb =
                trial(0.99, Long.MAX_VALUE).densityBorne(0.2, 0.5, 5).orElseThrow();
        assertThat(climb.best().orElseThrow()).isCloseTo(3.3, within(0.051));
    }

    @Test
    void failsWhereTooFewAreTreated() {
        Cell cell = trial(0.9, Long.MAX_VALUE)
                .run(List.of(new Trial.Question(0.2, 6)))
                .orElseThrow()
                .get(0);
        // 3.33 of 6.
        assertThat(cell.coverage().mean()).isCloseTo(0.556, within(0.02));
        assertThat(cell.standing()).isEqualTo(Standing.FAILS);
    }

    @Test
    void endsWhenTheBudgetIsUsedUp() {
        Trial trial = trial(0.9, 2);
        assertThat(trial.run(List.of(new Trial.Question(0.2, 6)))).isEmpty();
        assertThat(trial.exhausted()).isTrue();
        assertThat(trial.run(List.of(new Trial.Question(0.2, 1)))).isEmpty();
    }
}
