package headgate.verifier.rules.throughput;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import headgate.api.vocabulary.Operation;
import headgate.api.vocabulary.PlantClass;
import headgate.runtime.carriage.Arm;
import headgate.runtime.cropplan.CropPlan;
import headgate.runtime.stand.Plant;
import headgate.verifier.check.Case;
import headgate.verifier.check.Cases;
import headgate.verifier.check.Edit;
import headgate.verifier.check.Finding;
import headgate.verifier.check.Outcome;
import headgate.verifier.check.Stand;
import headgate.verifier.remedy.PutMoreArms;
import headgate.verifier.remedy.SetSpeed;
import headgate.verifier.remedy.ShortenReturn;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Weeds in a row under the arm at y = -0.75 m, one at a time. The reach is 0.3 m long; an action takes 1.5 s: 0.5 s to the
 * plant, 0.5 s in the soil, 0.5 s back. So one arm treats every weed of a row if they come no faster than one in 1.5 s.
 */
class CoversTheStandTest {

    private static final CoversTheStand RULE = new CoversTheStand();

    /** Everything is seen, and three of four weeds suffice. */
    private static Case weeding(double speed, double apart, int number) {
        return Cases.weeding()
                .weeds(2.0, 0.2, Optional.of(1.0), Optional.of(0.0))
                .wanted(Operation.PULL_WEEDS, speed, 0.75, Optional.empty())
                .build()
                .withStand(row(apart, number));
    }

    private static Stand row(double apart, int number) {
        List<Plant> plants = new ArrayList<>();
        for (int i = 0; i < number; i++) {
            plants.add(new Plant(
                    new Plant.Position(Math.round(i * apart * 1e6), -750_000), PlantClass.BROADLEAF, 0.005, 0.05, 0));
        }
        return Stand.recorded("row.csv", "0".repeat(64), plants);
    }

    private static Finding only(Case subject) {
        List<Finding> findings = RULE.check(subject);
        assertThat(findings).hasSize(1);
        return findings.get(0);
    }

    @Test
    void doesNotApplyWithoutAStand() {
        assertThat(only(Cases.weeding().build()).outcome()).isEqualTo(Outcome.NOT_APPLICABLE);
    }

    @Test
    void passesWhereTheArmHasTimeForEveryWeed() {
        // 0.3 m apart at 0.2 m/s: one in 1.5 s.
        Finding finding = only(weeding(0.2, 0.3, 200));

        // Held to the wish is what sixty blocks without a miss leave sure: 0.05^(1/60).
        assertThat(finding.comparison().orElseThrow().measured().value()).isCloseTo(0.9513, within(5e-5));
        // The carriage of the tests has no sensors, and that is said.
        assertThat(finding.outcome()).isEqualTo(Outcome.CAUTION);
        assertThat(finding.message())
                .startsWith(
                        "At 0.2 m/s, 100 % of 200 target plants are treated (one plot, 60 blocks), where 75 % are wanted")
                .contains("no sensors");
    }

    @Test
    void failsWhereWeedsComeTwiceAsFast() {
        // 0.15 m apart: one in 0.75 s, so that the arm has time for every second one.
        Finding finding = only(weeding(0.2, 0.15, 400));

        assertThat(finding.outcome()).isEqualTo(Outcome.FAIL);
        // 200 of 400 leave at most 0.5 + 1.645 x 0.025 = 0.541 sure, and a little more since plants are whole.
        assertThat(finding.comparison().orElseThrow().measured().value()).isEqualTo(0.543, within(0.003));
        assertThat(finding.message()).contains("most for this reason: arm busy");
    }

    @Test
    void proposesASpeedAndAShorterActionThatPass() {
        Case subject = weeding(0.2, 0.15, 400);

        List<Edit> proposals = only(subject).proposals();

        // Below one in 1.5 s the arm treats 0.15 / (1.5 v) of the weeds, which is 0.75 at 0.133 m/s.
        assertThat(proposals.get(0)).isInstanceOf(SetSpeed.class);
        assertThat(((SetSpeed) proposals.get(0)).speed()).isBetween(0.120, 0.133);
        assertThat(only(proposals.get(0).apply(subject)).outcome()).isEqualTo(Outcome.CAUTION);
        // At 0.2 m/s coverage is 0.75 / T: one second, half a second less than now, and the bound asks for some more.
        // But
        // only 0.5 s follow the last contact.
        assertThat(proposals).hasSizeLessThanOrEqualTo(2);
        for (Edit edit : proposals) {
            assertThat(only(edit.apply(subject)).outcome()).isNotEqualTo(Outcome.FAIL);
        }
    }

    @Test
    void proposesAShorterActionWhereThatIsEnough() {
        // One in 1.25 s: 1.25 / 1.5 = 0.83 of the weeds; 0.9 are wanted, so an action may take 1.39 s at most.
        Case subject = Cases.weeding()
                .weeds(2.0, 0.2, Optional.of(1.0), Optional.of(0.0))
                .wanted(Operation.PULL_WEEDS, 0.2, 0.9, Optional.empty())
                .build()
                .withStand(row(0.25, 400));

        Finding finding = only(subject);

        assertThat(finding.outcome()).isEqualTo(Outcome.FAIL);
        assertThat(finding.proposals())
                .filteredOn(ShortenReturn.class::isInstance)
                .singleElement()
                .satisfies(edit -> {
                    assertThat(((ShortenReturn) edit).seconds()).isBetween(0.1, 0.3);
                    assertThat(only(edit.apply(subject)).outcome()).isEqualTo(Outcome.CAUTION);
                });
    }

