package headgate.verifier.rules.clearance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import headgate.api.shape.Body;
import headgate.api.shape.Interval;
import headgate.api.shape.Prism;
import headgate.api.sheet.HeadSheet;
import headgate.api.sheet.Posture;
import headgate.api.vocabulary.SoilClass;
import headgate.runtime.carriage.Arm;
import headgate.runtime.cropplan.CropPlan;
import headgate.verifier.check.Cases;
import headgate.verifier.check.Finding;
import headgate.verifier.check.NeverFinds;
import headgate.verifier.check.Outcome;
import org.junit.jupiter.api.Test;

/**
 * Hand arithmetic: the reach goes from -600 to -200 mm, the depth of work is 20 mm, the lowest material when ready is at -200
 * mm, the tallest weed is 150 mm high, the gap over it 20 mm; the lift gives 350 to 950 mm and needs 2 mm. With a ground
 * motion G the tool asks for 180 + G to 580 - G mm and the weeds for 370 + G mm or more.
 */
@NeverFinds(value = Outcome.UNDECIDED, because = "every sheet, arm and plan gives what the heights need")
class WorkHeightExistsTest {

    @Test
    void passesWithTheIntervalOfHeights() {
        // G = 20 mm: 390 to 560 mm.
        Finding finding = check(0.020);

        assertThat(finding.outcome()).isEqualTo(Outcome.PASS);
        assertThat(finding.comparison().orElseThrow().measured().value()).isEqualTo(0.170);
        assertThat(finding.message()).contains("from 390 mm to 560 mm");
    }

    @Test
    void holdsExactlyAtTheLimit() {
        // G = 104 mm: 474 to 476 mm.
        Finding finding = check(0.104);

        assertThat(finding.outcome()).isEqualTo(Outcome.PASS);
        assertThat(finding.comparison().orElseThrow().margin()).isEqualTo(0.0);
    }

    @Test
    void failsWhereTheIntervalIsNarrowerThanTheLiftNeeds() {
        // G = 104.05 mm: 474.05 to 475.95 mm.
        Finding finding = check(0.10405);

        assertThat(finding.outcome()).isEqualTo(Outcome.FAIL);
        assertThat(finding.comparison().orElseThrow().measured().value()).isEqualTo(0.0019);
    }

    @Test
    void saysHowMuchIsMissingWhereNoHeightServes() {
        // G = 140 mm: 510 mm or more for the weeds, 440 mm or less for the hollows.
        assertThat(check(0.140).message())
                .isEqualTo(
                        "No mount height serves arm a1 on lane 1: to clear plants and crests it must stand at 510 mm or"
                                + " more, to reach the hollows at 440 mm or less; 72 mm are missing.");
    }

    @Test
    void saysSoWhereTheLiftDoesNotGoLowEnough() {
        // G = 20 mm: 390 to 560 mm are asked for, the lift only gives 600 mm and more.
        Finding finding = new WorkHeightExists()
                .check(Cases.weeding()
                        .arms(a -> new Arm(
                                a.id(),
                                a.beam(),
                                a.shift(),
                                Interval.ofMetres(0.6, 0.95),
                                a.shiftMotion(),
                                a.liftMotion(),
                                a.tolerance(),
                                a.payload(),
                                a.plate(),
                                a.connectors(),
                                a.supply(),
                                a.body()))
                        .build())
                .get(0);

        assertThat(finding.message())
                .isEqualTo(
                        "No mount height serves arm a1 on lane 1: tool and plants ask for mount heights from 390 mm to 560 mm,"
                                + " its lift gives 600 mm to 950 mm; 42 mm are missing.");
    }

    @Test
    void whatHangsBetweenTheRowsNeedNotClearThePlants() {
        // A body at -380 mm would ask for 150 + 20 + 20 + 380 = 570 mm over plants; in a free strip for 20 + 380 = 400
        // mm.
        Body low = Body.of(Prism.box(0, 0.05, 0.13, 0.37, -0.38, -0.1));
        Finding finding = new WorkHeightExists()
                .check(Cases.weeding()
                        .sheet(b -> {
                            HeadSheet sheet = b.build();
                            return sheet.toBuilder()
                                    .postures(sheet.postures().stream()
                                            .map(p -> Posture.named(p.name())
                                                    .fixed(p.fixed().and(low))
                                                    .moving(p.moving())
                                                    .region(p.region())
                                                    .build())
                                            .toArray(Posture[]::new));
                        })
                        .build())
                .get(0);

        assertThat(finding.outcome()).isEqualTo(Outcome.PASS);
        assertThat(finding.message()).contains("from 400 mm to 560 mm");
        assertThat(finding.terms())
                .anySatisfy(t -> assertThat(t.name()).isEqualTo("lowest material when ready in a free strip z_strip"));
    }

    @Test
    void addsRollAndSinkAtTheArmsPlace() {
        // Roll of 0.02 rad at 0.75 m is 15.002 mm, pitch of 0.01 rad at 1.2 m is 12.0004 mm, the wheels sink 10 mm.
        Finding finding = new WorkHeightExists()
                .check(Cases.weeding().ground(0.02, 0.01, 0.010).build())
                .get(0);

        // The rear beam's outer arm moves most: 20 + 15.002 + 12.0004 + 10 mm.
        assertThat(finding.terms().get(0).measure().value()).isEqualTo(0.0570024, within(1e-6));
        assertThat(finding.subject()).isEqualTo("arm a4 on lane 4");
    }

    private static Finding check(double relief) {
        return new WorkHeightExists()
                .check(Cases.weeding()
                        .soil(new CropPlan.Soil(SoilClass.MEDIUM, 0.2, relief))
                        .build())
                .get(0);
    }
}
