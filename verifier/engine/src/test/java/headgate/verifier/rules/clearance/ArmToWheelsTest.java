package headgate.verifier.rules.clearance;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.api.shape.Interval;
import headgate.runtime.carriage.Carriage;
import headgate.verifier.check.Case;
import headgate.verifier.check.Cases;
import headgate.verifier.check.Finding;
import headgate.verifier.check.Outcome;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Hand arithmetic: the axle is 1000 mm and the head of arm a1 450 mm in front of the beam, so a tyre of diameter d leaves
 * 550 - d / 2 between them if wheel and head overlap across travel. 29 mm are required, as for the frame. Heads stand out 150
 * mm to either side of their mounts at y = -750 and 750 mm.
 */
class ArmToWheelsTest {

    @Test
    void passesWhereverTheWheelsAreSet() {
        Finding finding = check(wheels(0.9, 1.3, 0.7));

        assertThat(finding.outcome()).isEqualTo(Outcome.PASS);
        assertThat(measured(finding)).isEqualTo(0.200);
        assertThat(limit(finding)).isEqualTo(0.029);
        assertThat(finding.message()).startsWith("Wherever the wheels are set");
        // Four arms in three stances each against two wheels.
        assertThat(finding.examined()).isEqualTo(24);
    }

    @Test
    void holdsExactlyAtTheLimit() {
        Finding finding = check(wheels(0.9, 1.3, 1.042));

        assertThat(finding.outcome()).isEqualTo(Outcome.PASS);
        assertThat(measured(finding)).isEqualTo(limit(finding)).isEqualTo(0.029);
    }

    @Test
    void failsWhereTheWheelIsTooNearForThisPlanToo() {
        Finding finding = check(wheels(0.9, 0.9, 1.042002));

        assertThat(finding.outcome()).isEqualTo(Outcome.FAIL);
        assertThat(measured(finding)).isEqualTo(0.028999);
        assertThat(finding.proposals()).extracting(e -> e.text()).containsExactly("trim head test-head by 1 mm at +x");
    }

    @Test
    void cautionsWhereOnlyThePlaceForThisPlanIsFar() {
        // Between the rows at -1250 and -750 mm the wheel runs at -1000 mm, its tyre, 120 mm wide, ends 40 mm beside
        // the head:
        // with the 19 mm along travel hypot(40, 19) = 44.28 mm.
        Finding finding = check(wheels(0.9, 1.3, 1.062));

        assertThat(finding.outcome()).isEqualTo(Outcome.CAUTION);
        assertThat(measured(finding)).isEqualTo(0.044283179);
        assertThat(finding.message()).contains("wheel right at y = -1000 mm, wheel left at y = 1000 mm");
    }

    @Test
    void aSteeredWheelFillsMore() {
        // Its foremost corner is hypot(520, 60) = 523.5 mm from its middle, and turned by 6.6 degrees it points at the
        // head: instead
        // of 1000 - 520 - 450 = 30 mm there are 26.5 mm, less up to 0.22 % of the radius; 29 mm are required.
        Carriage.Wheel straight = wheel("right", Interval.at(-900_000), 1.04);
        Carriage.Wheel steered = new Carriage.Wheel(
                "right", 1_000_000, Interval.at(-900_000), 0.12, 1.0, Optional.of(1.04), Math.toRadians(30));

        Finding passes = check(List.of(straight));
        Finding fails = check(List.of(steered));

        assertThat(passes.outcome()).isEqualTo(Outcome.PASS);
        assertThat(measured(passes)).isEqualTo(0.030);
        assertThat(fails.outcome()).isEqualTo(Outcome.FAIL);
        assertThat(measured(fails)).isBetween(0.0253, 0.0266);
    }

    @Test
    void undecidedWithoutWheelsOrTheirDiameters() {
        assertThat(check(List.of()).outcome()).isEqualTo(Outcome.UNDECIDED);
        Finding unknown = check(List.of(new Carriage.Wheel("right", 1_000_000, Interval.at(-1_000_000), 0.12, 1.0)));
        assertThat(unknown.outcome()).isEqualTo(Outcome.UNDECIDED);
        assertThat(unknown.message()).contains("give the diameter of wheel right");
    }

    private static List<Carriage.Wheel> wheels(double least, double most, double diameter) {
        return List.of(
                wheel("right", Interval.ofMetres(-most, -least), diameter),
                wheel("left", Interval.ofMetres(least, most), diameter));
    }

    private static Carriage.Wheel wheel(String name, Interval y, double diameter) {
        return new Carriage.Wheel(name, 1_000_000, y, 0.12, 1.0, Optional.of(diameter), 0);
    }

    private static Finding check(List<Carriage.Wheel> wheels) {
        Case subject = Cases.weeding()
                .sheet(b -> b.forces(ArmToArmTest.NO_FORCE))
                .carriage(c -> c.withWheels(wheels))
                .build();
        return new ArmToWheels().check(subject).get(0);
    }

    private static double measured(Finding finding) {
        return finding.comparison().orElseThrow().measured().value();
    }

    private static double limit(Finding finding) {
        return finding.comparison().orElseThrow().limit().value();
    }
}
