package headgate.verifier.rules.clearance;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.api.shape.Interval;
import headgate.api.shape.Point3;
import headgate.runtime.carriage.Sensor;
import headgate.verifier.check.Case;
import headgate.verifier.check.Cases;
import headgate.verifier.check.Finding;
import headgate.verifier.check.Outcome;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Hand arithmetic: the sensor stands 2 m over the ground right over the front face of the head of arm a1, at x = 450 mm, y =
 * -750 mm. Seen from there the face hides nothing in front of it and all of the ground behind it, 150 mm to either side and
 * more. The band is 200 mm square within that: what of it lies behind x = 450 mm is hidden.
 */
class SensorViewTest {

    @Test
    void passesWhereNothingIsHidden() {
        Finding finding = check(0.450, 2.0);

        assertThat(finding.outcome()).isEqualTo(Outcome.PASS);
        assertThat(measured(finding)).isZero();
    }

    @Test
    void holdsExactlyAtTheLimit() {
        // 10 of 200 mm.
        Finding finding = check(0.440, 2.0);

        assertThat(finding.outcome()).isEqualTo(Outcome.PASS);
        assertThat(measured(finding)).isEqualTo(0.05);
    }

    @Test
    void failsWhereMoreIsHidden() {
        // 100 of 200 mm. The band must go forward by 90 mm; with it goes the sensor, so that only the band's place
        // counts.
        Case subject = with(sensor(0.350, 2.0));

        Finding finding = new SensorView().check(subject).get(0);

        assertThat(finding.outcome()).isEqualTo(Outcome.FAIL);
        assertThat(measured(finding)).isEqualTo(0.5);
        assertThat(finding.message())
                .isEqualTo("Arms and heads at work hide 50 % of what sensor eye sees, where 5 % is allowed.");
        assertThat(finding.proposals()).hasSize(1);
        Case mended = finding.proposals().get(0).apply(subject);
        assertThat(new SensorView().check(mended).get(0).outcome()).isEqualTo(Outcome.PASS);
    }

    @Test
    void countsAllAsHiddenWhereMaterialStandsAtTheSensor() {
        // At a work height of 390 to 560 mm the arm's own body, over its mount, reaches from 390 to 860 mm.
        Sensor inside = new Sensor(
                "eye",
                Point3.ofMetres(0, -0.75, 0.7),
                Interval.ofMetres(0.6, 0.8),
                Interval.ofMetres(-0.85, -0.65),
                List.of("front"),
                20,
                0.1,
                0.01,
                0.001);

        Finding finding = new SensorView().check(with(inside)).get(0);

        assertThat(finding.outcome()).isEqualTo(Outcome.FAIL);
        assertThat(measured(finding)).isEqualTo(1.0);
    }

    @Test
    void undecidedForASensorOnTheGround() {
        assertThat(check(0.450, 0.0).outcome()).isEqualTo(Outcome.UNDECIDED);
    }

    @Test
    void doesNotApplyWithoutASensor() {
        assertThat(new SensorView().check(Cases.weeding().build()).get(0).outcome())
                .isEqualTo(Outcome.NOT_APPLICABLE);
    }

    private static Finding check(double rearOfBand, double height) {
        return new SensorView().check(with(sensor(rearOfBand, height))).get(0);
    }

    private static Case with(Sensor sensor) {
        return Cases.weeding().carriage(c -> c.withSensors(List.of(sensor))).build();
    }

    private static Sensor sensor(double rearOfBand, double height) {
        return new Sensor(
                "eye",
                Point3.ofMetres(0.450, -0.750, height),
                Interval.ofMetres(rearOfBand, rearOfBand + 0.2),
                Interval.ofMetres(-0.85, -0.65),
                List.of("front"),
                20,
                0.1,
                0.01,
                0.001);
    }

    private static double measured(Finding finding) {
        return finding.comparison().orElseThrow().measured().value();
    }
}
