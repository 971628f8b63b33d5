package headgate.verifier.setup;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.api.shape.Body;
import headgate.api.shape.Interval;
import headgate.api.shape.Point;
import headgate.api.shape.Prism;
import headgate.api.sheet.HeadSheet;
import headgate.api.sheet.Posture;
import headgate.runtime.carriage.Arm;
import headgate.verifier.check.Case;
import headgate.verifier.check.Cases;
import headgate.verifier.check.Finding;
import headgate.verifier.check.Outcome;
import headgate.verifier.rules.clearance.WorkHeightExists;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Hand arithmetic: rows 500 mm apart at -750, -250, 250 and 750 mm, plants 200 mm wide; with the gap of 20 mm and the arms' own
 * tolerance the ground is free from {@code kept} beside a row. A head has a leg beside its tool, 100 mm wide and 450 mm down, which
 * over plants would ask for 150 + 20 + 20 + 450 = 640 mm where the hollows allow 560 mm. The band to be treated is 100 mm wide
 * and the tool reaches 100 mm to either side, so a mount may stand 50 mm beside its row.
 */
class WorkPlacesTest {

    private static final long ASIDE = 50_000;

    @Test
    void aHeadThatWorksAnywhereIsSetOverItsRow() {
        Case plain = weeding().build();

        assertThat(places(plain)).containsExactly(firstArm(plain).shift());
        assertThat(setPoints(plain)).containsExactly(-750_000L, -250_000L, 250_000L, 750_000L);
    }

    @Test
    void passesWhereTheLegComesBetweenTheRows() {
        // The leg begins 30 mm nearer than the free strip: the mount goes between 30 and 50 mm to the left.
        Case subject = withLeg(kept() - 30_000).build();

        assertThat(setPoints(subject)).allSatisfy(y -> assertThat(beside(y)).isBetween(30_000L, ASIDE));
        assertThat(height(subject).outcome()).isEqualTo(Outcome.PASS);
    }

    @Test
    void aTurnedHeadGoesToTheOtherSide() {
        Case subject = withLeg(kept() - 30_000).turned().build();

        assertThat(setPoints(subject)).allSatisfy(y -> assertThat(beside(y)).isBetween(-ASIDE, -30_000L));
        assertThat(height(subject).outcome()).isEqualTo(Outcome.PASS);
    }

    @Test
    void holdsExactlyAtTheLimit() {
        Case subject = withLeg(kept() - ASIDE).build();

        assertThat(setPoints(subject)).allSatisfy(y -> assertThat(beside(y)).isEqualTo(ASIDE));
        assertThat(height(subject).outcome()).isEqualTo(Outcome.PASS);
    }

    @Test
    void failsWhereTheLaneDoesNotLetItGoSoFar() {
        Case subject = withLeg(kept() - ASIDE - 1).build();

        // It is set up all the same, and the rule says what is missing.
        assertThat(setPoints(subject)).hasSize(4);
        assertThat(height(subject).outcome()).isEqualTo(Outcome.FAIL);
    }

    @Test
    void theGroundMovesMoreFurtherOut() {
        // Roll alone: G = 20 mm + |y| tan(0.05). The leg asks for nothing in a strip; the tool for 180 + G to 580 - G,
        // the rest of
        // the head for 370 + G: there is room as long as 2 G + 2 <= 210, |y| <= 1678 mm.
        Case subject = Cases.weeding()
                .ground(0.05, 0, 0)
                .arms(a -> a.withShift(Interval.ofMetres(-3, 3)))
                .build();
        Arm arm = firstArm(subject);

        List<Interval> found = places(subject);

        // Further out only where the rod, the lowest that is ready, lies in a free strip.
        assertThat(found).hasSize(3);
        assertThat(found.get(1).most()).isBetween(1_678_000L, 1_680_000L);
        assertThat(found.get(2).least()).isBetween(1_750_000L, 2_000_000L);
        for (Interval each : found) {
            assertThat(serves(subject, arm, each.least())).isTrue();
            assertThat(serves(subject, arm, each.most())).isTrue();
            assertThat(serves(subject, arm, each.least() - 1)).isFalse();
            assertThat(serves(subject, arm, each.most() + 1)).isFalse();
        }
        assertThat(found.get(0))
                .isEqualTo(new Interval(-found.get(2).most(), -found.get(2).least()));
    }

    @Test
    void noPlaceServesAHeadThatIsTooLowEverywhere() {
        // Wider than a strip.
        assertThat(places(weeding()
                        .sheet(b -> leg(b, Prism.box(0, 0.05, -0.25, 0.25, -0.45, -0.1)))
                        .build()))
                .isEmpty();
    }

    private static Cases weeding() {
        return Cases.weeding().weeds(2.0, 0.1, Optional.of(0.95), Optional.of(0.1));
    }

    private static Cases withLeg(long from) {
        double y = from / 1e6;
        return weeding().sheet(b -> leg(b, Prism.box(0, 0.05, y, y + 0.1, -0.45, -0.1)));
    }

    private static HeadSheet.Builder leg(HeadSheet.Builder builder, Prism leg) {
        HeadSheet sheet = builder.build();
        return sheet.toBuilder()
                .postures(sheet.postures().stream()
                        .map(p -> Posture.named(p.name())
                                .fixed(p.fixed().and(Body.of(leg)))
                                .moving(p.moving())
                                .region(p.region())
                                .build())
                        .toArray(Posture[]::new));
    }

    /** How far beside a row nothing is free: the first shift that brings a thin thing into the strip beside the row at 250 mm. */
    private static long kept() {
        Case subject = withLeg(130_000).build();
        HeadSheet sheet = subject.heads().get(0).sheet().orElseThrow();
        FreeStrips strips = FreeStrips.of(
                subject,
                ArmAllowance.of(
                        firstArm(subject),
                        Optional.of(sheet),
                        subject.policy().value().coverageFactor().value()));
        long kept = strips.shifts(Interval.at(0), new Interval(250_000, 750_000))
                        .get(0)
                        .least()
                - 250_000;
        assertThat(strips.hold(Interval.at(250_000 + kept))).isTrue();
        assertThat(strips.hold(Interval.at(250_000 + kept - 1))).isFalse();
        return kept;
    }

    private static Finding height(Case subject) {
        return new WorkHeightExists().check(subject).get(0);
    }

    private static List<Long> setPoints(Case subject) {
        return Setup.of(subject).stations().stream().map(s -> s.mount().y()).toList();
    }

    /** How far a mount is beside the row that is nearest. */
    private static long beside(long y) {
        return Math.floorMod(y, 500_000L) - 250_000;
    }

    private static Arm firstArm(Case subject) {
        return subject.carriage().value().arms().get(0);
    }

    private static List<Interval> places(Case subject) {
        return WorkPlaces.of(
                subject, firstArm(subject), 0, subject.heads().get(0).sheet().orElseThrow(), false);
    }

    private static boolean serves(Case subject, Arm arm, long y) {
        return WorkHeight.at(
                        subject,
                        arm,
                        new Point(0, y),
                        subject.heads().get(0).sheet().orElseThrow(),
                        false)
                .serves(arm);
    }
}
