package headgate.verifier.rules.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.api.shape.Body;
import headgate.api.shape.Prism;
import headgate.api.sheet.HeadSheet;
import headgate.api.sheet.Posture;
import headgate.api.sheet.Reach;
import headgate.api.vocabulary.PostureName;
import headgate.verifier.check.Case;
import headgate.verifier.check.Cases;
import headgate.verifier.check.Finding;
import headgate.verifier.check.NeverFinds;
import headgate.verifier.check.Outcome;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/**
 * Hand arithmetic: the fixed body of the default head ends 150 mm below the plate, and its tool point goes down to 600 mm. A
 * stem of 450 mm over the tool point reaches just up to it.
 */
@NeverFinds(value = Outcome.UNDECIDED, because = "every sheet gives bodies, regions and a plate")
class ConnectedTest {

    @Test
    void passesWhereAStemJustTouchesTheFixedBody() {
        Finding finding = check(stem(0.45));

        assertThat(finding.outcome()).isEqualTo(Outcome.PASS);
        // Stowed and ready at one place each, work at four corners, each high and low.
        assertThat(finding.examined()).isEqualTo(10);
    }

    @Test
    void failsWhereTheStemIsAMicrometreShort() {
        Finding finding = check(stem(0.449999));

        assertThat(finding.outcome()).isEqualTo(Outcome.FAIL);
        assertThat(finding.comparison().orElseThrow().measured().value()).isEqualTo(1e-6);
    }

    @Test
    void failsWithTheLargestGapOverAllPlaces() {
        Finding finding = check(stem(0.40));

        assertThat(finding.comparison().orElseThrow().measured().value()).isEqualTo(0.05);
        assertThat(finding.message())
                .startsWith("In posture work with the tool point at ")
                .contains("a part of the head is 50 mm away");
    }

    @Test
    void failsIfThePartsHangTogetherButNotOnThePlate() {
        // The plate's pitch circle is 50 mm wide, so its edge is 25 mm from its middle; the body begins at 30 mm.
        Body beside = Body.of(Prism.box(0.03, 0.45, -0.15, 0.15, -0.15, 0.0));

        Finding finding = check(fixed(beside));

        assertThat(finding.outcome()).isEqualTo(Outcome.FAIL);
        // A cylinder is given as a polygon around it, here at most 2 % wider.
        assertThat(finding.comparison().orElseThrow().measured().value()).isBetween(0.0044, 0.005);
    }

    @Test
    void passesIfABodyTouchesOnlyTheEdgeOfThePitchCircle() {
        assertThat(check(fixed(Body.of(Prism.box(0.025, 0.45, -0.15, 0.15, -0.15, 0.0))))
                        .outcome())
                .isEqualTo(Outcome.PASS);
    }

    @Test
    void failsIfAPlateHangsInTheAirBelowIt() {
        Finding finding = check(fixed(Body.of(Prism.box(-0.05, 0.45, -0.15, 0.15, -0.15, -0.02))));

        assertThat(finding.comparison().orElseThrow().measured().value()).isEqualTo(0.02);
    }

    @Test
    void whatIsCarriedHoldsNothingTogether() {
        Case carrying = Cases.weeding()
                .sheet(stem(0.40))
                .sheet(b -> each(b, p -> Posture.named(p.name())
                        .fixed(p.fixed())
                        .moving(p.moving())
                        .carried(Body.of(Prism.box(-0.02, 0.02, -0.02, 0.02, 0.0, 0.45)))
                        .region(p.region())
                        .build()))
                .build();

        assertThat(new Connected().check(carrying).get(0).outcome()).isEqualTo(Outcome.FAIL);
    }

    private static UnaryOperator<HeadSheet.Builder> stem(double length) {
        Body stem = Body.of(Prism.box(-0.02, 0.02, -0.02, 0.02, 0.0, length));
        return b -> each(b, p -> Cases.posture(p.name(), p.fixed(), stem, p.region()));
    }

    private static UnaryOperator<HeadSheet.Builder> fixed(Body body) {
        return b -> each(b, p -> Cases.posture(p.name(), body, p.moving(), p.region()));
    }

    private static HeadSheet.Builder each(HeadSheet.Builder builder, UnaryOperator<Posture> change) {
        HeadSheet sheet = builder.build();
        return sheet.toBuilder().postures(sheet.postures().stream().map(change).toList());
    }

    private static Finding check(UnaryOperator<HeadSheet.Builder> change) {
        List<Finding> findings =
                new Connected().check(Cases.weeding().sheet(change).build());
        assertThat(findings).hasSize(1);
        return findings.get(0);
    }

    @Test
    void everyPostureCounts() {
        // Only stowed the stem is too short: a region of one point at -200 mm, so 40 mm do not reach up to -150 mm.
        Body stump = Body.of(Prism.box(-0.02, 0.02, -0.02, 0.02, 0.0, 0.04));

        Finding finding = check(b -> each(
                b,
                p -> p.name().equals(PostureName.STOWED)
                        ? Cases.posture(
                                p.name(),
                                p.fixed(),
                                stump,
                                Reach.at(p.region().corners3().get(0)))
                        : p));

        assertThat(finding.comparison().orElseThrow().measured().value()).isEqualTo(0.01);
        assertThat(finding.message()).startsWith("In posture stowed");
    }
}
