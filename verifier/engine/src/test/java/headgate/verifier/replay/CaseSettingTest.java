package headgate.verifier.replay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import headgate.api.vocabulary.Operation;
import headgate.api.vocabulary.PlantClass;
import headgate.runtime.cropplan.CropPlan;
import headgate.verifier.check.Case;
import headgate.verifier.check.Cases;
import headgate.verifier.stand.PlannedStand;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What becomes of plugs follows from the crop plan, and what nobody says is taken as perfect and said. */
class CaseSettingTest {

    private static final CropPlan.Quality QUALITY = new CropPlan.Quality(0.1, 0.05, 0.9, 0.8);

    private static Cases planting(Optional<CropPlan.Quality> quality) {
        return Cases.planting().plugs(Optional.of(new CropPlan.Plugs(0.03, 0.08, 0.04, quality)));
    }

    @Test
    void plugsAreAsTheCropPlanSays() {
        Case subject = planting(Optional.of(QUALITY)).build();

        CaseSetting setting = CaseSetting.of(subject, 1);

        double spread = subject.heads()
                .get(0)
                .sheet()
                .orElseThrow()
                .accuracy()
                .standardUncertainty()
                .value();
        assertThat(setting.setting().plugs()).isEqualTo(new PlugQuality(0.1, 0.05, 0.9, 0.8, spread));
        assertThat(setting.missing()).noneMatch(clause -> clause.contains("cells"));
    }

    @Test
    void perfectPlugsAreAssumedLoudly() {
        CaseSetting setting = CaseSetting.of(planting(Optional.empty()).build(), 1);

        assertThat(setting.setting().plugs().emptyCells()).isZero();
        assertThat(setting.setting().plugs().upright()).isEqualTo(1);
        assertThat(setting.missing())
                .contains(
                        "the crop plan does not say how many cells are empty or hold two plants, and how many plugs stand"
                                + " upright and covered");
    }

    @Test
    void nobodyIsAskedForPlugsWhereNoneAreSet() {
        assertThat(CaseSetting.of(Cases.weeding().build(), 1).missing()).noneMatch(clause -> clause.contains("cells"));
    }

    /** Established = set x upright x covered: of cells that hold a plant, 0.9 x 0.9 x 0.8 = 0.648 of all places reached. */
    @Test
    void establishedIsSetTimesUprightTimesCovered() {
        Case subject = planting(Optional.of(QUALITY))
                .wanted(Operation.SET_PLUGS, 0.05, 0.5, Optional.empty())
                .build();
        CaseSetting setting = CaseSetting.of(subject, 1);
        AnswerBook book = new AnswerBook(setting.setting().tools(), setting.heads(), 0, Long.MAX_VALUE);
        Replay replay = new Replay(
                setting.setting(), PlantSource.of(PlannedStand.of(subject.plan().value(), 400, 1)), book);
        assertThat(ReplayRun.run(List.of(replay), book, 1)).isTrue();
        ReplayOutcome outcome = replay.outcome().orElseThrow();

        assertThat(outcome.reached()).isGreaterThanOrEqualTo(800);
        // The magazines hold 800. Three standard deviations of 0.648 from 800: 0.051; of 0.1: 0.032.
        assertThat((double) outcome.successful() / outcome.reached()).isCloseTo(0.648, within(0.051));
        assertThat((double) outcome.planting().empty() / outcome.planting().actions())
                .isCloseTo(0.1, within(0.032));
    }

    /** Of broadleaf and grass, as frequent as one another, all and a half: three quarters of what is reached. */
    @Test
    void treatedWeedsGrowOnAsOftenAsTheCropPlanSays() {
        Case subject = Cases.weeding()
                .success(new CropPlan.Success(PlantClass.BROADLEAF, 1.0), new CropPlan.Success(PlantClass.GRASS, 0.5))
                .build();
        CaseSetting setting = CaseSetting.of(subject, 1);
        AnswerBook book = new AnswerBook(setting.setting().tools(), setting.heads(), 0.1, Long.MAX_VALUE);
        Replay replay = new Replay(
                setting.setting(), PlantSource.of(PlannedStand.of(subject.plan().value(), 1500, 1)), book);
        assertThat(ReplayRun.run(List.of(replay), book, 1)).isTrue();
        ReplayOutcome outcome = replay.outcome().orElseThrow();

        assertThat(setting.missing()).noneMatch(clause -> clause.contains("grow on"));
        assertThat(outcome.reached()).isGreaterThanOrEqualTo(1000);
        // Three standard deviations of 0.75 from 1000.
        assertThat((double) outcome.successful() / outcome.reached()).isCloseTo(0.75, within(0.041));
        assertThat(outcome.missed(Miss.IN_VAIN)).isEqualTo(outcome.reached() - outcome.successful());
        assertThat(outcome.missed().values().stream().mapToLong(n -> n).sum())
                .isEqualTo(outcome.targets() - outcome.successful());
    }

    @Test
    void weedsOfWhichNobodyKnowsAreTakenNotToGrowOnLoudly() {
        CaseSetting setting = CaseSetting.of(
                Cases.weeding()
                        .success(new CropPlan.Success(PlantClass.BROADLEAF, 0.9))
                        .build(),
                1);

        assertThat(setting.missing()).contains("the crop plan does not say how many treated weeds grow on: grass");
        assertThat(setting.setting().success().of(PlantClass.GRASS)).isEqualTo(1);
        assertThat(setting.setting().success().of(PlantClass.BROADLEAF)).isEqualTo(0.9);
    }
}
