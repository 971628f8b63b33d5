package headgate.verifier.rules.clearance;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.api.shape.Body;
import headgate.api.shape.Interval;
import headgate.api.shape.Prism;
import headgate.api.sheet.HeadSheet;
import headgate.api.sheet.Posture;
import headgate.verifier.check.Case;
import headgate.verifier.check.Cases;
import headgate.verifier.check.Finding;
import headgate.verifier.check.NeverFinds;
import headgate.verifier.check.Outcome;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/**
 * Hand arithmetic: lifted, the lowest material is 200 mm under the mount; the ground moves by 20 mm. The tallest plant is a
 * weed of 150 mm, with 20 mm over it: 170 mm. A free strip begins 100 (half the canopy) + 20 (gap) + 4 (the arm) = 124 mm
 * beside a row; there 50 mm over the ground are enough.
 */
@NeverFinds(value = Outcome.UNDECIDED, because = "every sheet, arm and plan gives what the heights need")
class LiftedClearsTest {

    @Test
    void passesWithTheHeightOverACrest() {
        // 950 - 200 - 20 = 730 mm.
        Finding finding = check(lift(0.95, b -> b));

        assertThat(finding.outcome()).isEqualTo(Outcome.PASS);
        assertThat(measured(finding)).isEqualTo(0.730);
        assertThat(limit(finding)).isEqualTo(0.170);
        assertThat(finding.message()).contains("over the plants");
    }

    @Test
    void holdsExactlyAtTheLimit() {
        Finding finding = check(lift(0.39, b -> b));

        assertThat(finding.outcome()).isEqualTo(Outcome.PASS);
        assertThat(measured(finding)).isEqualTo(limit(finding));
    }

    @Test
    void failsWhereTheLiftIsTooLow() {
        Case low = lift(0.38, b -> b);

        Finding finding = check(low);

        assertThat(finding.outcome()).isEqualTo(Outcome.FAIL);
        assertThat(measured(finding)).isEqualTo(0.160);
        assertThat(finding.message()).contains("4 arms hang too low");
        assertThat(finding.proposals().get(0).text())
                .isEqualTo("lift arm a1 up to 390 mm, arm a2 up to 390 mm, arm a3 up to 390 mm, arm a4 up to 390 mm");
        assertThat(check(finding.proposals().get(0).apply(low)).outcome()).isEqualTo(Outcome.PASS);
    }

    @Test
    void whatHangsBetweenTheRowsNeedOnlyClearTheGround() {
        // 950 - 860 - 20 = 70 mm over a crest, from 124 to 376 mm beside the row.
        Finding between = check(lift(0.95, hanging(0.124, 0.376, -0.86)));
        assertThat(between.outcome()).isEqualTo(Outcome.PASS);
        assertThat(measured(between)).isEqualTo(0.070);
        assertThat(limit(between)).isEqualTo(0.050);
        assertThat(between.message()).contains("between the rows");

        // One micrometre further in it hangs over the plants.
        Finding over = check(lift(0.95, hanging(0.123999, 0.376, -0.86)));
        assertThat(over.outcome()).isEqualTo(Outcome.FAIL);
        assertThat(limit(over)).isEqualTo(0.170);
    }

    private static UnaryOperator<HeadSheet.Builder> hanging(double right, double left, double low) {
        Body more = Body.of(Prism.box(0, 0.05, right, left, low, -0.1));
        return b -> {
            HeadSheet sheet = b.build();
            return sheet.toBuilder()
                    .postures(sheet.postures().stream()
                            .map(p -> Posture.named(p.name())
                                    .fixed(p.fixed().and(more))
                                    .moving(p.moving())
                                    .region(p.region())
                                    .build())
                            .toArray(Posture[]::new));
        };
    }

    private static Case lift(double top, UnaryOperator<HeadSheet.Builder> sheet) {
        return Cases.weeding()
                .sheet(b -> b.forces(ArmToArmTest.NO_FORCE))
                .sheet(sheet)
                .arms(a -> a.withLift(Interval.ofMetres(0.35, top)))
                .build();
    }

    private static Finding check(Case subject) {
        return new LiftedClears().check(subject).get(0);
    }

    private static double measured(Finding finding) {
        return finding.comparison().orElseThrow().measured().value();
    }

    private static double limit(Finding finding) {
        return finding.comparison().orElseThrow().limit().value();
    }
}
