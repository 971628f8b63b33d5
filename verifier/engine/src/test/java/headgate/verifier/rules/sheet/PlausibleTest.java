package headgate.verifier.rules.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import headgate.api.shape.Body;
import headgate.api.shape.Prism;
import headgate.api.sheet.HeadSheet;
import headgate.verifier.check.Cases;
import headgate.verifier.check.Finding;
import headgate.verifier.check.NeverFinds;
import headgate.verifier.check.Outcome;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/**
 * Hand arithmetic: bodies of 0.5 x 0.3 x 0.15 = 0.0225 m³ and, ready at -200 mm, a stem of 0.04 x 0.04 x 0.45 m from there
 * up to +250 mm, of which 150 mm lie inside the first: 0.00048 m³ more, 0.02298 m³ in all.
 */
@NeverFinds(value = Outcome.UNDECIDED, because = "every sheet gives masses, bodies and a ready posture")
class PlausibleTest {

    private static final double VOLUME = 0.02298;

    @Test
    void passesForTheDefaultHead() {
        List<Finding> findings = new Plausible().check(Cases.weeding().build());

        assertThat(findings).extracting(Finding::outcome).containsOnly(Outcome.PASS);
        assertThat(findings).hasSize(3);
        // 6 kg soiled.
        assertThat(measured(findings.get(0))).isCloseTo(6 / VOLUME, within(1e-6));
    }

    @Test
    void passesAtBothEndsOfTheRange() {
        assertThat(density(100 * VOLUME, 100 * VOLUME).outcome()).isEqualTo(Outcome.PASS);
        assertThat(density(8000 * VOLUME, 8000 * VOLUME).outcome()).isEqualTo(Outcome.PASS);
    }

    @Test
    void failsJustBeyondTheRange() {
        assertThat(density(99.99 * VOLUME, 200 * VOLUME).outcome()).isEqualTo(Outcome.FAIL);
        assertThat(density(200 * VOLUME, 8001 * VOLUME).outcome()).isEqualTo(Outcome.FAIL);
    }

    @Test
    void failsAndNamesGramsGivenAsKilograms() {
        // One litre, 400 g given as 400 kg.
        Body small = Body.of(Prism.box(-0.05, 0.05, -0.05, 0.05, -0.1, 0.0));

        assertThat(check(
                                b -> bodies(b, small, Body.NONE)
                                        .mass(
                                                Cases.mass(400, 0, 0, -0.05),
                                                Cases.mass(400, 0, 0, -0.05),
                                                Cases.mass(400, 0, 0, -0.05)),
                                0)
                        .message())
                .endsWith("denser than steel: the masses look a thousand times too large, as if grams were given as"
                        + " kilograms.");
    }

    @Test
    void failsAndNamesKilogramsGivenAsGrams() {
        assertThat(density(0.0052, 0.0058).message())
                .endsWith("the masses look a thousand times too small, as if kilograms were given as grams.");
    }

    @Test
    void failsAndNamesMetresGivenAsMillimetres() {
        // The whole head a thousand times smaller: 0.5 mm long.
        Body speck = Body.of(Prism.box(-0.00005, 0.00045, -0.00015, 0.00015, -0.00015, 0.0));

        assertThat(check(b -> bodies(b, speck, Body.NONE), 0).message())
                .endsWith("the lengths look a thousand times too small, as if metres were given as millimetres.");
    }

    @Test
    void failsAndNamesMillimetresGivenAsMetres() {
        // 50 mm x 30 mm x 15 mm given as metres.
        Body barn = Body.of(Prism.box(0, 50, -15, 15, -15, 0));

        assertThat(check(
                                b -> bodies(b, barn, Body.NONE)
                                        .mass(
                                                Cases.mass(0.03, 1, 0, -1),
                                                Cases.mass(0.03, 1, 0, -1),
                                                Cases.mass(0.03, 1, 0, -1)),
                                0)
                        .message())
                .endsWith("the lengths look a thousand times too large, as if millimetres were given as metres.");
    }

    @Test
    void failsWithoutASlipIfNoneExplainsIt() {
        assertThat(density(20 * VOLUME, 20 * VOLUME).message())
                .endsWith(
                        "lighter than any head: see whether the bodies hold all material and nothing else, and whether the"
                                + " masses are right.");
    }

    @Test
    void passesWithACentreOfMassOnTheHull() {
        // The stem's lower end is a corner of the hull: x 230 to 270 mm, z -200 mm.
        assertThat(centre(0.23, 0.02, -0.2).outcome()).isEqualTo(Outcome.PASS);
        assertThat(centre(0.45, 0.15, 0.0).outcome()).isEqualTo(Outcome.PASS);
    }

    @Test
    void failsWithACentreOfMassJustOutsideOfTheHullAndInsideOfItsBox() {
        // Half way from the box's lower front edge (450, -150) to the stem's (270, -200): the hull's edge is at x = 360
        // mm
        // where z = -175 mm.
        assertThat(centre(0.36, 0.0, -0.175).outcome()).isEqualTo(Outcome.PASS);
        assertThat(centre(0.360002, 0.0, -0.175).outcome()).isEqualTo(Outcome.FAIL);
    }

    @Test
    void failsAndNamesACentreInMillimetres() {
        assertThat(centre(20, 0.0, -14).message())
                .endsWith("A thousandth of it would lie inside, as if millimetres were given as metres.");
    }

    @Test
    void passesWithTheToolPointOnTheMovingBodyAndFailsBesideIt() {
        assertThat(toolPoint(0.0).outcome()).isEqualTo(Outcome.PASS);
        Finding beside = toolPoint(0.012);
        assertThat(beside.outcome()).isEqualTo(Outcome.FAIL);
        assertThat(measured(beside)).isEqualTo(0.012);
    }

    @Test
    void doesNotAskForAToolPointWhereNothingMoves() {
        Body fixed = Body.of(Prism.box(-0.05, 0.45, -0.15, 0.15, -0.15, 0.0));

        assertThat(check(b -> bodies(b, fixed, Body.NONE), 2).outcome()).isEqualTo(Outcome.NOT_APPLICABLE);
    }

    private static Finding density(double least, double most) {
        return check(
                b -> b.mass(
                        Cases.mass(least, 0.2, 0, -0.1),
                        Cases.mass(most, 0.2, 0, -0.1),
                        Cases.mass(most, 0.2, 0, -0.1)),
                0);
    }

    private static Finding centre(double x, double y, double z) {
        return check(b -> b.mass(Cases.mass(5, x, y, z), Cases.mass(5, x, y, z), Cases.mass(6, x, y, z)), 1);
    }

    private static Finding toolPoint(double below) {
        Body moving = Body.of(Prism.box(-0.02, 0.02, -0.02, 0.02, below, 0.45));
        Body fixed = Body.of(Prism.box(-0.05, 0.45, -0.15, 0.15, -0.15, 0.0));
        return check(b -> bodies(b, fixed, moving), 2);
    }

    private static HeadSheet.Builder bodies(HeadSheet.Builder builder, Body fixed, Body moving) {
        HeadSheet sheet = builder.build();
        return sheet.toBuilder()
                .postures(sheet.postures().stream()
                        .map(p -> Cases.posture(p.name(), fixed, moving, p.region()))
                        .toList());
    }

    private static Finding check(UnaryOperator<HeadSheet.Builder> change, int which) {
        return new Plausible().check(Cases.weeding().sheet(change).build()).get(which);
    }

    private static double measured(Finding finding) {
        return finding.comparison().orElseThrow().measured().value();
    }
}
