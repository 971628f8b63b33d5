package headgate.verifier.rules.clearance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import headgate.api.shape.Interval;
import headgate.api.vocabulary.SoilClass;
import headgate.runtime.carriage.Arm;
import headgate.runtime.cropplan.CropPlan;
import headgate.verifier.check.Cases;
import headgate.verifier.check.Finding;
import headgate.verifier.check.Outcome;
import org.junit.jupiter.api.Test;

/**
 * Hand arithmetic: the reach goes from -600 to -200 mm, the depth of work is 20 mm, the lift from 350 to 950 mm and needs
 * 2 mm. With a ground motion G the heights are 200 + G - 20 to 600 - G - 20 mm.
 */
class WorkHeightExistsTest {

    @Test
    void passesWithTheIntervalOfHeights() {
        // G = 20 mm: 200 to 560 mm, of which the lift gives 350 to 560 mm.
        Finding finding = check(0.020);

        assertThat(finding.outcome()).isEqualTo(Outcome.PASS);
        assertThat(finding.comparison().orElseThrow().measured().value()).isEqualTo(0.210);
        assertThat(finding.message()).contains("from 350 mm to 560 mm");
    }

    @Test
    void holdsExactlyAtTheLimit() {
        // G = 199 mm: 379 to 381 mm.
        Finding finding = check(0.199);

        assertThat(finding.outcome()).isEqualTo(Outcome.PASS);
        assertThat(finding.comparison().orElseThrow().margin()).isEqualTo(0.0);
    }

    @Test
    void failsWhereTheIntervalIsNarrowerThanTheLiftNeeds() {
        // G = 199.05 mm: 379.05 to 380.95 mm.
        Finding finding = check(0.19905);

        assertThat(finding.outcome()).isEqualTo(Outcome.FAIL);
        assertThat(finding.comparison().orElseThrow().measured().value()).isEqualTo(0.0019);
    }

    @Test
    void saysHowMuchIsMissingWhereNoHeightServes() {
        // G = 235 mm: the reach asks for 415 to 345 mm, which is no height at all.
        assertThat(check(0.235).message())
                .isEqualTo(
                        "No mount height serves arm a1 on lane 1: its reach is not tall enough for the ground's motion of"
                                + " 235 mm up and down; 72 mm are missing.");
    }

    @Test
    void saysSoWhereTheLiftDoesNotGoLowEnough() {
        // G = 20 mm: the reach asks for 200 to 560 mm, the lift only gives 600 mm and more.
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
                        "No mount height serves arm a1 on lane 1: its reach asks for mount heights from 200 mm to 560 mm,"
                                + " its lift gives 600 mm to 950 mm; 42 mm are missing.");
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