    @Test
    void proposesOneMoreArmOnTheLane() {
        // Weeds come twice as fast as one arm can take them. A spare arm on the other beam takes what the first misses.
        Case subject = Cases.weeding()
                .weeds(2.0, 0.2, Optional.of(1.0), Optional.of(0.0))
                .wanted(Operation.PULL_WEEDS, 0.2, 0.95, Optional.empty())
                .carriage(c -> {
                    List<Arm> arms = new ArrayList<>(c.arms());
                    arms.add(Cases.arm("spare", "rear", -0.75));
                    return c.withArms(arms);
                })
                .build()
                .withStand(row(0.15, 400));

        List<Edit> proposals = only(subject).proposals();

        assertThat(proposals)
                .filteredOn(PutMoreArms.class::isInstance)
                .singleElement()
                .satisfies(edit -> {
                    assertThat(edit.text()).isEqualTo("let one more arm help: arm spare on lane 1");
                    assertThat(only(edit.apply(subject)).outcome()).isEqualTo(Outcome.CAUTION);
                });
    }

    private static Case wanting(double coverage) {
        return Cases.weeding()
                .weeds(2.0, 0.2, Optional.of(1.0), Optional.of(0.0))
                .wanted(Operation.PULL_WEEDS, 0.2, coverage, Optional.empty())
                .build()
                .withStand(row(0.3, 50));
    }

    @Test
    void holdsExactlyAtTheLimit() {
        // All are treated. Fifteen blocks without a miss leave 0.05^(1/15) sure, and that is wanted; or a little more.
        double sure = StrictMath.pow(1 - 0.95, 1.0 / 15);
        Finding finding = only(wanting(sure));

        assertThat(finding.outcome()).isEqualTo(Outcome.CAUTION);
        assertThat(finding.comparison().orElseThrow().margin()).isEqualTo(0.0);
        assertThat(only(wanting(Math.nextUp(sure))).outcome()).isEqualTo(Outcome.UNDECIDED);
    }

    @Test
    void isUndecidedWhereAShortPlotSaysTooLittle() {
        // Half of the weeds in one half of the plot, all in the other: about 0.7 with little to go by.
        List<Plant> plants = new ArrayList<>();
        for (Plant plant : row(0.15, 8).plants().of(0, 0)) {
            plants.add(plant);
        }
        for (int i = 0; i < 5; i++) {
            plants.add(new Plant(
                    new Plant.Position(3_000_000 + i * 600_000L, -750_000), PlantClass.BROADLEAF, 0.005, 0.05, 0));
        }
        Case subject = Cases.weeding()
                .weeds(2.0, 0.2, Optional.of(1.0), Optional.of(0.0))
                .wanted(Operation.PULL_WEEDS, 0.2, 0.75, Optional.empty())
                .build()
                .withStand(Stand.recorded("short.csv", "0".repeat(64), plants));

        assertThat(only(subject).outcome()).isEqualTo(Outcome.UNDECIDED);
    }

    /**
     * Crop plants with a protected radius of 50 mm, each a little ahead of a weed. The ram is 40 mm wide and stands in the soil
     * over the weed, so it is 20 mm nearer to the crop plant than the weed is.
     */
    private static List<Finding> besideCrop(double ahead) {
        List<Plant> plants = new ArrayList<>();
        for (int i = 0; i < 50; i++) {
            plants.add(new Plant(new Plant.Position(300_000L * i, -750_000), PlantClass.BROADLEAF, 0.005, 0.05, 0));
            plants.add(new Plant(
                    new Plant.Position(300_000L * i + Math.round(ahead * 1e6), -750_000), Plant.CROP, 0, 0.1, 0.05));
        }
        return RULE.check(Cases.weeding()
                .crop(new CropPlan.Crop(0.1, 0.05, 0.05))
                .weeds(2.0, 0.2, Optional.of(1.0), Optional.of(0.0))
                .wanted(Operation.PULL_WEEDS, 0.2, 0.75, Optional.empty())
                .build()
                .withStand(Stand.recorded("beside.csv", "0".repeat(64), plants)));
    }

    @Test
    void failsWhereTheCropIsHurt() {
        assertThat(besideCrop(0.06)).last().satisfies(finding -> {
            assertThat(finding.outcome()).isEqualTo(Outcome.FAIL);
            assertThat(finding.message()).startsWith("Of the crop's plants 100 % are lost to the heads");
        });
    }

    @Test
    void passesWhereTheCropIsFarEnough() {
        // 0.15 - 0.02 m is more than 50 mm and twice the head's own uncertainty of 2 mm.
        assertThat(besideCrop(0.15)).last().satisfies(finding -> {
            assertThat(finding.outcome()).isEqualTo(Outcome.PASS);
            assertThat(finding.comparison().orElseThrow().measured().value()).isEqualTo(0.0);
        });
    }

    @Test
    void isUndecidedWithoutAPlantToTreat() {
        assertThat(only(weeding(0.2, 0.3, 0)).outcome()).isEqualTo(Outcome.UNDECIDED);
    }

    @Test
    void boundsStandsFromSeeds() {
        Case subject = Cases.weeding()
                .weeds(2.0, 0.2, Optional.of(1.0), Optional.of(0.0))
                .wanted(Operation.PULL_WEEDS, 0.2, 0.75, Optional.empty())
                .build()
                .withStand(Stand.madeUp("made up", (density, seed) -> row(0.3 + 0.01 * (seed % 5), 60)
                        .plants()
                        .of(density, seed)));

        assertThat(only(subject).message()).contains("100 % of 480 target plants are treated (8 seeds)");
    }
}
