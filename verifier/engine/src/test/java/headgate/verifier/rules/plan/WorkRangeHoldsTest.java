package headgate.verifier.rules.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import headgate.api.vocabulary.PlantClass;
import headgate.api.vocabulary.SoilClass;
import headgate.runtime.cropplan.CropPlan;
import headgate.verifier.check.Cases;
import headgate.verifier.check.Edit;
import headgate.verifier.check.Finding;
import headgate.verifier.check.Outcome;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class WorkRangeHoldsTest {

    @Test
    void passesAndListsWhatWasLookedAt() {
        List<Finding> findings = check(Cases.weeding());

        assertThat(findings).hasSize(1);
        assertThat(findings.get(0).outcome()).isEqualTo(Outcome.PASS);
        assertThat(findings.get(0).examined()).isEqualTo(8);
        assertThat(findings.get(0).message())
                .isEqualTo("In range are: speed 0.2 m/s, soil medium, soil moisture 20 %, weeds broadleaf and grass,"
                        + " thinnest stem 2 mm, thickest stem 10 mm, lowest weed 100 mm, highest weed 150 mm.");
    }

    @Test
    void holdsAtTheEndsOfEveryRange() {
        List<Finding> findings = check(Cases.weeding()
                .speed(0.5)
                .soil(new CropPlan.Soil(SoilClass.FINE, 0.4, 0.02))
                .weeds(weeds(List.of(PlantClass.GRASS), 0.001, 0.012, 0.01, 0.2)));

        assertThat(findings).extracting(Finding::outcome).containsExactly(Outcome.PASS);
    }

    @Test
    void failsOnceForEachQuantityOutside() {
        List<Finding> findings = check(Cases.weeding()
                .speed(0.501)
                .soil(new CropPlan.Soil(SoilClass.of("peat"), 0.05, 0.02))
                .weeds(weeds(List.of(PlantClass.GRASS, PlantClass.ROSETTE), 0.0005, 0.013, 0.01, 0.2)));

        assertThat(findings)
                .extracting(Finding::message)
                .containsExactly(
                        "The plan's speed is 0.501 m/s, but the head is made for 0 m/s to 0.5 m/s.",
                        "The plan has soil of class peat, but the head is made for coarse and fine and medium.",
                        "The plan's soil moisture is 5 %, but the head is made for 8 % to 40 %.",
                        "The plan has weeds of class rosette, but the head is made for broadleaf and grass.",
                        "The plan's thinnest stem is 0.5 mm, but the head is made for 1 mm to 12 mm.",
                        "The plan's thickest stem is 13 mm, but the head is made for 1 mm to 12 mm.");
        assertThat(findings).allSatisfy(f -> assertThat(f.breaksFit()).isTrue());
    }

    @Test
    void proposesTheFastestSpeedOfTheHead() {
        Finding finding = check(Cases.weeding().speed(0.6)).get(0);

        assertThat(finding.proposals()).extracting(Edit::text).containsExactly("drive at up to 0.5 m/s");
        assertThat(new WorkRangeHolds()
                        .check(finding.proposals()
                                .get(0)
                                .apply(Cases.weeding().speed(0.6).build())))
                .extracting(Finding::outcome)
                .containsExactly(Outcome.PASS);
    }

    @Test
    void failsForPlugsSetTooDeep() {
        List<Finding> findings = check(Cases.planting().plugs(Optional.of(new CropPlan.Plugs(0.03, 0.08, 0.07))));

        assertThat(findings)
                .extracting(Finding::message)
                .containsExactly("The plan's planting depth is 70 mm, but the head is made for 20 mm to 40 mm.");
    }

    @Test
    void undecidedIfThePlanDoesNotSayWhatTheWeedsOrPlugsAre() {
        assertThat(check(Cases.weeding().weeds(Optional.empty())))
                .extracting(Finding::outcome, Finding::message)
                .containsExactly(tuple(
                        Outcome.UNDECIDED,
                        "The crop plan does not say kinds, stems and heights of the weeds: add \"weeds\" to it."));
        assertThat(check(Cases.planting().plugs(Optional.empty())))
                .extracting(Finding::outcome)
                .containsExactly(Outcome.UNDECIDED);
    }

    private static Optional<CropPlan.Weeds> weeds(
            List<PlantClass> classes, double stemLeast, double stemMost, double heightLeast, double heightMost) {
        return Optional.of(new CropPlan.Weeds(
                2.0, 0.2, classes, stemLeast, stemMost, heightLeast, heightMost, Optional.of(0.95), Optional.of(0.1)));
    }

    private static List<Finding> check(Cases cases) {
        return new WorkRangeHolds().check(cases.build());
    }
}
