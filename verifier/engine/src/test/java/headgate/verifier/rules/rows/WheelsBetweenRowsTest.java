package headgate.verifier.rules.rows;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import headgate.api.shape.Interval;
import headgate.runtime.carriage.Carriage;
import headgate.runtime.cropplan.CropPlan;
import headgate.verifier.check.Case;
import headgate.verifier.check.Cases;
import headgate.verifier.check.Edit;
import headgate.verifier.check.Finding;
import headgate.verifier.check.Outcome;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Hand arithmetic: four rows at -750, -250, 250 and 750 mm, canopies 200 mm wide, so 300 mm of free ground between two
 * rows. A tyre of 120 mm with the built-in gap of 40 mm to both sides needs 200 mm, on straight rows that do not wander.
 */
class WheelsBetweenRowsTest {

    @Test
    void passesInTheMiddleBetweenTwoRows() {
        List<Finding> findings = check(rows(0, Optional.empty(), 0, Optional.empty()), wheels(-1.3, -0.9));

        assertThat(findings).hasSize(1);
        assertThat(findings.get(0).outcome()).isEqualTo(Outcome.PASS);
        assertThat(findings.get(0).message())
                .isEqualTo(
                        "Every wheel has room between two rows: wheel right at y = -1000 mm, wheel left at y = 1000 mm.");
        assertThat(margin(findings.get(0))).isCloseTo(0.1, within(1e-9));
    }

    @Test
    void passesExactlyAtTheLimitAndFailsAMillimetreBeyond() {
        // 50 mm aside of the middle there are 300 - 2 x 50 = 200 mm.
        assertThat(check(rows(0, Optional.empty(), 0, Optional.empty()), wheels(-0.95, -0.95)))
                .extracting(Finding::outcome)
                .containsExactly(Outcome.PASS);
        List<Finding> off = check(rows(0, Optional.empty(), 0, Optional.empty()), wheels(-0.949, -0.949));
        assertThat(off).extracting(Finding::outcome).containsExactly(Outcome.FAIL);
        assertThat(off.get(0).message())
                .isEqualTo(
                        "The wheel right at y = -949 mm has 198 mm between the leaves of the rows at y = -1250 mm and y ="
                                + " -750 mm, but needs 200 mm; 2 of 2 wheels lack room.");
    }

    @Test
    void countsWanderTwiceAndTheOffTrackingOfACurve() {
        // L = 1 m, R = 25 m: L^2 / 2R = 20 mm. 120 + 2 (30 + 20 + 40) = 300 mm.
        Finding tight = check(rows(0.03, Optional.empty(), 0, Optional.of(25.0)), wheels(-1.3, -0.9))
                .get(0);

        assertThat(tight.outcome()).isEqualTo(Outcome.PASS);
        assertThat(margin(tight)).isCloseTo(0, within(1e-9));
        assertThat(check(rows(0.03, Optional.empty(), 0, Optional.of(24.0)), wheels(-1.3, -0.9)))
                .extracting(Finding::outcome)
                .containsOnly(Outcome.FAIL);
    }

    @Test
    void keepsOffTheRowBeyondThePassThatMayStandNearer() {
        // The row beyond may stand 40 mm nearer: in the middle of what is left, 20 mm aside, there are 260 mm.
        Finding finding = check(rows(0, Optional.of(4), 0.04, Optional.empty()), wheels(-1.3, -0.9))
                .get(0);

        assertThat(finding.message()).contains("wheel right at y = -980 mm, wheel left at y = 980 mm");
        assertThat(margin(finding)).isCloseTo(0.06, within(1e-9));
        // A fixed wheel loses all 2 x 40 mm of it.
        assertThat(margin(check(rows(0, Optional.of(4), 0.04, Optional.empty()), wheels(-1.0, -1.0))
                        .get(0)))
                .isCloseTo(0.02, within(1e-9));
        // Within the planter's pass nothing is guessed.
        assertThat(margin(check(rows(0, Optional.of(4), 0.04, Optional.empty()), wheels(-0.5, -0.5))
                        .get(0)))
                .isCloseTo(0.1, within(1e-9));
    }

    @Test
    void failsOverARowAndProposesWhatMendsIt() {
        Case over = subject(rows(0, Optional.empty(), 0, Optional.empty()), wheels(-0.75, -0.75));

        List<Finding> findings = new WheelsBetweenRows().check(over);

        assertThat(findings).extracting(Finding::outcome).containsExactly(Outcome.FAIL);
        // Rows 635 mm apart leave 435 mm, and the wheel is 115 mm aside of the middle: 205 mm. At 630 mm there are 190.
        assertThat(findings.get(0).proposals())
                .extracting(Edit::text)
                .containsExactly(
                        "set wheel left to y = 1000 mm, wheel right to y = -1000 mm",
                        "work rows that are 635 mm apart");
        assertThat(findings.get(0).proposals())
                .allSatisfy(edit -> assertThat(new WheelsBetweenRows().check(edit.apply(over)))
                        .extracting(Finding::outcome)
                        .containsExactly(Outcome.PASS));
    }

    @Test
    void failsATyreThatIsTooWideAndProposesANarrowerOne() {
        Case wide = subject(
                rows(0, Optional.empty(), 0, Optional.empty()),
                List.of(new Carriage.Wheel("right", 1_000_000, Interval.at(-1_000_000), 0.23, 1.0)));

        Finding finding = new WheelsBetweenRows().check(wide).get(0);

        assertThat(finding.outcome()).isEqualTo(Outcome.FAIL);
        assertThat(finding.proposals()).extracting(Edit::text).contains("fit tyres at most 220 mm wide");
        assertThat(finding.proposals())
                .filteredOn(e -> e.kind().equals("narrow-tyres"))
                .allSatisfy(edit -> assertThat(new WheelsBetweenRows().check(edit.apply(wide)))
                        .extracting(Finding::outcome)
                        .containsExactly(Outcome.PASS));
    }

    @Test
    void undecidedWithoutWheels() {
        assertThat(check(rows(0, Optional.empty(), 0, Optional.empty()), List.of()))
                .extracting(Finding::outcome)
                .containsExactly(Outcome.UNDECIDED);
    }

    private static double margin(Finding finding) {
        return finding.comparison().orElseThrow().margin();
    }

    private static CropPlan.Rows rows(double wander, Optional<Integer> planter, double guess, Optional<Double> radius) {
        return new CropPlan.Rows(0.5, 4, 0.4, wander, planter, guess, radius);
    }

    private static List<Carriage.Wheel> wheels(double least, double most) {
        return List.of(Cases.wheel("right", least, most), Cases.wheel("left", -most, -least));
    }

    private static Case subject(CropPlan.Rows rows, List<Carriage.Wheel> wheels) {
        return Cases.weeding().rows(rows).carriage(c -> c.withWheels(wheels)).build();
    }

    private static List<Finding> check(CropPlan.Rows rows, List<Carriage.Wheel> wheels) {
        return new WheelsBetweenRows().check(subject(rows, wheels));
    }
}
